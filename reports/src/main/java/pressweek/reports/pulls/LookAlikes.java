package pressweek.reports.pulls;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Threads that are brought in one shift and are easily taken for each other. */
final class LookAlikes {
  private final Map<String, Optional<ThreadSize>> threads = new LinkedHashMap<>();

  /** Of the threads of one shift. */
  LookAlikes(Collection<String> designations) {
    new TreeSet<>(designations)
        .forEach(d -> threads.put(d, d.isBlank() ? Optional.empty() : ThreadSize.read(d)));
  }

  /**
   * What to mind about a thread beside the others: which it looks like, or that it could not be
   * compared.
   */
  List<String> cautions(String designation) {
    if (designation.isBlank() || threads.size() < 2) {
      return List.of();
    }
    Optional<ThreadSize> own = threads.getOrDefault(designation, Optional.empty());
    if (own.isEmpty()) {
      return List.of("thread not compared with the others: check with the thread gauge");
    }
    List<String> others =
        threads.entrySet().stream()
            .filter(e -> e.getValue().filter(t -> own.get().looksLike(t)).isPresent())
            .map(Map.Entry::getKey)
            .toList();
    return others.isEmpty()
        ? List.of()
        : List.of("looks like " + String.join(" and ", others) + ": check with the thread gauge");
  }
}
