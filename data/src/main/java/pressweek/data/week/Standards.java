package pressweek.data.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.PressRow;
import pressweek.data.files.StandardRow;
import pressweek.data.problem.Press;

/** Recorded cycles, of which the one counts that says most. */
public final class Standards {
  private final Map<String, List<StandardRow>> byMold = new HashMap<>();

  /** The rows of {@code standards.csv}. */
  public Standards(List<StandardRow> rows) {
    for (StandardRow row : rows) {
      byMold.computeIfAbsent(row.mold(), k -> new ArrayList<>()).add(row);
    }
  }

  /** The recorded cycle of a mold with a resin on a press; empty when there is none. */
  public Optional<StandardRow> find(String mold, String resin, PressRow press) {
    return byMold.getOrDefault(mold, List.of()).stream()
        .filter(row -> row.resin().isEmpty() || row.resin().equals(resin))
        .filter(row -> says(row, press) >= 0)
        .max(
            Comparator.comparingInt((StandardRow row) -> says(row, press))
                .thenComparing(row -> !row.resin().isEmpty())
                .thenComparing(row -> -row.at().line()));
  }

  /**
   * How closely a row names the press: 2 by its number, 1 by its kind, 0 not at all, -1 another.
   */
  private static int says(StandardRow row, PressRow press) {
    if (row.press().isEmpty()) {
      return 0;
    }
    if (row.press().equals(press.press())) {
      return 2;
    }
    Press.Build build = press.build();
    boolean kind =
        row.press().equalsIgnoreCase(build.orientation().name())
            || row.press().equalsIgnoreCase(build.table().name());
    return kind ? 1 : -1;
  }
}
