package pressweek.data.plan;

import java.util.List;

/**
 * One stay of a job on a press.
 *
 * @param id run number, unique in the plan, for example {@code R017}
 * @param job {@code order/line}
 * @param press press
 * @param mold mold
 * @param seq place in the press's order, from 1
 * @param change what happens before it
 * @param startMin first minute of the run, since 1970 UTC
 * @param endMin end of the run
 * @param readyMin when the order is ready to ship: the end plus the hours after molding
 * @param waits why it did not begin earlier, in time order
 * @param charges what it costs
 */
public record Run(
    String id,
    String job,
    String press,
    String mold,
    int seq,
    Change change,
    int startMin,
    int endMin,
    int readyMin,
    List<Wait> waits,
    List<Charge> charges) {
  public Run {
    waits = List.copyOf(waits);
    charges = List.copyOf(charges);
  }
}
