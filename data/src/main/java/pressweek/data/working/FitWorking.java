package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.molding.MoldFit;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;

/** Whether the mold goes into the press, and what the plant's record says of it. */
final class FitWorking {
  private FitWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    Mold.Body body = facts.mold().body();
    Press.Size size = facts.press().size();
    tieBars(facts, body, size, lines);
    height(facts, body, size, lines);
    opening(facts, body, size, lines);
    lines.add(new Line.Note(record(facts)));
    facts.fit().notes().forEach(note -> lines.add(new Line.Note(note)));
    if (!facts.made().doubt().isEmpty()) {
      lines.add(new Line.Note(facts.made().doubt()));
    }
    return new Section("Fit", lines);
  }

  private static void tieBars(RunFacts facts, Mold.Body body, Press.Size size, List<Line> lines) {
    MoldFit.Sides mold = new MoldFit.Sides(body.lengthMm(), body.widthMm());
    MoldFit.Sides bars = new MoldFit.Sides(size.tieBarXMm(), size.tieBarYMm());
    Missing missing =
        new Missing(facts)
            .mold(mold.known(), "length_mm, width_mm")
            .press(bars.known(), "tie_bar_x_mm, tie_bar_y_mm");
    if (missing.any()) {
      lines.add(missing.line("between the tie bars"));
      return;
    }
    boolean fits = MoldFit.betweenTieBars(mold, bars);
    lines.add(
        new Line.Note(
            "between the tie bars: %s mm in %s mm: %s"
                .formatted(words(mold), words(bars), fits ? "fits" : "does not fit")));
  }

  private static String words(MoldFit.Sides sides) {
    return Figure.exact(sides.first().orElse(0)) + " x " + Figure.exact(sides.second().orElse(0));
  }

  private static void height(RunFacts facts, Mold.Body body, Press.Size size, List<Line> lines) {
    MoldFit.Sides heights = new MoldFit.Sides(size.moldMinMm(), size.moldMaxMm());
    Missing missing =
        new Missing(facts)
            .mold(body.heightMm(), "height_mm")
            .press(heights.known(), "mold_min_mm, mold_max_mm");
    if (missing.any()) {
      lines.add(missing.line("mold height"));
      return;
    }
    boolean fits = MoldFit.height(body.heightMm(), heights);
    lines.add(
        new Line.Note(
            "mold height: %s mm in %s to %s mm: %s"
                .formatted(
                    Figure.exact(body.heightMm().orElse(0)),
                    Figure.exact(heights.first().orElse(0)),
                    Figure.exact(heights.second().orElse(0)),
                    fits ? "fits" : "does not fit")));
  }

  private static void opening(RunFacts facts, Mold.Body body, Press.Size size, List<Line> lines) {
    Missing missing =
        new Missing(facts)
            .mold(body.openingMm(), "opening_mm")
            .press(size.openingMm(), "opening_mm");
    if (missing.any()) {
      lines.add(missing.line("opening"));
      return;
    }
    double headsMm = body.openingMm().getAsDouble();
    double standMm = facts.inserts().stream().mapToDouble(RunFacts.Loaded::standMm).max().orElse(0);
    double handMm = facts.plant().fit().openingClearanceMm();
    double neededMm = MoldFit.openingMm(headsMm, standMm, handMm);
    double hasMm = size.openingMm().getAsDouble();
    lines.add(
        new Line.Sum(
            "opening",
            "what the heads need + stud + room for the hand",
            "%s mm + %s mm + %s mm"
                .formatted(Figure.exact(headsMm), Figure.exact(standMm), Figure.exact(handMm)),
            Figure.of(neededMm) + " mm",
            Basis.ESTIMATE));
    lines.add(
        new Line.Note(
            "the press opens %s mm: %s"
                .formatted(Figure.exact(hasMm), neededMm <= hasMm ? "enough" : "too little")));
  }

  private static String record(RunFacts facts) {
    RunFacts.Fit fit = facts.fit();
    if (!fit.objection().isEmpty()) {
      return "it may not run there: " + fit.objection();
    }
    return switch (fit.standing()) {
      case PROVEN -> "recorded: molds.csv runs_on says proven, which beats every check above";
      case ALLOWED -> "recorded: molds.csv runs_on allows it, which beats every check above";
      case CHECKED -> "nothing is recorded in molds.csv runs_on; the checks above decide: it may";
      case UNCHECKED -> "nothing is recorded in molds.csv runs_on and nothing could be checked";
    };
  }
}
