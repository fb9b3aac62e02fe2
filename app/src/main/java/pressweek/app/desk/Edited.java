package pressweek.app.desk;

/** What came of an edit. */
public sealed interface Edited {
  /**
   * It is done.
   *
   * @param week the week with it
   * @param what what was done, in words: {@code moved 4711/2 to H6, place 3}
   */
  record Done(DeskWeek week, String what) implements Edited {}

  /**
   * It cannot be done.
   *
   * @param why why not, in a sentence
   */
  record Refused(String why) implements Edited {}
}
