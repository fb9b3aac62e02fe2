package pressweek.reports.wall;

import java.util.List;
import pressweek.data.problem.Press;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.TimeAxis.Band;

/**
 * One press within one picture of the wall, and the measures that all that is drawn there shares.
 *
 * @param book the plan
 * @param press the press
 * @param working when it works
 * @param axis where a minute stands
 * @param band the part of the axis that the picture shows
 * @param page address of the page with the schedule to which runs lead; empty for the same page
 */
record Strip(
    PlanBook book, Press press, List<Span> working, TimeAxis axis, Band band, String page) {
  /** Height of a strip: the lane for due flags, the bar, and a gap. */
  static final double HEIGHT = 48;

  static final double LANE = 14;
  static final double BAR_Y = 16;
  static final double BAR = 29;
  static final double LARGE = 11;
  static final double SMALL = 10;
  static final double TINY = 9;

  Strip {
    working = List.copyOf(working);
  }

  /** Where a minute stands within the picture. */
  double x(int minute) {
    return axis.x(minute) - band.x();
  }

  /** True when the picture shows a part of the span. */
  boolean shows(Span span) {
    return span.overlaps(band.span());
  }

  /** The parts of a span in which the press works; the whole span when the calendar knows none. */
  List<Span> pieces(Span span) {
    List<Span> pieces = working.stream().filter(span::overlaps).map(span::within).toList();
    return pieces.isEmpty() ? List.of(span) : pieces;
  }

  /** The widest part of the pieces that the picture shows, by its left and right edge. */
  Room widest(List<Span> pieces) {
    Room widest = new Room(0, 0);
    for (Span piece : pieces) {
      Room room =
          new Room(Math.max(0, x(piece.fromMin())), Math.min(band.width(), x(piece.toMin())));
      widest = room.width() > widest.width() ? room : widest;
    }
    return widest;
  }

  /** Room for a text: left and right edge. */
  record Room(double left, double right) {
    double width() {
      return right - left;
    }
  }

  /** A rectangle over a span of time. */
  Element box(String cssClass, Span span, double y, double height) {
    double left = x(span.fromMin());
    return Element.of("rect", cssClass)
        .attr("x", left)
        .attr("y", y)
        .attr("width", Math.max(1.5, x(span.toMin()) - left))
        .attr("height", height);
  }

  /** A text with its class and place. */
  static Element text(String cssClass, double x, double y, String text) {
    return Element.of("text", cssClass).attr("x", x).attr("y", y).text(text);
  }

  /** What a pointer that rests on an element shows. */
  static Element title(String text) {
    return Element.of("title").text(text);
  }
}
