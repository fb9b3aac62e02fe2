package pressweek.data.files;

/**
 * An order line that cannot be read and so cannot be planned.
 *
 * @param at where it stands
 * @param order order number as far as it could be read; may be empty
 * @param line line within the order
 * @param item item code as far as it could be read; may be empty
 * @param pieces pieces ordered; 0 when that could not be read
 * @param message every fault of the line, in the words of its {@link InputError}s
 */
public record FaultyOrder(
    At at, String order, String line, String item, int pieces, String message) {}
