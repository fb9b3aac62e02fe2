package pressweek.app.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pressweek.data.problem.Hours;

/**
 * The number of a plan and of the one that it replaces: the ISO 8601 week in which it starts and a
 * count, for example {@code 2026-W49/3}.
 *
 * @param number the plan's own number
 * @param replaces number of the plan that it replaces; empty for none
 */
public record PlanNumber(String number, String replaces) {
  private static final Pattern NUMBER = Pattern.compile("(\\d{4}-W\\d{2})/(\\d{1,6})");

  /** The number after the highest that has been given out for the week. */
  public static PlanNumber after(EarlierPlans earlier, Hours hours) {
    String week = week(hours);
    int highest = 0;
    for (String number : earlier.numbers()) {
      Matcher parts = NUMBER.matcher(number);
      if (parts.matches() && parts.group(1).equals(week)) {
        highest = Math.max(highest, Integer.parseInt(parts.group(2)));
      }
    }
    return new PlanNumber(week + "/" + (highest + 1), earlier.replacedNumber());
  }

  /** Whether a number is one of the week in which a plan starts. */
  public static boolean isOfWeek(String number, Hours hours) {
    return number.startsWith(week(hours) + "/");
  }

  private static String week(Hours hours) {
    LocalDate day =
        Instant.ofEpochSecond(hours.startMin() * 60L).atZone(hours.zone()).toLocalDate();
    return String.format(
        Locale.ROOT,
        "%04d-W%02d",
        day.get(IsoFields.WEEK_BASED_YEAR),
        day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
  }
}
