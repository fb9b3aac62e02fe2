package pressweek.data.files;

/**
 * A row of {@code tooling.csv}: a thing that exists a counted number of times.
 *
 * @param at where it stands
 * @param tooling the tooling set or device, as {@code molds.csv} names it
 * @param count how many there are
 * @param note in words; may be empty
 */
public record ToolingRow(At at, String tooling, int count, String note) {}
