package pressweek.data.week;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.problem.NotChecked;

/** Counts the order lines that each gap touches. */
final class Gaps {
  private final Map<Gap, Integer> lines = new EnumMap<>(Gap.class);

  /** A line with its gaps. */
  void line(Set<Gap> gaps) {
    gaps.forEach(gap -> lines.merge(gap, 1, Integer::sum));
  }

  /** What was not checked, what touches most lines first. */
  List<NotChecked> notChecked() {
    return lines.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(entry -> new NotChecked(entry.getKey().what(), entry.getKey().add(), entry.getValue()))
        .toList();
  }
}
