package pressweek.app.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Hours;

/**
 * The number of a plan and of the one that it replaces: the ISO 8601 week in which it starts and a
 * count, for example {@code 2026-W49/3}.
 *
 * @param number the plan's own number
 * @param replaces number of the plan that lay in its place; empty for none
 */
record PlanNumber(String number, String replaces) {
  private static final Pattern NUMBER = Pattern.compile("(\\d{4}-W\\d{2})/(\\d{1,6})");

  /** The number after that of the plan which lies in a folder. */
  static PlanNumber after(Path out, Hours hours) throws IOException {
    String week = week(hours);
    String before = before(out.resolve("plan.json"));
    Matcher parts = NUMBER.matcher(before);
    boolean same = parts.matches() && parts.group(1).equals(week);
    int count = same ? Integer.parseInt(parts.group(2)) + 1 : 1;
    return new PlanNumber(week + "/" + count, before);
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

  private static String before(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return "";
    }
    return PlanFile.read(file).plan().map(Plan::head).map(Head::number).orElse("");
  }
}
