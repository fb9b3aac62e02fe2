package pressweek.reports.schedule;

/** Whether a run stays where it is when the week is planned anew. */
public enum Stay {
  /** It is running now. */
  RUNNING("running"),
  /** It has been promised to the floor. */
  PROMISED("promised"),
  /** It may move. */
  FREE("");

  private final String word;

  Stay(String word) {
    this.word = word;
  }

  /** The word for it; empty for what may move. */
  public String word() {
    return word;
  }
}
