package pressweek.reports.listing;

/**
 * How a list looks on paper.
 *
 * @param caution what to mind, one line; may be empty
 * @param group column whose text stands above the rows that share it, which follow each other;
 *     empty for none
 * @param ticks true when each row has a box to tick
 * @param whenEmpty the sentence that stands in place of a list without rows
 */
public record Paper(String caution, String group, boolean ticks, String whenEmpty) {}
