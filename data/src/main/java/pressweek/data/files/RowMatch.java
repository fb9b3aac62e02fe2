package pressweek.data.files;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import pressweek.data.files.Header.Slot;
import pressweek.data.files.ScenarioEdit.Condition;

/** Tells which rows of a table a change of a scenario names. */
final class RowMatch {
  /** Texts of a column that are kept to find a near one among. */
  private static final int KEPT = 5000;

  private static final String LINE = "line";

  private final ScenarioRows.Table table;
  private final boolean decimalComma;
  private final Map<String, SortedSet<String>> seen = new HashMap<>();

  RowMatch(ScenarioRows.Table table, boolean decimalComma) {
    this.table = table;
    this.decimalComma = decimalComma;
  }

  /** True when every condition of the change fits the row. */
  boolean fits(ScenarioEdit edit, List<String> cells) {
    boolean all = true;
    for (Condition condition : edit.where()) {
      String text = text(condition.key(), cells);
      SortedSet<String> texts = seen.computeIfAbsent(condition.key(), k -> new TreeSet<>());
      if (texts.size() < KEPT && !text.isEmpty()) {
        texts.add(text);
      }
      all &= condition.patterns().stream().anyMatch(p -> fits(condition.key(), p, text));
    }
    return all;
  }

  private String text(String column, List<String> cells) {
    Slot slot = table.slots().get(column);
    String text = slot == null || slot.index() >= cells.size() ? "" : cells.get(slot.index());
    boolean numbered = table.columns().column("order").isPresent();
    return text.isEmpty() && numbered && column.equals(LINE) ? OrderTables.FIRST_LINE : text;
  }

  private boolean fits(String column, String pattern, String text) {
    if (ScenarioValue.fits(pattern, text)) {
      return true;
    }
    return switch (table.columns().column(column).orElseThrow().look()) {
      case WHOLE, DECIMAL -> same(number(pattern, false), number(text, false));
      case TIME -> {
        Optional<When> wanted = table.times().parse(pattern);
        yield wanted.isPresent() && wanted.equals(table.times().parse(text));
      }
      case FLAG, CHOICE, COLOUR -> pattern.equalsIgnoreCase(text);
      case TEXT -> false;
    };
  }

  private static boolean same(Optional<BigDecimal> a, Optional<BigDecimal> b) {
    return a.isPresent() && b.isPresent() && a.get().compareTo(b.get()) == 0;
  }

  /** The number in a cell; empty when it is none, or may be read in two ways. */
  Optional<BigDecimal> number(String text, boolean whole) {
    return Numbers.ambiguous(text, decimalComma, whole)
        ? Optional.empty()
        : Numbers.parse(text, decimalComma);
  }

  /** What may have been meant by a change that names no row. */
  String nearest(ScenarioEdit edit) {
    for (Condition condition : edit.where()) {
      SortedSet<String> texts = seen.getOrDefault(condition.key(), new TreeSet<>());
      boolean none =
          condition.patterns().stream()
              .noneMatch(p -> texts.stream().anyMatch(t -> fits(condition.key(), p, t)));
      if (none && condition.patterns().size() == 1) {
        Optional<String> near = Nearest.of(condition.patterns().get(0), texts);
        if (near.isPresent()) {
          return "; did you mean " + condition.key() + " \"" + near.get() + "\"?";
        }
      }
    }
    return "; expected at least one";
  }
}
