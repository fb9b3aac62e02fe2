package pressweek.reports.wall;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;

/**
 * Late orders of a strip: a flag where the order was due and a line from it to where it is ready,
 * above the bars.
 */
final class DueFlags {
  private static final double LINE_Y = 12.5;

  private final Strip strip;
  private double free = Double.NEGATIVE_INFINITY;

  private DueFlags(Strip strip) {
    this.strip = strip;
  }

  /** The flags of the late runs among these, by due time. */
  static Element of(Strip strip, List<Run> runs) {
    DueFlags flags = new DueFlags(strip);
    Element group = Element.of("g", "flags");
    runs.stream()
        .filter(r -> strip.book().lateMin(r) > 0)
        .filter(r -> strip.shows(flags.span(r)))
        .sorted(Comparator.comparingInt(flags::due))
        .forEach(r -> group.add(flags.flag(r)));
    return group;
  }

  private int due(Run run) {
    return strip.book().job(run).deadline().dueMin();
  }

  /** From due to ready, as far as it is on the wall. */
  private Span span(Run run) {
    Span extent = strip.axis().extent();
    int from = Math.max(extent.fromMin(), Math.min(extent.toMin() - 1, due(run)));
    return new Span(from, Math.max(from + 1, Math.min(extent.toMin(), run.readyMin())));
  }

  private Element flag(Run run) {
    Job job = strip.book().job(run);
    Span span = span(run);
    boolean onWall = due(run) >= strip.axis().extent().fromMin();
    double from = strip.x(span.fromMin());
    double to = strip.x(span.toMin());
    String late = job.id() + " " + Minutes.words(strip.book().lateMin(run)) + " late";
    String sentence =
        late
            + ": due "
            + strip.book().clock().moment(due(run))
            + ", ready "
            + strip.book().clock().moment(run.readyMin());
    Element group = Element.of("g", "due").add(Strip.title(sentence));
    group.add(Element.of("path", "late").attr("d", path("M%.1f %.1fH%.1f", from, LINE_Y, to)));
    group.add(Element.of("path", "late").attr("d", path("M%.1f %.1fv6", to, LINE_Y - 4)));
    if (strip.band().span().contains(span.fromMin())) {
      String shape = onWall ? "M%.1f %.1fv-12l7 3-7 3" : "M%.1f %.1fm7 -11l-6 4 6 4z";
      group.add(Element.of("path", "flag").attr("d", path(shape, from, Strip.LANE)));
      double room = strip.band().width() - from - 12;
      if (from >= free && TextFit.width(late, Strip.SMALL) <= room) {
        group.add(Strip.text("small haloed", from + 10, LINE_Y - 3.5, late));
        free = from + 14 + TextFit.width(late, Strip.SMALL);
      }
    }
    return group;
  }

  private static String path(String shape, Object... figures) {
    return String.format(Locale.ROOT, shape, figures);
  }
}
