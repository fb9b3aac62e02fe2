package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.files.OrderRow.InsertPieces;

/** Order lines, finished stock, and what was promised to the floor. */
final class OrderTables {
  static final String FIRST_LINE = "1";
  private static final int HUNDREDTHS = 100;

  static final TableSpec<OrderRow> ORDERS =
      new TableSpec<>(
          Columns.of(InputFile.ORDERS)
              .text(
                  "!order",
                  "line",
                  "customer",
                  "customer_part",
                  "revision",
                  "note",
                  "item",
                  "words")
              .whole("!quantity")
              .time("requested", "!due")
              .decimal("weight")
              .time("earliest")
              .text("needs")
              .decimal("over_pct", "under_pct")
              .text("hold", "mold", "insert", "resin", "colour")
              .build(),
          OrderTables::order,
          r -> "order line \"" + r.id() + "\"");

  static final TableSpec<CustomerPartRow> CUSTOMER_PARTS =
      new TableSpec<>(
          Columns.of(InputFile.CUSTOMER_PARTS)
              .text("customer", "!customer_part", "revision", "!item")
              .build(),
          f ->
              new CustomerPartRow(
                  f.at(),
                  f.text("customer"),
                  f.id("customer_part"),
                  f.text("revision"),
                  f.id("item")),
          r ->
              "part \"%s\" of customer \"%s\", revision \"%s\""
                  .formatted(
                      CustomerPartRow.key(r.customerPart()),
                      CustomerPartRow.key(r.customer()),
                      CustomerPartRow.key(r.revision())));

  static final TableSpec<StockRow> STOCK =
      new TableSpec<>(
          Columns.of(InputFile.STOCK).text("!item").whole("!on_hand").text("reserved_for").build(),
          f ->
              new StockRow(
                  f.at(),
                  f.id("item"),
                  f.requiredWhole("on_hand", 0, Fields.MOST_PIECES),
                  f.text("reserved_for")),
          r -> "");

  static final TableSpec<PromisedRow> PROMISED =
      new TableSpec<>(
          Columns.of(InputFile.PROMISED).text("!order", "line", "!press").time("!start").build(),
          f ->
              new PromisedRow(
                  f.at(), f.id("order"), line(f), f.id("press"), f.requiredTime("start")),
          r -> "");

  private OrderTables() {}

  /** The line within the order; the first when the cell is empty. */
  static String line(Fields f) {
    return f.text("line").isEmpty() ? FIRST_LINE : f.id("line");
  }

  /** Pieces ordered in a faulty row; 0 when they cannot be read. Adds no further fault. */
  static int pieces(Fields f) {
    return Numbers.parse(f.text("quantity"), false)
        .filter(n -> n.signum() > 0 && n.compareTo(BigDecimal.valueOf(Fields.MOST_PIECES)) <= 0)
        .map(BigDecimal::intValue)
        .orElse(0);
  }

  private static OrderRow order(Fields f) {
    return new OrderRow(
        f.at(),
        f.id("order"),
        line(f),
        f.text("customer"),
        f.text("customer_part"),
        f.text("revision"),
        f.text("note"),
        item(f),
        f.text("words"),
        f.requiredWhole("quantity", 1, Fields.MOST_PIECES),
        f.time("requested"),
        f.requiredTime("due"),
        f.scaled("weight", HUNDREDTHS, 1000, RoundingMode.HALF_UP).orElse(HUNDREDTHS),
        f.time("earliest"),
        needs(f),
        f.decimal("over_pct", 0, 100).orElse(0),
        f.decimal("under_pct", 0, 100).orElse(0),
        f.text("hold"),
        f.text("mold"),
        inserts(f),
        f.text("resin"),
        f.text("colour"));
  }

  /** What an order line demands, in small letters, each once. */
  static List<String> needs(Fields f) {
    return f.list("needs").stream().map(n -> n.toLowerCase(Locale.ROOT)).distinct().toList();
  }

  /** The item code; a line may instead say the item in words or by the customer's own number. */
  private static String item(Fields f) {
    boolean otherwise = !f.text("words").isEmpty() || !f.text("customer_part").isEmpty();
    if (!f.text("item").isEmpty()) {
      return f.id("item");
    }
    if (!otherwise) {
      f.fault("item", "empty", "item is empty; expected an item code, words or customer_part");
    }
    return "";
  }

  private static List<InsertPieces> inserts(Fields f) {
    List<InsertPieces> inserts = new ArrayList<>();
    for (String text : f.list("insert")) {
      int star = text.lastIndexOf('*');
      String insert = star < 0 ? text : text.substring(0, star).strip();
      Optional<Integer> pieces =
          star < 0 ? Optional.of(1) : pieces(text.substring(star + 1).strip());
      if (insert.isEmpty() || pieces.isEmpty()) {
        f.fault(
            "insert",
            "pieces",
            f.seen("insert") + " has \"" + text + "\"; expected an insert, or insert*pieces");
      } else {
        inserts.add(new InsertPieces(insert, pieces.get()));
      }
    }
    return inserts;
  }

  private static Optional<Integer> pieces(String text) {
    return Numbers.parse(text, false)
        .filter(n -> n.scale() <= 0 && n.signum() > 0 && n.compareTo(BigDecimal.valueOf(1000)) <= 0)
        .map(BigDecimal::intValueExact);
  }
}
