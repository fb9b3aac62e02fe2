package pressweek.data.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Dates and times as they stand in a cell: ISO 8601, and the plant's own date format. */
final class Times {
  /** The pattern of ISO dates. */
  static final String ISO = "yyyy-MM-dd";

  private static final int FIRST_YEAR = 1990;
  private static final int LAST_YEAR = 2199;

  private final String pattern;
  private final List<DateTimeFormatter> own;

  private Times(String pattern, List<DateTimeFormatter> own) {
    this.pattern = pattern;
    this.own = own;
  }

  /** Times in ISO 8601 alone. */
  static Times iso() {
    return new Times(ISO, List.of());
  }

  /**
   * Times in ISO 8601 and with dates of this pattern; empty when the pattern cannot show a date and
   * read it back.
   */
  static Optional<Times> of(String pattern) {
    if (pattern.equals(ISO)) {
      return Optional.of(iso());
    }
    try {
      List<DateTimeFormatter> own =
          List.of(formatter(pattern), formatter(pattern + "[' ']['T']HH:mm[:ss]"));
      LocalDate sample = LocalDate.of(2026, 12, 31);
      boolean readBack = LocalDate.parse(own.get(0).format(sample), own.get(0)).equals(sample);
      return readBack ? Optional.of(new Times(pattern, own)) : Optional.empty();
    } catch (IllegalArgumentException | java.time.DateTimeException e) {
      return Optional.empty();
    }
  }

  private static DateTimeFormatter formatter(String pattern) {
    // Without an era "y" leaves a strictly read date without a year; "u" is the year itself.
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern.replace('y', 'u'))
        .toFormatter(Locale.ENGLISH)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** What a cell should hold, for messages. */
  String expected() {
    return own.isEmpty() ? ISO : pattern + " or " + ISO;
  }

  /** The time that the text says; empty when it is none. */
  Optional<When> parse(String text) {
    String iso =
        text.length() > 10 && text.charAt(10) == ' '
            ? text.substring(0, 10) + "T" + text.substring(11)
            : text;
    Optional<TemporalAccessor> found = read(iso, DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    if (found.isPresent()) {
      return found.map(OffsetDateTime::from).map(t -> new When.Exact(t.toInstant()));
    }
    return read(iso, DateTimeFormatter.ISO_LOCAL_DATE_TIME)
        .or(() -> read(iso, DateTimeFormatter.ISO_LOCAL_DATE))
        .or(() -> own.stream().flatMap(f -> read(text, f).stream()).findFirst())
        .map(Times::local);
  }

  private static When local(TemporalAccessor time) {
    return time instanceof LocalDateTime local
        ? new When.Local(local)
        : new When.Day(LocalDate.from(time));
  }

  private static Optional<TemporalAccessor> read(String text, DateTimeFormatter format) {
    try {
      return Optional.of(
          format.parseBest(text, OffsetDateTime::from, LocalDateTime::from, LocalDate::from));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** True when the year is one that a plan may speak of. */
  static boolean plausible(When when) {
    int year = year(when);
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  /** The years that a plan may speak of, for messages. */
  static String years() {
    return "a year from " + FIRST_YEAR + " to " + LAST_YEAR;
  }

  private static int year(When when) {
    if (when instanceof When.Day day) {
      return day.date().getYear();
    }
    if (when instanceof When.Local local) {
      return local.time().getYear();
    }
    return ((When.Exact) when).instant().atOffset(java.time.ZoneOffset.UTC).getYear();
  }
}
