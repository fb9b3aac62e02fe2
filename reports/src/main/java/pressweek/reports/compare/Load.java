package pressweek.reports.compare;

/**
 * How far a stretch of time is used.
 *
 * @param of press, or shift
 * @param when day of the plant's date as {@code 2026-12-01}; empty for the whole of it
 * @param busyMin minutes in which it is to work
 * @param setupMin minutes of changes and dismounts in it
 * @param productionMin minutes of runs in it
 */
public record Load(String of, String when, int busyMin, int setupMin, int productionMin) {
  /** Share of the time that is used, percent; 0 where it does not work. */
  public double percent() {
    return busyMin == 0 ? 0 : 100.0 * (setupMin + productionMin) / busyMin;
  }
}
