package pressweek.reports.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import pressweek.data.problem.Hours;

/**
 * The plant's clock: minutes since 1970 UTC as the plant writes them.
 *
 * @param zone time zone of the plant
 * @param startMin first minute of the plan; a day far from it is written with its year
 */
public record PlantClock(ZoneId zone, int startMin) {
  private static final DateTimeFormatter ISO =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter OFFSET = DateTimeFormatter.ofPattern("xxx", Locale.ROOT);
  private static final int DAY = 24 * 60;
  private static final int FAR = 180 * DAY;

  /** The clock of a plan with these hours. */
  public static PlantClock of(Hours hours) {
    return new PlantClock(hours.zone(), hours.startMin());
  }

  /** The minute by date and time of the plant. */
  public ZonedDateTime at(int minute) {
    return Instant.ofEpochSecond(60L * minute).atZone(zone);
  }

  /** The minute of an instant. */
  public static int minute(ZonedDateTime time) {
    return Math.toIntExact(Math.floorDiv(time.toEpochSecond(), 60L));
  }

  /** ISO 8601 with the plant's offset: {@code 2026-12-01T14:00+01:00}. */
  public String iso(int minute) {
    return iso(at(minute));
  }

  /** A time of the plant by ISO 8601 with its offset. */
  public static String iso(ZonedDateTime time) {
    return ISO.format(time);
  }

  /** Time of day, {@code 14:00}; with the offset in the hour that a clock change repeats. */
  public String time(int minute) {
    ZonedDateTime at = at(minute);
    boolean twice = zone.getRules().getValidOffsets(at.toLocalDateTime()).size() > 1;
    return TIME.format(at) + (twice ? " (" + OFFSET.format(at) + ")" : "");
  }

  /** The day: {@code Tue 1 Dec}, with the year when it is half a year or more from the plan. */
  public String day(int minute) {
    LocalDate date = at(minute).toLocalDate();
    boolean far = Math.abs((long) minute - startMin) > FAR;
    return dayName(date) + (far ? " " + date.getYear() : "");
  }

  /** Day and time: {@code Tue 1 Dec 14:00}. */
  public String moment(int minute) {
    return day(minute) + " " + time(minute);
  }

  /**
   * Day of the week and time, {@code Tue 14:00}, on the first seven days of the plan; else like
   * {@link #moment}.
   */
  public String brief(int minute) {
    LocalDate first = at(startMin).toLocalDate();
    LocalDate date = at(minute).toLocalDate();
    boolean near = !date.isBefore(first) && date.isBefore(first.plusDays(7));
    return near ? weekday(date) + " " + time(minute) : moment(minute);
  }

  /** From and to: {@code Tue 1 Dec 06:00–09:30}, with the second day when it is another. */
  public String span(int fromMin, int toMin) {
    boolean sameDay = at(fromMin).toLocalDate().equals(at(toMin).toLocalDate());
    return moment(fromMin) + "\u2013" + (sameDay ? time(toMin) : moment(toMin));
  }

  /**
   * A date without its year: {@code Tue 1 Dec}. English, as all of the program, whatever the
   * machine's locale.
   */
  public static String dayName(LocalDate date) {
    String month = capital(date.getMonth().name());
    return weekday(date) + " " + date.getDayOfMonth() + " " + month;
  }

  /** The day of the week in three letters. */
  public static String weekday(LocalDate date) {
    return capital(date.getDayOfWeek().name());
  }

  private static String capital(String name) {
    return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
  }
}
