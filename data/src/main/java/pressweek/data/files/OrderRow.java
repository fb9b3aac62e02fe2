package pressweek.data.files;

import java.util.List;
import java.util.Optional;

/**
 * A row of {@code orders.csv}: an order line.
 *
 * @param at where it stands
 * @param order order number
 * @param line line within the order
 * @param customer customer; may be empty, as all text that is not an id
 * @param customerPart the customer's own part number
 * @param revision revision
 * @param note text for the floor
 * @param item item code; empty when words or the customer's own number say the item
 * @param words the item in the customer's own words; may be empty
 * @param quantity pieces
 * @param requested when the customer wants it; empty for the due time
 * @param due when it was promised; a date alone is that day's shipping cut-off
 * @param weightHundredths how much its lateness counts; 100 is an ordinary line
 * @param earliest not to be started before; a date alone is its 00:00
 * @param needs what the order demands, for example {@code food}
 * @param overPct pieces that may be shipped above the quantity, percent
 * @param underPct pieces that may be missing, percent
 * @param hold reason why it is on hold; empty when it is not
 * @param mold mold that overrules the guide; empty for none
 * @param inserts inserts that overrule the guide; empty for none
 * @param resin resin that overrules the guide; empty for none
 * @param colour colour that overrules the guide; empty for none
 */
public record OrderRow(
    At at,
    String order,
    String line,
    String customer,
    String customerPart,
    String revision,
    String note,
    String item,
    String words,
    int quantity,
    Optional<When> requested,
    When due,
    int weightHundredths,
    Optional<When> earliest,
    List<String> needs,
    double overPct,
    double underPct,
    String hold,
    String mold,
    List<InsertPieces> inserts,
    String resin,
    String colour) {
  public OrderRow {
    needs = List.copyOf(needs);
    inserts = List.copyOf(inserts);
  }

  /**
   * An insert of the part.
   *
   * @param insert insert part
   * @param pieces pieces a molded part
   */
  public record InsertPieces(String insert, int pieces) {}

  /** What names the item in lists: its code, else the words, else the customer's own number. */
  public String itemOrWords() {
    return item.isEmpty() ? words.isEmpty() ? customerPart : words : item;
  }

  /** What overrules the guide. */
  private record Overrules(String mold, List<InsertPieces> inserts, String resin, String colour) {}

  /** The same line with an item code. */
  public OrderRow withItem(String code) {
    return with(line, code, needs, new Overrules(mold, inserts, resin, colour));
  }

  /**
   * One of several parts of the line: {@code line/number}.
   *
   * @param pieces pieces of the part
   */
  public OrderRow part(int number, int pieces) {
    OrderRow part = part(number);
    return new OrderRow(
        part.at,
        part.order,
        part.line,
        part.customer,
        part.customerPart,
        part.revision,
        part.note,
        part.item,
        part.words,
        pieces,
        part.requested,
        part.due,
        part.weightHundredths,
        part.earliest,
        part.needs,
        part.overPct,
        part.underPct,
        part.hold,
        part.mold,
        part.inserts,
        part.resin,
        part.colour);
  }

  /** One of several parts of the line: {@code line/number}. */
  public OrderRow part(int number) {
    return with(line + "/" + number, item, needs, new Overrules(mold, inserts, resin, colour));
  }

  /**
   * The first part of a line whose item is molded over a core: the core, with the inserts that the
   * line gives.
   *
   * @param code item code of the core
   * @param demands what the order and its item demand
   */
  public OrderRow core(String code, List<String> demands) {
    return with(line + "/1", code, demands, new Overrules("", inserts, "", ""));
  }

  /** The second part of such a line: the item over its core, in the mold that the line gives. */
  public OrderRow over() {
    return with(line + "/2", item, needs, new Overrules(mold, List.of(), resin, colour));
  }

  private OrderRow with(String newLine, String code, List<String> demands, Overrules overrules) {
    return new OrderRow(
        at,
        order,
        newLine,
        customer,
        customerPart,
        revision,
        note,
        code,
        words,
        quantity,
        requested,
        due,
        weightHundredths,
        earliest,
        demands,
        overPct,
        underPct,
        hold,
        overrules.mold(),
        overrules.inserts(),
        overrules.resin(),
        overrules.colour());
  }

  /** The id of the line: {@code order/line}. */
  public String id() {
    return order + "/" + line;
  }
}
