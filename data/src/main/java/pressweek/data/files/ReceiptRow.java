package pressweek.data.files;

/**
 * A row of {@code receipts.csv}: an inbound delivery.
 *
 * @param at where it stands
 * @param what insert part or other component
 * @param quantity how much
 * @param expected when it arrives
 * @param inspectMin minutes of inspection before it may be used
 */
public record ReceiptRow(At at, String what, Amount quantity, When expected, int inspectMin) {}
