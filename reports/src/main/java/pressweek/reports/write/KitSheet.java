package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.kits.Kit;
import pressweek.reports.kits.KitPart;
import pressweek.reports.kits.KitReport;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.PlanBook;

/** The kits, each with boxes to tick and lines to sign on. */
final class KitSheet {
  private static final List<Integer> WIDTHS = List.of(10, 30, 9, 10, 9, 32);

  private final PlanBook book;

  KitSheet(PlanBook book) {
    this.book = book;
  }

  /** A card a kit; nothing when there is none. */
  List<Element> content() {
    List<Element> cards = new ArrayList<>();
    KitReport.kits(book).forEach(kit -> cards.add(card(kit)));
    return cards;
  }

  private Element card(Kit kit) {
    PlantClock clock = book.clock();
    String made =
        kit.job().line().item()
            + ", "
            + kit.job().quantity().good()
            + " good, for line "
            + kit.job().id();
    return Element.of("section", "card")
        .add(
            "h3",
            kit.run().id()
                + " on "
                + kit.run().press()
                + ", ready by "
                + clock.brief(kit.readyByMin()))
        .add("p", made)
        .add(table(kit))
        .add(Signatures.of(kit.signs()));
  }

  private static Element table(Kit kit) {
    return new PageTable<KitPart>("kit")
        .ticks("there")
        .text("part", part -> part.kind().words())
        .pair("what", KitPart::words, part -> below(part))
        .text("bin", KitPart::bin)
        .text("lot", KitPart::lot)
        .figure("how much", KitSheet::amount)
        .text("note", KitPart::note)
        .widths(WIDTHS)
        .rows(kit.parts())
        .element();
  }

  private static String below(KitPart part) {
    return part.words().equals(part.what()) ? "" : part.what();
  }

  private static String amount(KitPart part) {
    return part.grams()
        .map(Headline::kilograms)
        .or(() -> part.pieces().map(n -> Integer.toString(n)))
        .orElse("");
  }
}
