package pressweek.examples;

import java.time.LocalDate;

/**
 * How large a drawn plant is.
 *
 * @param jobs order lines, 1 to 5,000
 * @param presses presses, 1 to 100
 */
public record PlantSize(int jobs, int presses) {
  /** Monday on which the plan starts. */
  static final LocalDate START = LocalDate.of(2026, 11, 30);

  /**
   * Hours that a press works in a week: five days of two shifts of 7.5 hours, and six hours on
   * Saturday.
   */
  private static final int HOURS_PER_WEEK = 81;

  /** Lines that a press makes in a week in a plant like this. */
  private static final int LINES_PER_PRESS_WEEK = 12;

  public PlantSize {
    if (jobs < 1 || jobs > 5000) {
      throw new IllegalArgumentException("jobs must be 1 to 5000 but was " + jobs);
    }
    if (presses < 1 || presses > 100) {
      throw new IllegalArgumentException("presses must be 1 to 100 but was " + presses);
    }
  }

  /** Weeks of the horizon: one for about 12 lines a press, more when there are more lines. */
  public int weeks() {
    int perWeek = LINES_PER_PRESS_WEEK * presses;
    return Math.max(1, (jobs + perWeek / 2) / perWeek);
  }

  /** Working minutes of a press in the horizon. */
  int pressMinutes() {
    return weeks() * HOURS_PER_WEEK * 60;
  }

  /** Vertical presses: three of five. */
  int verticalPresses() {
    return Math.max(1, presses * 3 / 5);
  }

  /** Molds: one for every four lines. */
  int molds() {
    return Math.max(1, jobs / 4);
  }

  /** Heads of which two molds exist. */
  int twinHeads() {
    return molds() / 6;
  }

  /** Insert parts. */
  int inserts() {
    return Math.max(6, jobs / 4);
  }

  /** Setters a shift: one for every five presses. */
  int setters() {
    return Math.max(1, presses / 5);
  }

  /**
   * The day so many working days (Monday to Friday) after the start, or before it when negative.
   */
  static LocalDate workday(int index) {
    return START.plusWeeks(Math.floorDiv(index, 5)).plusDays(Math.floorMod(index, 5));
  }
}
