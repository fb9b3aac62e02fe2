package pressweek.app.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import pressweek.data.files.When;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Hours;

/** The moment from which a command looks at the plant. */
final class Moments {
  private static final int DATE_LENGTH = 10;
  private static final int FIRST_YEAR = 1990;
  private static final int LAST_YEAR = 2199;
  private static final List<Function<String, When>> FORMS =
      List.of(
          text -> new When.Day(LocalDate.parse(text)),
          text -> new When.Local(LocalDateTime.parse(text)),
          text -> new When.Exact(OffsetDateTime.parse(text).toInstant()));
  private static final Instant LAST = Instant.parse("4000-01-01T00:00:00Z");

  private Moments() {}

  /** The given moment, else the present, as minutes since 1970 UTC, rounded up to the hour. */
  static int nextHour(CommandLine line, String given) {
    Instant moment = given.isEmpty() ? Instant.now() : parse(line, given);
    long hours = Math.floorDiv(moment.getEpochSecond() + 3599, 3600);
    return Math.toIntExact(hours * 60);
  }

  /** The given moment, else the present, as minutes since 1970 UTC, seconds cut off. */
  static int minute(CommandLine line, String given) {
    return given.isEmpty()
        ? present()
        : Math.toIntExact(Math.floorDiv(parse(line, given).getEpochSecond(), 60));
  }

  /** The same; a time without an offset is on the plant's clock. */
  static int minute(CommandLine line, String given, ZoneId zone) {
    try {
      LocalDateTime local = LocalDateTime.parse(given);
      return minute(line, local.atZone(zone).toOffsetDateTime().toString());
    } catch (DateTimeException e) {
      return minute(line, given);
    }
  }

  /**
   * The given moment within a plan, as minutes since 1970 UTC; one outside is a bad argument.
   *
   * @param given empty for none
   * @param otherwise the moment where none is given
   */
  static int within(CommandLine line, String given, int otherwise, Plan plan) {
    Hours hours = plan.problem().plant().hours();
    int nowMin = given.isEmpty() ? otherwise : minute(line, given, hours.zone());
    if (nowMin < hours.startMin() || nowMin >= hours.endMin()) {
      String which = given.isEmpty() ? "the present" : "--now " + given;
      throw new ParameterException(
          line,
          "%s is outside plan %s; expected %sa time from %s to %s"
              .formatted(
                  which,
                  plan.head().number(),
                  given.isEmpty() ? "--now, " : "",
                  text(hours.startMin(), hours.zone()),
                  text(hours.endMin(), hours.zone())));
    }
    return nowMin;
  }

  /** The present in minutes since 1970 UTC. */
  static int present() {
    return Math.toIntExact(Math.floorDiv(Instant.now().getEpochSecond(), 60));
  }

  /** A minute since 1970 UTC on the plant's clock, as ISO 8601. */
  static String text(int minute, ZoneId zone) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
        Instant.ofEpochSecond(minute * 60L).atZone(zone));
  }

  /**
   * A date, a local time or a time with an offset, as files have them.
   *
   * @param option the option that gives it, for messages
   */
  static When when(CommandLine line, String option, String text) {
    for (Function<String, When> form : FORMS) {
      try {
        When when = form.apply(text);
        int year = LocalDate.parse(text.substring(0, DATE_LENGTH)).getYear();
        if (year >= FIRST_YEAR && year <= LAST_YEAR) {
          return when;
        }
      } catch (DateTimeException | StringIndexOutOfBoundsException e) {
        continue;
      }
    }
    throw new ParameterException(
        line,
        "%s \"%s\" is not a date from %d to %d; expected one as 2026-12-03 or 2026-12-03T12:00"
            .formatted(option, text, FIRST_YEAR, LAST_YEAR));
  }

  private static Instant parse(CommandLine line, String text) {
    try {
      Instant moment = OffsetDateTime.parse(text).toInstant();
      if (moment.isAfter(Instant.EPOCH) && moment.isBefore(LAST)) {
        return moment;
      }
    } catch (DateTimeException e) {
      throw new ParameterException(line, wanted(text), e);
    }
    throw new ParameterException(line, wanted(text));
  }

  private static String wanted(String text) {
    return "--now \"" + text + "\" is not a time with an offset; expected one as 2026-11-30T06:00Z";
  }
}
