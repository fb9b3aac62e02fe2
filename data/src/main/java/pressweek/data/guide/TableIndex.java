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
    byMeaning.forEach(
        (name, values) -> {
          if (values.values().stream().mapToInt(List::size).sum() == all.size()) {
            saidByAll.add(name);
          }
        });
  }

  /** Symbols, in the order of the guide, among which are all that can mean what is known. */
  List<String> candidates(Map<String, String> known) {
    List<String> fewest = all;
    for (String attribute : saidByAll) {
      String value = known.get(attribute);
      if (value != null) {
        List<String> some = symbols(attribute, value);
        fewest = some.size() < fewest.size() ? some : fewest;
      }
    }
    return fewest;
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
