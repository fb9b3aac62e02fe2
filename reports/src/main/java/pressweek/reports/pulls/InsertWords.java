package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.problem.Insert;
import pressweek.data.thread.Threads;

/** An insert part in words. */
public final class InsertWords {
  private static final Map<String, String> KINDS =
      Map.of(
          "through", "through nut", "blind", "blind nut", "lock", "lock nut", "tall", "tall nut");

  private InsertWords() {}

  /** What an insert is: {@code stud, M8x1.25, 25 mm, steel, zinc trivalent}. */
  public static String of(Insert insert) {
    List<String> words = new ArrayList<>();
    words.add(KINDS.getOrDefault(insert.kind(), insert.kind()));
    words.add(Threads.inFull(insert.thread()));
    insert.lengthMm().ifPresent(mm -> words.add(millimetres(mm)));
    words.add(insert.material());
    words.add(finish(insert));
    words.removeIf(String::isBlank);
    return String.join(", ", words);
  }

  private static String finish(Insert insert) {
    boolean said =
        insert.passivation().isBlank()
            || insert.passivation().equals("none")
            || insert.finish().contains(insert.passivation());
    return said ? insert.finish() : (insert.finish() + " " + insert.passivation()).trim();
  }

  private static String millimetres(double mm) {
    String text = String.format(Locale.ROOT, "%.2f", mm);
    return text.replaceAll("\\.?0+$", "") + " mm";
  }
}
