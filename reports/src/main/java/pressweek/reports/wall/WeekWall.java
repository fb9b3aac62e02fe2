package pressweek.reports.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.data.problem.Press;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;
import pressweek.reports.markup.Pixels;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.TimeAxis.Band;

/**
 * The week wall: one strip a press by time. Runs are bars in the colour of their parts, a change is
 * a gap with its minutes, what a press waits for is a thin line, a late order has a flag where it
 * was due. Presses are drawn in rows of at most fifteen and days in bands that fit a sheet: on a
 * screen the bands stand side by side, on paper below each other, each with its labels.
 */
public final class WeekWall {
  private static final int STRIPS_A_SHEET = 15;
  private static final double LABELS = 92;

  private final PlanBook book;
  private final TimeAxis axis;
  private final AxisPicture head;
  private final String page;

  private WeekWall(PlanBook book, TimeAxis axis, String page) {
    this.book = book;
    this.axis = axis;
    this.head = new AxisPicture(book, axis);
    this.page = page;
  }

  /** The axis on which all of the plans have room. */
  private static TimeAxis axis(List<PlanBook> books) {
    int from = books.stream().mapToInt(b -> b.extent().fromMin()).min().orElseThrow();
    int to = books.stream().mapToInt(b -> b.extent().toMin()).max().orElseThrow();
    List<Span> working = new ArrayList<>();
    books.forEach(b -> b.presses().forEach(p -> working.addAll(b.working(p))));
    return TimeAxis.of(new Span(from, to), Span.union(working));
  }

  /** The wall of a plan, with its legend. */
  public static Element of(PlanBook book) {
    WeekWall wall = new WeekWall(book, axis(List.of(book)), "");
    return Element.of("div", "wallbox")
        .add(Patterns.definitions())
        .add(wall.scroller("Week wall"))
        .add(Element.of("p", "detail").attr("aria-hidden", "true").text("\u00A0"))
        .add(legend());
  }

  /**
   * The walls of several plans on one axis, so that the same hour stands at the same place in each.
   * They use {@link #hatchings} and are explained by {@link #legend}, each once a page.
   *
   * @param books the plans
   * @param pages for each the address of the page with its schedule, to which its runs lead
   */
  public static List<Element> aligned(List<PlanBook> books, List<String> pages) {
    if (books.isEmpty()) {
      return List.of();
    }
    TimeAxis axis = axis(books);
    List<Element> walls = new ArrayList<>();
    for (int i = 0; i < books.size(); i++) {
      WeekWall wall = new WeekWall(books.get(i), axis, pages.get(i));
      walls.add(wall.scroller("Week wall of plan " + (i + 1)));
    }
    return List.copyOf(walls);
  }

  /** The hatchings of walls, which have to be on the page once. */
  public static Element hatchings() {
    return Patterns.definitions();
  }

  /** What the marks of a wall mean. */
  public static Element legend() {
    return Legend.element();
  }

  private Element scroller(String label) {
    Element scroller =
        Element.of("div", "wall")
            .attr("tabindex", "0")
            .attr("role", "region")
            .attr("aria-label", label + "; it scrolls sideways");
    sheets(book.presses()).forEach(p -> scroller.add(row(p)));
    return scroller;
  }

  /** The presses in rows of nearly the same number. */
  static List<List<Press>> sheets(List<Press> presses) {
    int rows = (presses.size() + STRIPS_A_SHEET - 1) / STRIPS_A_SHEET;
    List<List<Press>> sheets = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      sheets.add(presses.subList(i * presses.size() / rows, (i + 1) * presses.size() / rows));
    }
    return List.copyOf(sheets);
  }

  private Element row(List<Press> presses) {
    Element row = Element.of("div", "wallrow");
    for (Band band : axis.bands(book.clock())) {
      row.add(Element.of("div", "panel").add(labels(presses)).add(picture(presses, band)));
    }
    return row;
  }

  private double bottom(List<Press> presses) {
    return head.height() + presses.size() * Strip.HEIGHT;
  }

  private Element picture(List<Press> presses, Band band) {
    double bottom = bottom(presses);
    Element grounds = Element.of("g");
    Element works = Element.of("g");
    Element rules = Element.of("g");
    for (int i = 0; i < presses.size(); i++) {
      Press press = presses.get(i);
      Strip strip = new Strip(book, press, book.working(press), axis, band, page);
      double y = head.height() + i * Strip.HEIGHT;
      String shift = String.format(Locale.ROOT, "translate(0 %.1f)", y);
      grounds.add(StripPicture.ground(strip).attr("transform", shift));
      works.add(StripPicture.work(strip).attr("transform", shift));
      rules.add(rule(y, band.width()));
    }
    rules.add(rule(bottom - 0.5, band.width()));
    String days =
        book.clock().day(band.span().fromMin())
            + " to "
            + book.clock().day(band.span().toMin() - 1);
    return svg("strips", band.width(), bottom)
        .attr("role", "group")
        .attr("aria-label", days)
        .add(grounds)
        .add(rules)
        .add(head.element(band, bottom))
        .add(works);
  }

  private static Element rule(double y, double width) {
    return Element.of("path", "rule")
        .attr("d", String.format(Locale.ROOT, "M0 %.1fH%.1f", y, width));
  }

  private Element labels(List<Press> presses) {
    double bottom = bottom(presses);
    Element svg = svg("labels", LABELS, bottom);
    for (int i = 0; i < presses.size(); i++) {
      Press press = presses.get(i);
      double y = head.height() + i * Strip.HEIGHT;
      svg.add(rule(y, LABELS));
      svg.add(Strip.text("press", 2, y + 19, TextFit.fit(press.id(), 14, LABELS - 4)));
      String build = String.join(", ", Kinds.words(press));
      svg.add(Strip.text("small muted", 2, y + 31, TextFit.fit(build, Strip.SMALL, LABELS - 2)));
      svg.add(Strip.text("small muted", 2, y + 42, Kinds.food(press)));
    }
    return svg.add(rule(bottom - 0.5, LABELS));
  }

  private static Element svg(String cssClass, double width, double height) {
    return Element.of("svg", cssClass)
        .attr("width", width)
        .attr("height", height)
        .attr("viewBox", "0 0 " + Pixels.text(width) + " " + Pixels.text(height));
  }
}
