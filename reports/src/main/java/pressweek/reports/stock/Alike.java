package pressweek.reports.stock;

import java.util.List;
import java.util.Locale;
import pressweek.data.problem.Insert;
import pressweek.data.published.Grades;
import pressweek.data.thread.Threads;

/**
 * Insert parts that meet the same requirement by what the plant says of them: kind, thread, length,
 * material (stainless steels by their group of ISO 3506-1), finish, passivation and tip. Whether
 * one may stand in for another is not said here.
 */
final class Alike {
  private Alike() {}

  /** The others that meet what a part meets; none for a part that is not described. */
  static List<Insert> to(Insert part, List<Insert> all) {
    return part.kind().isBlank()
        ? List.of()
        : all.stream().filter(other -> !other.id().equals(part.id()) && same(part, other)).toList();
  }

  private static boolean same(Insert one, Insert other) {
    return plain(one.kind()).equals(plain(other.kind()))
        && Threads.same(one.thread(), other.thread())
        && one.lengthMm().equals(other.lengthMm())
        && group(one.material()).equals(group(other.material()))
        && plain(one.finish()).equals(plain(other.finish()))
        && plain(one.passivation()).equals(plain(other.passivation()))
        && one.tip().equals(other.tip());
  }

  private static String group(String material) {
    return Grades.stainlessGroup(material).orElse(plain(material));
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
