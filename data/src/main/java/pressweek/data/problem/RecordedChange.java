package pressweek.data.problem;

import java.util.OptionalInt;

/**
 * A change that the plant has recorded; it beats the change table. An empty field matches anything;
 * the first row that matches counts.
 *
 * @param press press
 * @param from setup before
 * @param to setup after
 * @param minutes minutes in all, food clearance apart
 * @param purgeG grams purged; empty for the table's figure
 */
public record RecordedChange(String press, Setup from, Setup to, int minutes, OptionalInt purgeG) {}
