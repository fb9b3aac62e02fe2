package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.files.Nearest;

/** Finds why no code says what is known of an item. */
final class Objections {
  private static final int SHOWN = 8;

  private final Encoder encoder;
  private final List<TableIndex> tables;

  Objections(Encoder encoder, List<TableIndex> tables) {
    this.encoder = encoder;
    this.tables = List.copyOf(tables);
  }

  /** The reasons; none when a code does. */
  List<Objection> of(Map<String, String> known) {
    if (!encoder.drafts(known, 1).isEmpty()) {
      return List.of();
    }
    List<Objection> alone = new ArrayList<>();
    known.forEach(
        (name, value) -> {
          if (encoder.drafts(Map.of(name, value), 1).isEmpty()) {
            alone.add(noSymbol(name, value));
          }
        });
    if (!alone.isEmpty()) {
      return alone;
    }
    List<Objection> pairs = pairs(known);
    if (!pairs.isEmpty()) {
      return pairs;
    }
    List<Objection> rules = rules(known);
    return rules.isEmpty()
        ? List.of(new Objection(List.copyOf(known.keySet()), "no kind of item has all of this"))
        : rules;
  }

  private Objection noSymbol(String name, String value) {
    Set<String> values = new TreeSet<>();
    for (TableIndex table : tables) {
      values.addAll(table.values(name));
    }
    Optional<String> number = encoder.numbers(name);
    if (values.isEmpty() && number.isPresent()) {
      return new Objection(
          List.of(name), "no item has %s \"%s\"; expected %s".formatted(name, value, number.get()));
    }
    if (values.isEmpty() && !encoder.attributes().contains(name)) {
      List<String> nearest = Nearest.to(name, encoder.attributes(), 3);
      return new Objection(
          List.of(name),
          "the guide has no attribute \"%s\"; nearest: %s"
              .formatted(name, String.join(", ", nearest)));
    }
    String known =
        values.isEmpty()
            ? "expected another value"
            : "nearest: " + String.join(", ", nearest(value, values));
    return new Objection(List.of(name), "no item has %s \"%s\"; %s".formatted(name, value, known));
  }

  /** Pairs of values that exclude each other, with the reason of the rule if it is one. */
  private List<Objection> pairs(Map<String, String> known) {
    List<Objection> pairs = new ArrayList<>();
    List<String> names = List.copyOf(known.keySet());
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        Map<String, String> pair = new LinkedHashMap<>();
        pair.put(names.get(i), known.getOrDefault(names.get(i), ""));
        pair.put(names.get(j), known.getOrDefault(names.get(j), ""));
        if (encoder.drafts(pair, 1).isEmpty()) {
          List<Objection> rules = rules(pair);
          pairs.add(
              rules.isEmpty()
                  ? together(pair, names.get(i), names.get(j))
                  : new Objection(List.copyOf(pair.keySet()), rules.get(0).sentence()));
        }
      }
    }
    return pairs;
  }

  private Objection together(Map<String, String> pair, String first, String second) {
    String firstValue = pair.getOrDefault(first, "");
    String secondValue = pair.getOrDefault(second, "");
    List<String> known = new ArrayList<>();
    known.add(comesWith(first, firstValue, second, secondValue));
    known.add(comesWith(second, secondValue, first, firstValue));
    known.removeIf(String::isEmpty);
    return new Objection(
        List.of(first, second),
        "%s \"%s\" does not go with %s \"%s\"%s"
            .formatted(
                second,
                secondValue,
                first,
                firstValue,
                known.isEmpty() ? "" : ": " + String.join("; ", known)));
  }

  /** What a value comes with instead. */
  private String comesWith(String given, String value, String attribute, String instead) {
    Set<String> values = new LinkedHashSet<>();
    for (TableIndex table : tables) {
      values.addAll(table.valuesWith(given, value, attribute));
    }
    return values.isEmpty()
        ? ""
        : "%s %s comes with %s %s"
            .formatted(given, value, attribute, String.join(", ", nearest(instead, values)));
  }

  /** The values nearest to one: numbers by their distance, other values by their spelling. */
  private static List<String> nearest(String value, Set<String> values) {
    if (!isNumber(value) || !values.stream().allMatch(Objections::isNumber)) {
      return Nearest.to(value, values, SHOWN);
    }
    BigDecimal number = new BigDecimal(value);
    Comparator<String> byDistance =
        Comparator.comparing(other -> new BigDecimal(other).subtract(number).abs());
    return values.stream().sorted(byDistance).limit(SHOWN).toList();
  }

  private static boolean isNumber(String value) {
    return value.matches("\\d{1,9}(\\.\\d{1,9})?");
  }

  /** What the rules say against the code that they mind least. */
  private List<Objection> rules(Map<String, String> known) {
    List<List<RuleBook.Fault>> least = new ArrayList<>();
    encoder.search(
        known,
        (code, meaning, gaps) -> {
          Set<String> open = DraftSearch.open(gaps);
          List<RuleBook.Fault> faults =
              meaning.faults().stream().filter(fault -> !open.contains(fault.attribute())).toList();
          boolean fewer = least.isEmpty() || faults.size() < least.get(0).size();
          if (!faults.isEmpty() && fewer) {
            least.clear();
            least.add(faults);
          }
          return false;
        });
    return least.stream()
        .flatMap(List::stream)
        .map(fault -> new Objection(fault.attributes(), fault.sentence()))
        .toList();
  }
}
