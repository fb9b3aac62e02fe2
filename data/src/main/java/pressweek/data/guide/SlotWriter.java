package pressweek.data.guide;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Draft.Gap;

/** Finds what may be written for a field. */
final class SlotWriter {
  private static final int SHOWN = 12;
  private static final String OPEN = "?";

  private final Map<Field, TableIndex> indexes;

  SlotWriter(Map<Field, TableIndex> indexes) {
    this.indexes = indexes;
  }

  /**
   * Something that may be written for a field.
   *
   * @param text as it stands in the code
   * @param says values by attribute; an empty value is: does not apply
   * @param gap what is open; empty when nothing is
   * @param order place of the symbol in its table
   */
  record Written(String text, Map<String, String> says, Optional<Gap> gap, int order) {}

  /**
   * What may be written for a field, the best first.
   *
   * @param known what is known of the item
   * @param said what the code says so far
   */
  List<Written> written(Field field, Map<String, String> known, Map<String, String> said) {
    if (field instanceof Field.Table table) {
      return symbols(table, known, said);
    }
    if (field instanceof Field.Number number) {
      return number(number, known);
    }
    return special((Field.Special) field, known);
  }

  private List<Written> symbols(
      Field.Table table, Map<String, String> known, Map<String, String> said) {
    TableIndex index = indexes.get(table);
    List<String> candidates = index == null ? List.of() : index.candidates(known);
    List<String> asked = new ArrayList<>();
    List<String> other = new ArrayList<>();
    for (String symbol : candidates) {
      Map<String, String> sets = table.entry(symbol).sets();
      if (Values.agree(known, sets) && Values.agree(said, sets)) {
        (known.keySet().containsAll(sets.keySet()) ? asked : other).add(symbol);
      }
    }
    other = best(table, other, known);
    List<Written> written = new ArrayList<>();
    for (String symbol : asked) {
      written.add(symbol(table, symbol, candidates.indexOf(symbol)));
    }
    boolean own = !known.getOrDefault(table.attribute(), "").isEmpty();
    written.addAll(filled(table.frame(), own));
    if (asked.isEmpty() && other.size() == 1) {
      written.add(symbol(table, other.get(0), 0));
    } else if (asked.isEmpty() && !other.isEmpty()) {
      written.add(gap(table, other, known));
    }
    return written;
  }

  /** The symbols which say most of what is known. */
  private static List<String> best(
      Field.Table table, List<String> symbols, Map<String, String> known) {
    List<String> best = new ArrayList<>();
    int most = 0;
    for (String symbol : symbols) {
      int says = 0;
      for (String name : table.entry(symbol).sets().keySet()) {
        says += known.containsKey(name) ? 1 : 0;
      }
      if (says > most) {
        best.clear();
        most = says;
      }
      if (says == most) {
        best.add(symbol);
      }
    }
    return best;
  }

  private static Written symbol(Field.Table table, String symbol, int order) {
    return new Written(
        fit(symbol, table.frame()), table.entry(symbol).sets(), Optional.empty(), order);
  }

  /** A table of which several symbols would do: what they differ in would have to be known. */
  private static Written gap(Field.Table table, List<String> symbols, Map<String, String> known) {
    Set<String> differing = new LinkedHashSet<>();
    Map<String, String> first = table.entry(symbols.get(0)).sets();
    for (String symbol : symbols) {
      Map<String, String> sets = table.entry(symbol).sets();
      sets.forEach(
          (name, value) -> {
            if (!known.containsKey(name) && !value.equals(first.get(name))) {
              differing.add(name);
            }
          });
      first.forEach(
          (name, value) -> {
            if (!known.containsKey(name) && !value.equals(sets.get(name))) {
              differing.add(name);
            }
          });
    }
    Map<String, String> common = new LinkedHashMap<>(first);
    common.keySet().removeIf(differing::contains);
    List<String> shown = symbols.subList(0, Math.min(SHOWN, symbols.size()));
    Gap gap = new Gap(table.name(), List.copyOf(differing), shown);
    return new Written(open(table.frame()), common, Optional.of(gap), 0);
  }

  private static String open(Field.Frame frame) {
    return OPEN.repeat(Math.max(1, frame.width()));
  }

  /**
   * What fill characters may stand alone.
   *
   * @param known true when the attribute is known: then it may be standard, but not missing
   */
  static List<Written> filled(Field.Frame frame, boolean known) {
    List<Written> written = new ArrayList<>();
    Fill fill = frame.fill();
    if (!fill.none().isEmpty() && !known) {
      Map<String, String> says =
          frame.attribute().isEmpty() ? Map.of() : Map.of(frame.attribute(), "");
      written.add(new Written(Fill.whole(fill.none(), frame.width()), says, Optional.empty(), 0));
    }
    if (!fill.standard().isEmpty()) {
      written.add(
          new Written(Fill.whole(fill.standard(), frame.width()), Map.of(), Optional.empty(), 0));
    }
    return written;
  }

  private static List<Written> number(Field.Number field, Map<String, String> known) {
    String attribute = field.attribute();
    String value = known.getOrDefault(attribute, "");
    List<Written> written = new ArrayList<>();
    if (!value.isEmpty()) {
      digits(field, value)
          .ifPresent(
              text ->
                  written.add(new Written(text, Map.of(attribute, value), Optional.empty(), 0)));
    }
    written.addAll(filled(field.frame(), !value.isEmpty()));
    if (value.isEmpty() && !known.containsKey(attribute)) {
      Gap gap = new Gap(field.name(), List.of(attribute), List.of(field.words()));
      written.add(new Written(open(field.frame()), Map.of(), Optional.of(gap), 0));
    }
    return written;
  }

  /** A number as it stands in a code; empty when the field cannot say it. */
  static Optional<String> digits(Field.Number field, String value) {
    if (!value.matches("\\d{1,9}(\\.\\d{1,9})?")) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal(value);
    if (field.converts()) {
      number = number.divide(Field.Number.MM_PER_INCH, 9, RoundingMode.HALF_UP);
    }
    number = number.stripTrailingZeros();
    if (!field.range().holds(number) || number.scale() > field.decimals() && field.decimals() > 0) {
      return Optional.empty();
    }
    String text =
        number.signum() == 0 ? "0" : number.movePointRight(field.decimals()).toPlainString();
    int width = field.frame().width();
    return width > 0 && text.length() > width
        ? Optional.empty()
        : Optional.of(fit(text, field.frame()));
  }

  private static List<Written> special(Field.Special field, Map<String, String> known) {
    String mark = known.getOrDefault(field.attribute(), "");
    List<Written> written = new ArrayList<>();
    if (field.marks().holds(mark)) {
      Map<String, String> says = Map.of(field.attribute(), mark);
      written.add(new Written(fit(mark, field.frame()), says, Optional.empty(), 0));
    }
    written.addAll(filled(field.frame(), !mark.isEmpty()));
    return written;
  }

  /** A symbol filled up to the width of its field. */
  static String fit(String symbol, Field.Frame frame) {
    String fill = frame.fill().shorter().repeat(Math.max(0, frame.width() - symbol.length()));
    return frame.fill().left() ? fill + symbol : symbol + fill;
  }
}
