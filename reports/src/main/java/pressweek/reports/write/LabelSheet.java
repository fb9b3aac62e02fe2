package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Pull;
import pressweek.reports.labels.BarPicture;
import pressweek.reports.labels.KitLabel;
import pressweek.reports.labels.LabelReport;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;

/** The labels to cut out, two beside each other on an A4 or Letter sheet. */
final class LabelSheet {
  /** Room for the bars, and their height; the label itself is sized in the style. */
  private static final double BARS_MM = 86;

  private static final double BARS_HIGH_MM = 8;
  private static final double SQUARE_MM = 25;

  private static final String CAUTION =
      "A label says what the plan asks for; compare the lot's own papers with it before use.";

  private final PlanBook book;

  private LabelSheet(PlanBook book) {
    this.book = book;
  }

  /** The labels of a plan. */
  static Part part(PlanBook book) {
    return new Part("labels", "Labels", CAUTION, new LabelSheet(book).content());
  }

  private List<Element> content() {
    List<KitLabel> labels = LabelReport.labels(book);
    if (labels.isEmpty()) {
      return List.of(Element.of("p").text("There is no run to label."));
    }
    List<Element> rows = new ArrayList<>();
    for (int i = 0; i < labels.size(); i += 2) {
      Element row = Element.of("div", "labelrow").add(label(labels.get(i)));
      rows.add(i + 1 < labels.size() ? row.add(label(labels.get(i + 1))) : row);
    }
    return rows;
  }

  private Element label(KitLabel label) {
    Element box = Element.of("div", "label");
    box.add(
        Element.of("div", "labelhead")
            .add("b", label.run().press())
            .add("span", label.run().id())
            .add("span", "need by " + book.clock().brief(label.needByMin())));
    Element words =
        Element.of("div", "labelwords")
            .add("div", label.job().item().code())
            .add("div", "line " + label.job().id() + ", mold " + label.run().mold());
    label.pulls().forEach(p -> words.add(pull(p)));
    if (label.pulls().isEmpty()) {
      words.add(Element.of("div", "pull").text("no inserts from stock"));
    }
    return box.add(Element.of("div", "labelbody").add(words).add(square(label)))
        .add(Element.of("div", "labelfoot").add(bars(label)).add(foot(label)));
  }

  private static Element pull(Pull pull) {
    String bin = pull.bin().isBlank() ? "" : ", bin " + pull.bin();
    String lot = pull.lot().isBlank() ? "" : ", lot " + pull.lot();
    return Element.of("div", "pull")
        .add("b", pull.insert())
        .text(" " + pull.pieces() + " pieces" + bin + lot);
  }

  /** The whole label in a square code; when that is too much, what finds the run again. */
  private Element square(KitLabel label) {
    Optional<Element> code =
        BarPicture.qr(label.text(book.clock().iso(label.needByMin())), SQUARE_MM)
            .or(() -> BarPicture.qr(label.shortText(), SQUARE_MM));
    return code.orElseGet(() -> Element.of("div", "muted").text("too much for a code"));
  }

  private static Element bars(KitLabel label) {
    return BarPicture.code128(label.ids(), BARS_MM, BARS_HIGH_MM)
        .orElseGet(
            () ->
                Element.of("div", "muted")
                    .text("no bars: the run's number is too long or not in plain ASCII"));
  }

  private static Element foot(KitLabel label) {
    String box = label.count() == 1 ? "" : ", box " + label.place() + " of " + label.count();
    return Element.of("div").text("plan " + label.ids() + box);
  }
}
