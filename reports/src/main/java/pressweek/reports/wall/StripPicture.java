package pressweek.reports.wall;

import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Downtime;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Reasons;

/**
 * The two layers of a strip: the ground (when the press works, when it is away) and what it does.
 */
final class StripPicture {
  private StripPicture() {}

  /** Shading where the press does not work, cross-hatching with the reason where it is away. */
  static Element ground(Strip strip) {
    Element group = Element.of("g");
    List<Span> closed = Span.without(List.of(strip.axis().extent()), strip.working());
    closed.stream()
        .filter(strip::shows)
        .forEach(s -> group.add(strip.box("closed", s, 0, Strip.HEIGHT)));
    for (Downtime away : strip.book().downtime(strip.press())) {
      Span span = PlanBook.span(away).within(strip.axis().extent());
      if (span.minutes() > 0 && strip.shows(span)) {
        group.add(away(strip, span, away));
      }
    }
    return group;
  }

  private static Element away(Strip strip, Span span, Downtime away) {
    String reason = away.reason().isBlank() ? "away" : away.reason();
    String sentence =
        strip.press().id()
            + " away: "
            + reason
            + ", "
            + strip.book().clock().span(away.fromMin(), away.toMin());
    double from = Math.max(0, strip.x(span.fromMin()));
    double room = Math.min(strip.band().width(), strip.x(span.toMin())) - from - 8;
    Element group = Element.of("g", "away").add(Strip.title(sentence));
    group.add(
        strip
            .box("hatched", span, 1, Strip.HEIGHT - 2)
            .attr("fill", "url(#" + Patterns.AWAY + ")"));
    String words = TextFit.fit(reason, Strip.SMALL, room);
    if (!words.isEmpty()) {
      group.add(Strip.text("small haloed", from + 4, Strip.BAR_Y + 9, words));
    }
    return group;
  }

  /** Gaps, waits, bars and due flags of the press. */
  static Element work(Strip strip) {
    List<Run> runs = strip.book().runsOn(strip.press());
    Element group =
        Element.of("g").attr("role", "group").attr("aria-label", "press " + strip.press().id());
    for (Run run : runs) {
      run.waits().stream()
          .filter(w -> !Reasons.isShown(w))
          .filter(w -> strip.shows(new Span(w.fromMin(), w.toMin())))
          .forEach(w -> group.add(GapMarks.wait(strip, w)));
    }
    strip.book().plan().dismounts().stream()
        .filter(d -> d.press().equals(strip.press().id()))
        .filter(d -> strip.shows(new Span(d.startMin(), d.endMin())))
        .forEach(d -> group.add(GapMarks.dismount(strip, d)));
    for (Run run : runs) {
      Span change = new Span(run.change().startMin(), run.change().endMin());
      if (change.minutes() > 0 && strip.shows(change)) {
        group.add(GapMarks.change(strip, run));
      }
      if (strip.shows(new Span(run.startMin(), run.endMin()))) {
        group.add(RunBar.of(strip, run));
      }
    }
    return group.add(DueFlags.of(strip, runs));
  }
}
