package pressweek.reports.wall;

import java.util.List;
import java.util.Locale;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Anchor;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Stay;

/**
 * A run as a bar in the colour of its parts; thin where it pauses because the press does not work.
 */
final class RunBar {
  private static final double THIN = 6;
  private static final double MARK = 10;
  private static final double PAD = 4;
  private static final double SPARE = 2.5;

  private final Strip strip;
  private final Run run;
  private final Job job;
  private final Span span;

  private RunBar(Strip strip, Run run) {
    this.strip = strip;
    this.run = run;
    this.job = strip.book().job(run);
    this.span = new Span(run.startMin(), run.endMin());
  }

  /** The bar of a run, linked to its row in the schedule. */
  static Element of(Strip strip, Run run) {
    return new RunBar(strip, run).element();
  }

  private Element element() {
    Swatch swatch = Swatch.of(strip.book().colour(job.resin(), job.colour()));
    String sentence = Sentence.of(strip.book(), run);
    boolean begins = strip.band().span().contains(run.startMin());
    Element link = Element.of("a", "run").attr("href", strip.page() + "#" + Anchor.run(run.id()));
    if (begins) {
      link.attr("aria-label", sentence);
    } else {
      link.attr("tabindex", "-1").attr("aria-hidden", "true");
    }
    link.add(Strip.title(sentence));
    List<Span> pieces = strip.pieces(span);
    if (pieces.size() != 1 || !pieces.get(0).equals(span)) {
      double middle = Strip.BAR_Y + (Strip.BAR - THIN) / 2;
      link.add(strip.box("edge", span, middle, THIN).attr("fill", swatch.fill()));
    }
    for (Span piece : pieces) {
      link.add(
          strip
              .box("edge", piece, Strip.BAR_Y, Strip.BAR)
              .attr("rx", "2")
              .attr("fill", swatch.fill()));
    }
    label(link, swatch, pieces);
    return link;
  }

  /** The label stands in the widest part that the picture shows. */
  private void label(Element link, Swatch swatch, List<Span> pieces) {
    Strip.Room room = strip.widest(pieces);
    Stay stay = strip.book().stay(run);
    double mark = stay == Stay.FREE || room.width() < MARK + PAD ? 0 : MARK;
    String cssClass = swatch.ink().isEmpty() ? "haloed" : "";
    if (mark > 0) {
      link.add(mark(stay, room.left() + PAD, cssClass, swatch.ink()));
    }
    double textRoom = room.width() - mark - 2 * PAD;
    Element lines = lines(stay, room.left() + mark + PAD, textRoom, cssClass);
    if (!swatch.ink().isEmpty()) {
      lines.attr("fill", swatch.ink());
    }
    link.add(lines);
  }

  /**
   * The order line, and below it the item; in a narrow bar the order line alone, in smaller
   * letters.
   */
  private Element lines(Stay stay, double x, double room, String cssClass) {
    Element group = Element.of("g", ("label " + cssClass).trim());
    if (TextFit.width(job.id(), Strip.LARGE) > room) {
      double wider = room + 2 * SPARE;
      return TextFit.width(job.id(), Strip.TINY) > wider
          ? group
          : group.add(Strip.text("tiny", x - SPARE, Strip.BAR_Y + 18, job.id()));
    }
    group.add(Strip.text("large", x, Strip.BAR_Y + 12, job.id()));
    String word = stay == Stay.FREE ? "" : stay.word() + " \u00B7 ";
    String item = TextFit.fit(word + job.item().code(), Strip.SMALL, room);
    return item.isEmpty() ? group : group.add(Strip.text("small", x, Strip.BAR_Y + 24, item));
  }

  /** Two chevrons for what is running, a pin for what is promised. */
  private static Element mark(Stay stay, double x, String cssClass, String ink) {
    double top = Strip.BAR_Y + 4;
    String lines =
        stay == Stay.RUNNING
            ? "m0 0 3.5 4-3.5 4m4-8 3.5 4-3.5 4"
            : "m3 5a2.6 2.6 0 1 1 .1 0zm0 0v5";
    String start = String.format(Locale.ROOT, "M%.1f %.1f", x, top);
    Element path = Element.of("path", ("mark " + cssClass).trim()).attr("d", start + lines);
    return ink.isEmpty() ? path : path.attr("stroke", ink);
  }
}
