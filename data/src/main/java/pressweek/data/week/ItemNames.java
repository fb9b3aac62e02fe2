package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pressweek.data.files.OrderRow;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;
import pressweek.data.words.Assumed;
import pressweek.data.words.Reading;
import pressweek.data.words.Understood;
import pressweek.data.words.WordReader;

/** Finds the item code of an order line that says its item in another way. */
final class ItemNames {
  private static final int SHOWN = 60;

  private final CustomerParts customerParts;
  private final Function<OrderRow, Attempt<OrderRow>> words;
  private final Map<String, Reading> readings = new HashMap<>();

  /**
   * What names items.
   *
   * @param customerParts customers' own part numbers
   * @param words reads customers' words; empty for a plant without a guide
   */
  ItemNames(CustomerParts customerParts, Optional<WordReader> words) {
    this.customerParts = customerParts;
    this.words = words.map(this::reading).orElse(order -> unread());
  }

  private Function<OrderRow, Attempt<OrderRow>> reading(WordReader reader) {
    return order -> read(reader, order);
  }

  private static Attempt<OrderRow> unread() {
    return new Stopped<>(
        "the item is said in words, and there is no guide.json to read them by",
        "give the item code, or write a guide",
        "words");
  }

  /** The line with an item code: its own, that of its words, or of the customer's part number. */
  Attempt<OrderRow> named(OrderRow order) {
    if (!order.item().isEmpty()) {
      return new Done<>(order);
    }
    if (order.words().isEmpty()) {
      return customerParts.find(order).then(row -> new Done<>(order.withItem(row.item())));
    }
    return words.apply(order);
  }

  private Attempt<OrderRow> read(WordReader reader, OrderRow order) {
    Reading best =
        readings.computeIfAbsent(order.words(), said -> reader.read(said).readings().get(0));
    List<String> counts = otherCounts(best, order.quantity());
    if (best.complete() && best.notUnderstood().isEmpty() && counts.isEmpty()) {
      return new Done<>(order.withItem(best.code()));
    }
    List<String> open = new ArrayList<>(best.conflicts());
    open.addAll(best.questions());
    open.addAll(counts);
    if (!best.notUnderstood().isEmpty()) {
      open.add("what is \"" + String.join(" ", best.notUnderstood()) + "\"?");
    }
    String code = best.code().isEmpty() ? "" : " (read as " + best.code() + ")";
    return new Stopped<>(
        "words \"" + shown(order.words()) + "\"" + code + ": " + String.join("; ", open),
        "ask the customer, then give the item code in orders.csv",
        "words");
  }

  /** Numbers of pieces in the words that are not the line's. */
  private static List<String> otherCounts(Reading reading, int quantity) {
    return reading.understood().stream()
        .map(piece -> piece.means().getOrDefault("quantity", ""))
        .filter(count -> !count.isEmpty() && !count.equals(Integer.toString(quantity)))
        .map(count -> "how many? the words say " + count + ", the line says " + quantity)
        .toList();
  }

  private static String shown(String text) {
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
  }

  /**
   * What a code that was read from an order line's words says, with where each attribute came from.
   */
  List<Attribute> fromWords(OrderRow order, List<Attribute> byCode) {
    Reading reading = readings.get(order.words());
    if (reading == null || !reading.code().equals(order.item())) {
      return byCode;
    }
    Map<String, Attribute> said = new HashMap<>();
    for (Understood piece : reading.understood()) {
      piece
          .means()
          .forEach(
              (name, value) ->
                  said.put(
                      name, new Attribute(name, value, Origin.WORDS, "\"" + piece.text() + "\"")));
    }
    for (Assumed assumed : reading.assumed()) {
      assumed
          .means()
          .forEach(
              (name, value) ->
                  said.put(name, new Attribute(name, value, Origin.DEFAULT, assumed.because())));
    }
    return byCode.stream().map(attribute -> origin(attribute, said)).toList();
  }

  /** The attribute of a code with the origin that the words give it. */
  private static Attribute origin(Attribute byCode, Map<String, Attribute> said) {
    Attribute other = said.get(byCode.name());
    return byCode.origin() != Origin.CODE || other == null
        ? byCode
        : new Attribute(byCode.name(), byCode.value(), other.origin(), other.because());
  }
}
