package pressweek.app.offer;

import java.util.List;
import pressweek.reports.schedule.TextLines;
import pressweek.solver.offer.Cures;
import pressweek.solver.offer.Help;
import pressweek.solver.offer.Offer;

/** What would help a quantity, in a few lines. */
final class CureText {
  /** The changes that are named. */
  private static final int SHOWN = 3;

  /** The changes that did not help and are named. */
  private static final int NAMED = 6;

  private static final String STEP = "  ";
  private static final String DEEPER = "    ";

  private CureText() {}

  /** Writes what would help; {@code row} is a quantity for which that was tried. */
  static void write(Answered.Row row, OfferWords words, TextLines out) {
    Cures cures = row.cures().orElseThrow();
    List<Help> best = cures.best(SHOWN);
    out.line(
        STEP,
        best.isEmpty()
            ? "what would help: " + none(cures)
            : "what would help, its own price not counted:");
    best.forEach(help -> out.line(DEEPER, help.what() + ": " + effect(row, help, words)));
    if (!cures.tried().isEmpty() || !best.isEmpty()) {
      out.line(DEEPER, tried(cures, cures.helping().size() - best.size()));
    }
  }

  private static String none(Cures cures) {
    int count = cures.tried().size();
    if (count == 0) {
      return cures.cutShort()
          ? "nothing was tried in the time"
          : "nothing that it waits for could be tried";
    }
    String more = count > NAMED ? " and " + (count - NAMED) + " more" : "";
    return "none of these: "
        + String.join(", ", cures.tried().subList(0, Math.min(NAMED, count)))
        + more;
  }

  private static String effect(Answered.Row row, Help help, OfferWords words) {
    Offer offer = help.offer();
    String pays = OfferWords.payers(offer.price());
    String was =
        help.gain() == Help.Gain.FEWER_PAY
            ? row.offers()
                .flatMap(o -> o.byNeed())
                .map(o -> " instead of " + o.price().later().size())
                .orElse("")
            : "";
    return words.date(offer) + ", " + pays + was + words.price(offer.price());
  }

  private static String tried(Cures cures, int more) {
    int count = cures.tried().size();
    String which =
        cures.cutShort()
            ? "%d of %d changes tried".formatted(count, cures.changes())
            : count + (count == 1 ? " change tried" : " changes tried");
    return "%s in %d places, none searched further%s"
        .formatted(
            which,
            cures.places(),
            more > 0 ? "; " + more + (more == 1 ? " more helps" : " more help") : "");
  }
}
