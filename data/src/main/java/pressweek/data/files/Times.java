package pressweek.data.files;

import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Dates and times as they stand in a cell: ISO 8601, and the plant's own date format. */
final class Times {
  /** The pattern of ISO dates. */
  static final String ISO = "yyyy-MM-dd";

  /** Characters of an ISO date. */
  private static final int DATE_LENGTH = 10;

  private static final int FIRST_YEAR = 1990;
  private static final int LAST_YEAR = 2199;

  /** A way to write a time, and what it says. */
  private record Form(DateTimeFormatter format, TemporalQuery<When> meaning) {
    static final Form EXACT =
        new Form(DateTimeFormatter.ISO_OFFSET_DATE_TIME, t -> new When.Exact(Instant.from(t)));
    static final Form LOCAL = new Form(DateTimeFormatter.ISO_LOCAL_DATE_TIME, Form::local);
    static final Form DAY = new Form(DateTimeFormatter.ISO_LOCAL_DATE, Form::day);

    static When local(TemporalAccessor time) {
      return new When.Local(LocalDateTime.from(time));
    }

    static When day(TemporalAccessor time) {
      return new When.Day(LocalDate.from(time));
    }

    /** The time that the text says; a text of another form is found out without an exception. */
    Optional<When> read(String text) {
      ParsePosition position = new ParsePosition(0);
      boolean formed = format.parseUnresolved(text, position) != null;
      if (!formed || position.getIndex() < text.length()) {
        return Optional.empty();
      }
      try {
        return Optional.of(format.parse(text, meaning));
      } catch (DateTimeParseException e) {
        return Optional.empty();
      }
    }
  }

  private final String pattern;
  private final List<Form> forms;

  private Times(String pattern, List<Form> forms) {
    this.pattern = pattern;
    this.forms = forms;
  }

  /** Times in ISO 8601 alone. */
  static Times iso() {
    return new Times(ISO, List.of(Form.DAY, Form.LOCAL, Form.EXACT));
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
      Form day = new Form(formatter(pattern), Form::day);
      Form local = new Form(formatter(pattern + "[' ']['T']HH:mm[:ss]"), Form::local);
      LocalDate sample = LocalDate.of(2026, 12, 31);
      boolean readBack =
          day.read(day.format().format(sample)).equals(Optional.of(new When.Day(sample)));
      List<Form> forms = List.of(Form.DAY, Form.LOCAL, Form.EXACT, day, local);
      return readBack ? Optional.of(new Times(pattern, forms)) : Optional.empty();
    } catch (IllegalArgumentException | DateTimeException e) {
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
    return pattern.equals(ISO) ? ISO : pattern + " or " + ISO;
  }

  /**
   * What a cell with this text in it should hold, for messages: with a time of day if it has one.
   */
  String expected(String text) {
    return text.indexOf(':') < 0 ? expected() : expected() + ", a time of day as HH:mm after it";
  }

  /** The time that the text says; empty when it is none. */
  Optional<When> parse(String text) {
    boolean blank = text.length() > DATE_LENGTH && text.charAt(DATE_LENGTH) == ' ';
    String iso =
        blank ? text.substring(0, DATE_LENGTH) + "T" + text.substring(DATE_LENGTH + 1) : text;
    for (Form form : forms) {
      Optional<When> read = form.read(iso).or(() -> blank ? form.read(text) : Optional.empty());
      if (read.isPresent()) {
        return read;
      }
    }
    return Optional.empty();
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
    return ((When.Exact) when).instant().atOffset(ZoneOffset.UTC).getYear();
  }
}
