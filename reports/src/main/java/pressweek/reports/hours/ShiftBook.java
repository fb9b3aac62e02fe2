package pressweek.reports.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/** Every shift that touches a stretch of time, in order of time. */
public final class ShiftBook {
  private final Hours hours;
  private final List<ShiftSpan> spans;

  private ShiftBook(Hours hours, List<ShiftSpan> spans) {
    this.hours = hours;
    this.spans = spans;
  }

  /** The shifts of a plant that touch the given stretch. */
  public static ShiftBook of(Hours hours, Span stretch) {
    PlantClock clock = PlantClock.of(hours);
    LocalDate last = clock.at(stretch.toMin()).toLocalDate();
    List<ShiftSpan> spans = new ArrayList<>();
    LocalDate day = clock.at(stretch.fromMin()).toLocalDate().minusDays(1);
    for (; !day.isAfter(last); day = day.plusDays(1)) {
      for (Shift shift : hours.shifts()) {
        if (shift.days().contains(day.getDayOfWeek()) && !hours.closed().contains(day)) {
          spans.add(onDay(shift, day, hours.zone()));
        }
      }
    }
    spans.removeIf(s -> !s.span().overlaps(stretch));
    spans.sort(Comparator.comparing((ShiftSpan s) -> s.span().fromMin()));
    return new ShiftBook(hours, List.copyOf(spans));
  }

  /** All of them, in order of time. */
  public List<ShiftSpan> all() {
    return spans;
  }

  /** Those of a calendar. A press without a calendar of the plant's works all shifts. */
  public List<ShiftSpan> ofCalendar(String calendar) {
    return spans.stream().filter(s -> belongs(s.shift(), calendar)).toList();
  }

  /** True when the shift is one of the calendar's. */
  public boolean belongs(String shift, String calendar) {
    Optional<Calendar> known =
        hours.calendars().stream().filter(c -> c.id().equals(calendar)).findFirst();
    return known.map(c -> c.shifts().contains(shift)).orElse(true);
  }

  /**
   * The shift under way at the minute that passes the first of the tests, else the second, and so
   * on.
   */
  public Optional<ShiftSpan> at(int minute, List<Predicate<ShiftSpan>> tests) {
    List<ShiftSpan> underWay = spans.stream().filter(s -> s.span().contains(minute)).toList();
    return tests.stream().flatMap(t -> underWay.stream().filter(t)).findFirst();
  }

  /** The last shift that ended at the minute or before it. */
  public Optional<ShiftSpan> before(int minute) {
    return spans.stream()
        .filter(s -> s.span().toMin() <= minute)
        .max(Comparator.comparing(s -> s.span().toMin()));
  }

  /** The first shift that starts at the minute or after it. */
  public Optional<ShiftSpan> after(int minute) {
    return spans.stream().filter(s -> s.span().fromMin() >= minute).findFirst();
  }

  /** Names of the shifts that have setters. */
  public Set<String> withSetters() {
    return having(s -> s.setters() > 0);
  }

  /** Names of the shifts that are said to have inspectors. */
  public Set<String> withInspectors() {
    return having(s -> s.inspectors().orElse(0) > 0);
  }

  private Set<String> having(Predicate<Shift> test) {
    return hours.shifts().stream()
        .filter(test)
        .map(Shift::name)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The breaks of a shift, in order of time. */
  public List<Span> breaks(ShiftSpan span) {
    return hours.shifts().stream()
        .filter(s -> s.name().equals(span.shift()))
        .flatMap(s -> s.breaks().stream().map(b -> breakOf(s, b, span.day())))
        .sorted(Comparator.comparingInt(Span::fromMin))
        .toList();
  }

  /** A break before the hour in which the shift begins is on the next day. */
  private Span breakOf(Shift shift, Break pause, LocalDate day) {
    LocalDate from = pause.from().isBefore(shift.from()) ? day.plusDays(1) : day;
    LocalDate to = pause.to().isAfter(pause.from()) ? from : from.plusDays(1);
    return new Span(minute(from, pause.from(), hours.zone()), minute(to, pause.to(), hours.zone()));
  }

  private static ShiftSpan onDay(Shift shift, LocalDate day, ZoneId zone) {
    LocalDate end = shift.to().isAfter(shift.from()) ? day : day.plusDays(1);
    return new ShiftSpan(
        shift.name(),
        day,
        new Span(minute(day, shift.from(), zone), minute(end, shift.to(), zone)));
  }

  /** A local time that a clock change skips counts as the first instant after the gap. */
  private static int minute(LocalDate day, LocalTime time, ZoneId zone) {
    LocalDateTime local = day.atTime(time);
    ZoneOffsetTransition change = zone.getRules().getTransition(local);
    Instant instant =
        change != null && change.isGap() ? change.getInstant() : local.atZone(zone).toInstant();
    return Math.toIntExact(Math.floorDiv(instant.getEpochSecond(), 60L));
  }
}
