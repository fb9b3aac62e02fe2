package pressweek.reports.hours;

/** Lengths of time in words. */
public final class Minutes {
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private Minutes() {}

  /** Days of 24 hours, hours and minutes without those that are nought: {@code 1 d 4 h 20 min}. */
  public static String words(long minutes) {
    StringBuilder text = new StringBuilder();
    append(text, minutes / DAY, "d");
    append(text, minutes % DAY / HOUR, "h");
    append(text, minutes % HOUR, "min");
    return text.isEmpty() ? "0 min" : text.toString();
  }

  /** Hours and minutes, for what is worked rather than waited for: {@code 38 h 20 min}. */
  public static String hours(long minutes) {
    StringBuilder text = new StringBuilder();
    append(text, minutes / HOUR, "h");
    append(text, minutes % HOUR, "min");
    return text.isEmpty() ? "0 min" : text.toString();
  }

  private static void append(StringBuilder text, long count, String unit) {
    if (count != 0) {
      text.append(text.isEmpty() ? "" : " ").append(count).append(' ').append(unit);
    }
  }
}
