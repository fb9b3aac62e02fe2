package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.lookalike.LookAlike;
import pressweek.data.lookalike.LookAlikes;
import pressweek.data.problem.Insert;
import pressweek.data.thread.ThreadSize;
import pressweek.data.thread.Threads;

/** Insert parts that are brought in one shift, and what to mind about each beside the others. */
final class BroughtTogether {
  private record Telling(String difference, String toldBy) {}

  private final LookAlikes lookAlikes;
  private final List<Insert> inserts;
  private final long threads;
  private final Map<String, List<String>> known = new HashMap<>();

  /**
   * Parts of one shift.
   *
   * @param lookAlikes the look-alikes among all parts of the plant
   * @param inserts the parts, each once
   */
  BroughtTogether(LookAlikes lookAlikes, List<Insert> inserts) {
    this.lookAlikes = lookAlikes;
    this.inserts = inserts;
    this.threads =
        inserts.stream()
            .map(Insert::thread)
            .filter(t -> !t.isBlank())
            .map(Threads::key)
            .distinct()
            .count();
  }

  /**
   * What to mind about a part: which others look like it and what tells them apart, or that its
   * thread could not be compared with theirs.
   */
  List<String> cautions(Insert insert) {
    return known.computeIfAbsent(insert.id(), id -> found(insert));
  }

  private List<String> found(Insert insert) {
    Map<Telling, List<String>> others = new LinkedHashMap<>();
    for (Insert other : inserts) {
      for (LookAlike alike : lookAlikes.between(insert.id(), other.id())) {
        Telling telling = new Telling(alike.difference(), alike.toldBy());
        others.computeIfAbsent(telling, t -> new ArrayList<>()).add(alike.b());
      }
    }
    List<String> cautions = new ArrayList<>();
    if (isUnread(insert.thread()) && threads > 1) {
      cautions.add("thread not compared with the others: check with the thread gauge");
    }
    others.forEach((telling, ids) -> cautions.add(words(telling, ids)));
    return List.copyOf(cautions);
  }

  private static boolean isUnread(String thread) {
    return !thread.isBlank() && ThreadSize.read(thread).isEmpty();
  }

  private static String words(Telling telling, List<String> ids) {
    List<String> names = ids.stream().sorted().toList();
    int last = names.size() - 1;
    String all =
        last == 0
            ? names.get(0)
            : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    return "do not mix with " + all + " (" + telling.difference + "): " + telling.toldBy;
  }
}
