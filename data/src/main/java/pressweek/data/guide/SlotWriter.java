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
   * What is to be written.
   *
   * @param known what is known of the item
   * @param knownKeys the same in the spelling for comparing
   * @param said what the code says so far
   * @param plan the family
   */
  record Wanted(
      Map<String, String> known,
      Map<String, String> knownKeys,
      Map<String, String> said,
      FamilyPlan plan) {
    /** The value of an attribute; empty when it is not known, or known to be missing. */
    String value(String attribute) {
      return known.getOrDefault(attribute, "");
    }
  }

  /**
   * What may be written for a field: what stands for the standard value, symbols, what stands for
   * nothing, and what is open.
   */
  List<Written> written(Field field, Wanted wanted) {
    List<Written> written = new ArrayList<>(2);
    standard(field.frame(), wanted, written);
    if (field instanceof Field.Table table) {
      symbols(table, wanted, written);
    } else if (field instanceof Field.Number number) {
      number(number, wanted, written);
    } else {
      special((Field.Special) field, wanted, written);
    }
    return written;
  }

  /** The fill of a standard value, where nothing is known or a rule gives just what is. */
  private static void standard(Field.Frame frame, Wanted wanted, List<Written> written) {
    String value = wanted.value(frame.attribute());
    boolean may = value.isEmpty() || wanted.plan().derives(frame.attribute(), value);
    String standard = frame.fill().standard();
    if (!standard.isEmpty() && may) {
      written.add(new Written(Fill.whole(standard, frame.width()), Map.of(), Optional.empty(), 0));
    }
  }

  /** The fill of what does not apply, where it is not known to. */
  private static void none(Field.Frame frame, Wanted wanted, List<Written> written) {
    String none = frame.fill().none();
    if (!none.isEmpty() && wanted.value(frame.attribute()).isEmpty()) {
      Map<String, String> says =
          frame.attribute().isEmpty() ? Map.of() : Map.of(frame.attribute(), "");
      written.add(new Written(Fill.whole(none, frame.width()), says, Optional.empty(), 0));
    }
  }

  private void symbols(Field.Table table, Wanted wanted, List<Written> written) {
    TableIndex index = indexes.get(table);
    if (index == null) {
      throw new IllegalStateException("no index of " + table.name());
    }
    List<String> other = new ArrayList<>();
    int most = 0;
    boolean asked = false;
    for (String symbol : index.candidates(wanted.knownKeys())) {
      TableIndex.Meaning meaning = index.meaning(symbol);
      int known = meaning.known(wanted.knownKeys());
      if (known < 0 || !Values.agree(wanted.said(), table.entry(symbol).sets())) {
        continue;
      }
      if (known == meaning.names().length) {
        written.add(symbol(table, symbol, meaning.order()));
        asked = true;
      } else if (!asked) {
        if (known > most) {
          other.clear();
          most = known;
        }
        if (known == most) {
          other.add(symbol);
        }
      }
    }
    none(table.frame(), wanted, written);
    if (!asked && other.size() == 1) {
      written.add(symbol(table, other.get(0), index.meaning(other.get(0)).order()));
    } else if (!asked && !other.isEmpty()) {
      written.add(gap(table, other, wanted.known()));
    }
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

  private static void number(Field.Number field, Wanted wanted, List<Written> written) {
    String attribute = field.attribute();
    String value = wanted.value(attribute);
    if (!value.isEmpty()) {
      Map<String, String> says = Map.of(attribute, value);
      digits(field, value)
          .ifPresent(text -> written.add(new Written(text, says, Optional.empty(), 0)));
    }
    none(field.frame(), wanted, written);
    if (!wanted.known().containsKey(attribute)) {
      Gap gap = new Gap(field.name(), List.of(attribute), List.of(field.words()));
      written.add(new Written(open(field.frame()), Map.of(), Optional.of(gap), 0));
    }
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

  private static void special(Field.Special field, Wanted wanted, List<Written> written) {
    String mark = wanted.value(field.attribute());
    if (field.marks().holds(mark)) {
      Map<String, String> says = Map.of(field.attribute(), mark);
      written.add(new Written(fit(mark, field.frame()), says, Optional.empty(), 0));
    }
    none(field.frame(), wanted, written);
  }

  /** A symbol filled up to the width of its field. */
  static String fit(String symbol, Field.Frame frame) {
    String fill = frame.fill().shorter().repeat(Math.max(0, frame.width() - symbol.length()));
    return frame.fill().left() ? fill + symbol : symbol + fill;
  }
}
