package pressweek.data.problem;

import java.util.List;

/**
 * One way to make a job: a mold on a press that may run it.
 *
 * @param press press
 * @param mold mold
 * @param tooling tooling set in the mold for this item; empty when the mold has none to exchange
 * @param making shots and inserts
 * @param pace minutes and operators
 * @param standing why the mold may run there
 * @param notes what a person should know, for example {@code shot is 71 % of the barrel, usual is
 *     20-65 %}
 */
public record Option(
    String press,
    String mold,
    String tooling,
    Making making,
    Pace pace,
    Standing standing,
    List<String> notes) {
  public Option {
    notes = List.copyOf(notes);
  }
}
