package pressweek.reports.changes;

import java.util.List;

/**
 * A task that stops the press.
 *
 * @param words what is done
 * @param minutes minutes by the plant's change table
 * @param work when it is done
 */
record Step(String words, int minutes, Work work) {
  /** When a task is done. */
  enum Work {
    /** At the mold. */
    MOLD,
    /** At the barrel, after the work at the mold or beside it. */
    BARREL,
    /** When both are done. */
    LAST
  }

  /** Minutes of all of them. */
  static int minutes(List<Step> steps, boolean beside) {
    int mold = minutes(steps, Work.MOLD);
    int barrel = minutes(steps, Work.BARREL);
    return (beside ? Math.max(mold, barrel) : mold + barrel) + minutes(steps, Work.LAST);
  }

  private static int minutes(List<Step> steps, Work work) {
    return steps.stream().filter(s -> s.work == work).mapToInt(Step::minutes).sum();
  }

  /**
   * The steps in words.
   *
   * @param known true when each has its minutes
   * @param beside true when barrel work goes on beside mold work
   */
  static List<String> words(List<Step> steps, boolean known, boolean beside) {
    boolean both = beside && minutes(steps, Work.MOLD) > 0;
    return steps.stream().map(s -> s.words(known, both && s.work == Work.BARREL)).toList();
  }

  private String words(boolean known, boolean beside) {
    String with = beside ? " beside the mold work" : "";
    return known && minutes > 0 ? "%s (%d min%s)".formatted(words, minutes, with) : words;
  }
}
