package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The symbols of a table by what they mean. */
final class TableIndex {
  private final Field.Table table;
  private final List<String> all;
  private final Map<String, Map<String, List<String>>> byMeaning = new HashMap<>();
  private final Set<String> saidByAll = new HashSet<>();
  private final Map<String, Meaning> meanings = new HashMap<>();

  /**
   * What a symbol means, in the spelling for comparing.
   *
   * @param symbol symbol
   * @param order its place in the table
   * @param names attributes
   * @param keys their values
   */
  @SuppressWarnings("ArrayRecordComponent") // read in the innermost loop, and nowhere else
  record Meaning(String symbol, int order, String[] names, String[] keys) {
    static Meaning of(String symbol, int order, Map<String, String> sets) {
      String[] names = sets.keySet().toArray(String[]::new);
      String[] keys = new String[names.length];
      for (int i = 0; i < names.length; i++) {
        keys[i] = Values.key(names[i], sets.getOrDefault(names[i], ""));
      }
      return new Meaning(symbol, order, names, keys);
    }

    /** How many of its statements are known already; -1 when one is known to be otherwise. */
    int known(Map<String, String> knownKeys) {
      int count = 0;
      for (int i = 0; i < names.length; i++) {
        String key = knownKeys.get(names[i]);
        if (key != null) {
          if (!key.equals(keys[i])) {
            return -1;
          }
          count++;
        }
      }
      return count;
    }
  }

  TableIndex(Field.Table table) {
    this.table = table;
    all = List.copyOf(table.entries().keySet());
    table
        .entries()
        .forEach(
            (symbol, entry) ->
                entry
                    .sets()
                    .forEach(
                        (name, value) ->
                            byMeaning
                                .computeIfAbsent(name, n -> new HashMap<>())
                                .computeIfAbsent(Values.key(name, value), v -> new ArrayList<>())
                                .add(symbol)));
    all.forEach(
        symbol ->
            meanings.put(symbol, Meaning.of(symbol, meanings.size(), table.entry(symbol).sets())));
    byMeaning.forEach(
        (name, values) -> {
          if (values.values().stream().mapToInt(List::size).sum() == all.size()) {
            saidByAll.add(name);
          }
        });
  }

  /**
   * Symbols, in the order of the guide, among which are all that can mean what is known.
   *
   * @param knownKeys what is known, in the spelling for comparing
   */
  List<String> candidates(Map<String, String> knownKeys) {
    List<String> fewest = all;
    for (String attribute : saidByAll) {
      String key = knownKeys.get(attribute);
      if (key != null) {
        List<String> some =
            byMeaning.getOrDefault(attribute, Map.of()).getOrDefault(key, List.of());
        fewest = some.size() < fewest.size() ? some : fewest;
      }
    }
    return fewest;
  }

  /** What one of its symbols means. */
  Meaning meaning(String symbol) {
    Meaning meaning = meanings.get(symbol);
    if (meaning == null) {
      throw new IllegalArgumentException("no symbol of the table: " + symbol);
    }
    return meaning;
  }

  /** The symbols which set an attribute to a value. */
  List<String> symbols(String attribute, String value) {
    return byMeaning
        .getOrDefault(attribute, Map.of())
        .getOrDefault(Values.key(attribute, value), List.of());
  }

  /** The attributes that symbols set. */
  Set<String> attributes() {
    return byMeaning.keySet();
  }

  /** The values that symbols give an attribute. */
  Set<String> values(String attribute) {
    Set<String> values = new LinkedHashSet<>();
    for (Field.Entry entry : table.entries().values()) {
      add(values, entry, attribute);
    }
    return values;
  }

  /** The values that an attribute has beside a value of another one. */
  Set<String> valuesWith(String given, String value, String attribute) {
    Set<String> values = new LinkedHashSet<>();
    for (String symbol : symbols(given, value)) {
      add(values, table.entry(symbol), attribute);
    }
    return values;
  }

  private static void add(Set<String> values, Field.Entry entry, String attribute) {
    String value = entry.sets().getOrDefault(attribute, "");
    if (!value.isEmpty()) {
      values.add(value);
    }
  }
}
