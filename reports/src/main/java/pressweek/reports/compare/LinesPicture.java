package pressweek.reports.compare;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pressweek.reports.compare.LineMove.Kind;
import pressweek.reports.compare.LineMove.State;
import pressweek.reports.markup.Element;

/**
 * Lines that go from on time to late and back: hours from the due time, an open ring for the folder
 * as it stands and a filled one for the scenario.
 */
final class LinesPicture {
  private static final int SHOWN = 30;
  private static final double LABELS = 270;
  private static final double AXIS = 460;
  private static final double WORDS = 330;
  private static final double RADIUS = 4.5;
  private static final double HOUR = 60;
  private static final double EARLIEST_H = 24;

  private final List<LineMove> moves;
  private final double mostHours;

  private LinesPicture(List<LineMove> moves) {
    this.moves = moves.subList(0, Math.min(SHOWN, moves.size()));
    this.mostHours =
        Math.max(
            24,
            this.moves.stream()
                .flatMap(m -> Stream.of(m.before(), m.after()))
                .mapToDouble(s -> s.minutes().orElse(0) / HOUR)
                .max()
                .orElse(0));
  }

  /** The picture; more lines than can be drawn are counted below it. */
  static Element of(List<LineMove> moves) {
    Element box = Element.of("div", "scroller").attr("tabindex", "0").attr("role", "region");
    box.attr("aria-label", "Lines that change sides");
    box.add(new LinesPicture(moves).element());
    if (moves.size() > SHOWN) {
      box.add(
          Element.of("p", "muted")
              .text((moves.size() - SHOWN) + " more stand in compare.xlsx, sheet lines."));
    }
    return box;
  }

  private double x(double hours) {
    double from = -EARLIEST_H;
    double share = (Math.max(from, Math.min(mostHours, hours)) - from) / (mostHours - from);
    return LABELS + 12 + share * (AXIS - 50);
  }

  private double x(State state) {
    return state.kind() == Kind.UNPLACED ? LABELS + AXIS - 14 : x(state.minutes().orElse(0) / HOUR);
  }

  private Element element() {
    double height = BarTable.HEAD + moves.size() * BarTable.ROW + 4;
    double width = LABELS + AXIS + WORDS;
    Element svg = BarTable.svg(width, height, "Lines that change sides, hours from the due time");
    svg.add(head(height));
    for (int i = 0; i < moves.size(); i++) {
      double y = BarTable.HEAD + i * BarTable.ROW;
      svg.add(BarTable.rule(y, width));
      svg.add(row(moves.get(i), y));
    }
    return svg.add(BarTable.rule(height - 2, width));
  }

  private Element head(double height) {
    Element group = Element.of("g");
    double due = x(0);
    group.add(
        Element.of("path", "day")
            .attr("d", String.format(Locale.ROOT, "M%.1f 18V%.1f", due, height - 2)));
    group.add(BarTable.text("word mid", due, 13, "due"));
    group.add(BarTable.text("small muted", LABELS + 2, 13, "a day early"));
    String latest = String.format(Locale.ROOT, "%.0f h late", mostHours);
    group.add(BarTable.text("small muted mid", x(mostHours) - 14, 13, latest));
    return group.add(BarTable.text("small muted mid", LABELS + AXIS - 4, 13, "unplaced"));
  }

  private Element row(LineMove move, double y) {
    double middle = y + BarTable.ROW / 2;
    Element group = Element.of("g");
    String label = BarTable.fitted(move.line() + "  " + move.item(), LABELS - 8);
    group.add(BarTable.text("word", 0, y + 15, label));
    boolean was = move.before().kind() != Kind.ABSENT;
    boolean is = move.after().kind() != Kind.ABSENT;
    if (was && is) {
      group.add(arrow(x(move.before()), x(move.after()), middle));
    }
    if (was) {
      group.add(ring("ring", x(move.before()), middle));
    }
    if (is) {
      group.add(ring("dot", x(move.after()), middle));
    }
    String words = move.before().words() + " \u2192 " + move.after().words();
    return group.add(BarTable.text("word", LABELS + AXIS + 24, y + 15, words));
  }

  private static Element arrow(double from, double to, double y) {
    double way = Math.signum(to - from);
    double tip = to - way * RADIUS;
    return Element.of("path", "late")
        .attr(
            "d",
            String.format(
                Locale.ROOT,
                "M%.1f %.1fH%.1fm%.1f -3l%.1f 3l%.1f 3",
                from + way * RADIUS,
                y,
                tip,
                -way * 4,
                way * 4,
                -way * 4));
  }

  private static Element ring(String cssClass, double x, double y) {
    return Element.of("circle", cssClass).attr("cx", x).attr("cy", y).attr("r", RADIUS);
  }
}
