package pressweek.reports.moves;

import java.util.List;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;

/**
 * A plan made of an earlier one after something happened.
 *
 * @param earlier the earlier plan
 * @param unchanged the earlier plan's order from the present on, as if nothing had happened
 * @param plan the plan that replaces it
 * @param events what happened
 * @param ended order lines of the earlier plan with nothing left to make
 * @param notes what a scheduler should know
 */
public record Moves(
    Plan earlier,
    Plan unchanged,
    Plan plan,
    List<FloorEvent> events,
    List<Ended> ended,
    List<String> notes) {
  public Moves {
    events = List.copyOf(events);
    ended = List.copyOf(ended);
    notes = List.copyOf(notes);
  }
}
