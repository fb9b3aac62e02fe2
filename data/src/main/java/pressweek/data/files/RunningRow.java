package pressweek.data.files;

import java.util.Optional;
import java.util.OptionalInt;
import pressweek.data.problem.Setup;

/**
 * A row of {@code running.csv}: a press as it stands.
 *
 * @param at where it stands
 * @param press press
 * @param order order that is running; empty for none
 * @param line line of the order; empty for none
 * @param setup what is in the press; empty fields for nothing or not known
 * @param clearedForFood true when it is cleared for food-grade work
 * @param goodMade good pieces made of the order line so far
 * @param insertsAtPress pieces of each of its inserts that are at the press; empty for all that it
 *     still needs
 * @param started when it was started; for the record only
 */
public record RunningRow(
    At at,
    String press,
    String order,
    String line,
    Setup setup,
    boolean clearedForFood,
    int goodMade,
    OptionalInt insertsAtPress,
    Optional<When> started) {}
