package pressweek.reports.kits;

import java.util.Optional;
import java.util.Set;
import pressweek.data.problem.Insert;

/**
 * The gauge of a thread: a go/no-go ring for an outer thread, a plug for an inner one. Which class
 * it checks is the drawing's to say. Common practice, no source.
 */
public final class Gauges {
  private static final Set<String> OUTER = Set.of("stud", "shaft", "arm");

  private Gauges() {}

  /**
   * The gauge for an insert part, its thread as the plant writes it; empty when it has no thread.
   */
  public static Optional<String> of(Insert insert) {
    if (insert.thread().isBlank()) {
      return Optional.empty();
    }
    String form = OUTER.contains(insert.kind()) ? "ring" : "plug";
    return Optional.of("go/no-go " + form + " gauge " + insert.thread().strip());
  }
}
