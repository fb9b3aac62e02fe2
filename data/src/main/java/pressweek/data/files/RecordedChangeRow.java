package pressweek.data.files;

import java.util.OptionalInt;
import pressweek.data.problem.Setup;

/**
 * A row of {@code changes_recorded.csv}: a recorded change. Empty fields match anything; tooling is
 * always empty.
 *
 * @param at where it stands
 * @param press press
 * @param from setup before
 * @param to setup after
 * @param minutes minutes in all
 * @param purgeG grams purged; empty for the table's figure
 */
public record RecordedChangeRow(
    At at, String press, Setup from, Setup to, int minutes, OptionalInt purgeG) {}
