package pressweek.data.files;

/**
 * A row of {@code customer_parts.csv}: a customer's own part number.
 *
 * @param at where it stands
 * @param customer customer; empty for any
 * @param customerPart the customer's own part number
 * @param revision revision of the customer's drawing; empty for any
 * @param item item code
 */
public record CustomerPartRow(
    At at, String customer, String customerPart, String revision, String item) {}
