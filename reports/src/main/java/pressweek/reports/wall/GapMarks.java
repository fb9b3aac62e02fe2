package pressweek.reports.wall;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pressweek.data.plan.Change;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.Span;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Kinds;

/**
 * What stands between the bars of a strip: changes and dismounts as gaps with their minutes, waits
 * as thin lines.
 */
final class GapMarks {
  private static final double INSET = 3;
  private static final double TURNED_ROOM = 10;

  private GapMarks() {}

  /** The change before a run. */
  static Element change(Strip strip, Run run) {
    Change change = run.change();
    String kinds = change.kinds().stream().map(Kinds::words).collect(Collectors.joining(", "));
    String sentence =
        "change of "
            + Minutes.hours(change.minutes())
            + " before "
            + run.job()
            + ": "
            + kinds
            + ", "
            + strip.book().clock().span(change.startMin(), change.endMin());
    Span span = new Span(change.startMin(), change.endMin());
    return gap(strip, span, Patterns.CHANGE, Integer.toString(change.minutes()))
        .add(Strip.title(sentence));
  }

  /** A mold taken off for another press. */
  static Element dismount(Strip strip, Dismount dismount) {
    String sentence =
        "mold "
            + dismount.mold()
            + " taken off for another press, "
            + Minutes.hours(dismount.minutes())
            + ", "
            + strip.book().clock().span(dismount.startMin(), dismount.endMin());
    Span span = new Span(dismount.startMin(), dismount.endMin());
    return gap(strip, span, Patterns.DISMOUNT, Integer.toString(dismount.minutes()))
        .add(Strip.title(sentence));
  }

  private static Element gap(Strip strip, Span span, String pattern, String minutes) {
    double y = Strip.BAR_Y + INSET;
    double centre = Strip.BAR_Y + Strip.BAR / 2;
    Element group = Element.of("g", "gap");
    List<Span> pieces = strip.pieces(span);
    if (pieces.size() > 1) {
      group.add(strip.box("hatched", span, centre - 1, 2));
    }
    for (Span piece : pieces) {
      group.add(
          strip
              .box("hatched", piece, y, Strip.BAR - 2 * INSET)
              .attr("fill", "url(#" + pattern + ")"));
    }
    Strip.Room room = strip.widest(pieces);
    double middle = (room.left() + room.right()) / 2;
    String words = minutes + " min";
    boolean inFull = TextFit.width(words, Strip.SMALL) <= room.width() - 4;
    if (inFull || TextFit.width(minutes, Strip.SMALL) <= room.width() - 1) {
      group.add(Strip.text("small mid haloed", middle, centre + 3.5, inFull ? words : minutes));
    } else if (room.width() >= TURNED_ROOM) {
      String turn = String.format(Locale.ROOT, "rotate(-90 %.1f %.1f)", middle, centre);
      group.add(
          Strip.text("small mid haloed", middle, centre + 3.5, minutes).attr("transform", turn));
    }
    return group;
  }

  /** A wait: a thin line with its ends marked. */
  static Element wait(Strip strip, Wait wait) {
    double from = strip.x(wait.fromMin());
    double to = strip.x(wait.toMin());
    String lines =
        String.format(
            Locale.ROOT, "M%.1f %.1fv8M%.1f %.1fv8", from, Strip.BAR_Y + 11, to, Strip.BAR_Y + 11);
    String row = String.format(Locale.ROOT, "M%.1f %.1fH%.1f", from, Strip.BAR_Y + 15, to);
    String what = wait.what().isEmpty() ? "" : " (" + wait.what() + ")";
    String sentence =
        wait.cause().words()
            + what
            + ", "
            + strip.book().clock().span(wait.fromMin(), wait.toMin());
    Element group = Element.of("g", "wait").add(Strip.title(sentence));
    group.add(Element.of("path").attr("d", lines));
    group.add(Element.of("path", "dotted").attr("d", row));
    String words = TextFit.fit(wait.cause().words() + what, Strip.SMALL, to - from - 6);
    if (!words.isEmpty() && from >= 0) {
      group.add(Strip.text("small haloed", from + 3, Strip.BAR_Y + 9, words));
    }
    return group;
  }
}
