package pressweek.reports.wall;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.TimeAxis.Band;
import pressweek.reports.wall.TimeAxis.Piece;

/** Days, shifts and hours above the strips. */
final class AxisPicture {
  private static final double DAY_ROW = 17;
  private static final double ROW = 13;
  private static final double TICK_ROOM = 22;

  private final PlanBook book;
  private final TimeAxis axis;
  private final List<List<ShiftSpan>> lanes;

  AxisPicture(PlanBook book, TimeAxis axis) {
    this.book = book;
    this.axis = axis;
    this.lanes = lanes(book, axis.extent());
  }

  /** Shifts in as few rows as they need not to overlap. */
  private static List<List<ShiftSpan>> lanes(PlanBook book, Span extent) {
    List<List<ShiftSpan>> lanes = new ArrayList<>();
    for (ShiftSpan shift : book.shifts().all()) {
      if (shift.span().overlaps(extent)) {
        lane(lanes, shift).add(shift);
      }
    }
    return lanes;
  }

  private static List<ShiftSpan> lane(List<List<ShiftSpan>> lanes, ShiftSpan shift) {
    for (List<ShiftSpan> lane : lanes) {
      if (lane.get(lane.size() - 1).span().toMin() <= shift.span().fromMin()) {
        return lane;
      }
    }
    List<ShiftSpan> lane = new ArrayList<>();
    lanes.add(lane);
    return lane;
  }

  /** Height of the axis. */
  double height() {
    return DAY_ROW + lanes.size() * ROW + ROW + 3;
  }

  /** The axis of a band, and the lines that run from it down over the strips. */
  Element element(Band band, double bottom) {
    Element group = Element.of("g", "axis").attr("aria-hidden", "true");
    for (ShiftSpan shift : book.shifts().all()) {
      if (band.span().contains(shift.span().fromMin())) {
        double x = axis.x(shift.span().fromMin()) - band.x();
        group.add(line("shift", x, height(), bottom));
      }
    }
    days(group, band, bottom);
    for (int i = 0; i < lanes.size(); i++) {
      for (ShiftSpan shift : lanes.get(i)) {
        shift(group, band, shift, DAY_ROW + i * ROW);
      }
    }
    axis.pieces().forEach(p -> hours(group, band, p));
    return group;
  }

  private void days(Element group, Band band, double bottom) {
    PlantClock clock = book.clock();
    int from = band.span().fromMin();
    while (from < band.span().toMin()) {
      ZonedDateTime next = clock.at(from).toLocalDate().plusDays(1).atStartOfDay(clock.zone());
      int to = Math.min(PlantClock.minute(next), band.span().toMin());
      double left = axis.x(from) - band.x();
      double room = axis.x(to) - band.x() - left - 6;
      String name = clock.day(from);
      String words =
          fits(name, room) ? name : fits(name.substring(0, 3), room) ? name.substring(0, 3) : "";
      if (from > axis.extent().fromMin()) {
        group.add(line("day", left, 0, bottom));
      }
      if (!words.isEmpty()) {
        group.add(Strip.text("dayname", left + 4, 12.5, words));
      }
      from = to;
    }
  }

  private static boolean fits(String words, double room) {
    return TextFit.width(words, 12) <= room;
  }

  private void shift(Element group, Band band, ShiftSpan shift, double y) {
    Span shown = shift.span().within(band.span());
    if (shown.minutes() <= 0) {
      return;
    }
    double left = axis.x(shown.fromMin()) - band.x();
    double right = axis.x(shown.toMin()) - band.x();
    String words = TextFit.fit(shift.shift(), Strip.SMALL, right - left - 6);
    if (!words.isEmpty()) {
      group.add(Strip.text("small muted", left + 4, y + 9, words));
    }
  }

  private void hours(Element group, Band band, Piece piece) {
    if (piece.squeezed() || piece.span().minutes() <= 0) {
      return;
    }
    double perHour = piece.width() * 60 / piece.span().minutes();
    int step = perHour >= TICK_ROOM ? 1 : perHour * 2 >= TICK_ROOM ? 2 : 4;
    Span shown = piece.span().within(band.span());
    ZonedDateTime hour = book.clock().at(shown.fromMin()).truncatedTo(ChronoUnit.HOURS);
    for (; PlantClock.minute(hour) < shown.toMin(); hour = hour.plus(Duration.ofHours(1))) {
      int minute = PlantClock.minute(hour);
      if (minute >= shown.fromMin() && hour.getHour() % step == 0) {
        double x = axis.x(minute) - band.x();
        group.add(line("tick", x, height() - 4, height()));
        boolean room = axis.x(shown.toMin()) - axis.x(minute) >= 12;
        if (room) {
          String name = String.format(Locale.ROOT, "%02d", hour.getHour());
          group.add(Strip.text("hour muted", x + 1.5, height() - 5, name));
        }
      }
    }
  }

  private static Element line(String cssClass, double x, double top, double bottom) {
    return Element.of("path", cssClass)
        .attr("d", String.format(Locale.ROOT, "M%.1f %.1fV%.1f", x, top, bottom));
  }
}
