package pressweek.reports.guide;

import java.util.List;

/**
 * A practice question and its answer.
 *
 * @param level how hard it is
 * @param ask the question
 * @param about the code or the words that it is about; may be empty
 * @param answer the answer
 * @param why what each part says; may be empty
 */
public record Question(Level level, String ask, String about, String answer, List<Row> why) {
  public Question {
    why = List.copyOf(why);
  }

  /** How hard a question is, the easiest first. */
  public enum Level {
    ONE_PART("One part of a code"),
    WHOLE_CODE("Whole codes"),
    RULES("Rules, what is not written, and faults");

    private final String title;

    Level(String title) {
      this.title = title;
    }

    /** What stands above the questions. */
    public String title() {
      return title;
    }
  }

  /**
   * A line of an explanation.
   *
   * @param text part of the code; empty for what no part says
   * @param part what kind of part it is, or {@code rule} or {@code standard}
   * @param means what it says
   */
  public record Row(String text, String part, String means) {}
}
