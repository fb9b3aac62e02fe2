package pressweek.data.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.InsertRow;
import pressweek.data.guide.Values;
import pressweek.data.problem.Item;

/** The plant's insert parts, asked for what one symbol says of an insert. */
final class InsertRack {
  private static final String SECOND = "second_";
  private static final double SAME_LENGTH_MM = 0.05;
  private static final String PASSIVATION = "passivation";
  private static final List<String> ATTRIBUTES =
      List.of(
          Item.INSERT,
          Item.INSERT_KIND,
          Item.THREAD,
          Item.LENGTH_MM,
          Item.INSERT_MATERIAL,
          Item.FINISH,
          PASSIVATION);

  private final List<InsertRow> rows;
  private final Set<Map<String, String>> found = new HashSet<>();

  InsertRack(List<InsertRow> rows) {
    this.rows = List.copyOf(rows);
  }

  /** True when the first and the second insert of a symbol are there, as far as it names them. */
  boolean has(Map<String, String> sets) {
    return found.contains(sets) || hasOne("", sets) && hasOne(SECOND, sets) && found.add(sets);
  }

  private boolean hasOne(String prefix, Map<String, String> sets) {
    return rows.stream()
        .anyMatch(
            row ->
                ATTRIBUTES.stream()
                    .allMatch(name -> fits(row, name, sets.getOrDefault(prefix + name, ""))));
  }

  private static boolean fits(InsertRow row, String attribute, String value) {
    if (value.isEmpty()) {
      return true;
    }
    return switch (attribute) {
      case Item.INSERT -> row.insert().equals(value);
      case Item.INSERT_KIND -> row.kind().equalsIgnoreCase(value);
      case Item.THREAD -> Values.same(Item.THREAD, row.thread(), value);
      case Item.LENGTH_MM -> sameLength(row, value);
      case Item.INSERT_MATERIAL -> row.material().equalsIgnoreCase(value);
      case Item.FINISH -> row.finish().equalsIgnoreCase(value);
      default -> row.passivation().equalsIgnoreCase(value);
    };
  }

  private static boolean sameLength(InsertRow row, String value) {
    return value.matches("\\d{1,9}(\\.\\d{1,9})?")
        && row.lengthMm().isPresent()
        && Math.abs(row.lengthMm().getAsDouble() - Double.parseDouble(value)) <= SAME_LENGTH_MM;
  }

  /** The attributes of inserts that a symbol names. */
  String asked(Map<String, String> sets) {
    List<String> asked = new ArrayList<>();
    for (String name : sets.keySet()) {
      String plain = name.startsWith(SECOND) ? name.substring(SECOND.length()) : name;
      if (ATTRIBUTES.contains(plain)) {
        asked.add(name);
      }
    }
    return String.join(" and ", asked);
  }
}
