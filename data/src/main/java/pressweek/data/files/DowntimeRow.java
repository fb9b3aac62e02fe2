package pressweek.data.files;

/**
 * A row of {@code downtime.csv}: a press or a mold that is away.
 *
 * @param at where it stands
 * @param what press or mold
 * @param from first minute away
 * @param to first minute back
 * @param reason in words; may be empty
 */
public record DowntimeRow(At at, String what, When from, When to, String reason) {}
