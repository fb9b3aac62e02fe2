package pressweek.data.files;

import java.util.Locale;

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
    At at, String customer, String customerPart, String revision, String item) {
  /** A number, name or revision as it is looked up by: capitals and spaces do not matter. */
  public static String key(String text) {
    return text.replace(" ", "").toUpperCase(Locale.ROOT);
  }
}
