package pressweek.reports.hours;

import java.time.LocalDate;

/**
 * A shift on one day.
 *
 * @param shift name of the shift
 * @param day day on which it begins, the plant's date
 * @param span from its start to its end, breaks not cut out
 */
public record ShiftSpan(String shift, LocalDate day, Span span) {
  /** The shift as a column holds it: {@code 2026-12-01 early}. */
  public String id() {
    return day + " " + shift;
  }

  /** The shift as a heading: {@code Tue 1 Dec, early}. */
  public String heading() {
    return PlantClock.dayName(day) + ", " + shift;
  }
}
