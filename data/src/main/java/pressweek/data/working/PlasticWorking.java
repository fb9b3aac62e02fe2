package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pressweek.data.files.ColourRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Plastic;
import pressweek.data.molding.Regrind;

/** Resin, regrind and masterbatch of the run. */
final class PlasticWorking {
  private PlasticWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    if (facts.shotG().isEmpty()) {
      lines.add(new Missing(facts).mold(false, "part_g").line("resin, regrind and masterbatch"));
      return new Section("Resin and masterbatch", lines);
    }
    double shotG = facts.shotG().getAsDouble();
    long shots = QuantityWorking.shots(facts);
    int startup = QuantityWorking.startupShots(facts);
    double totalKg = Plastic.shotsKg(shots, startup, shotG);
    lines.add(
        new Line.Sum(
            "plastic",
            "(shots + start-up) x shot",
            "(%d + %d) x %s g".formatted(shots, startup, Figure.of(shotG)),
            Figure.of(totalKg) + " kg",
            Basis.ESTIMATE));
    lines.add(
        new Line.Sum(
            "of it runner",
            "(shots + start-up) x runner",
            "(%d + %d) x %s g".formatted(shots, startup, Figure.exact(facts.runnerG())),
            Figure.of(Plastic.shotsKg(shots, startup, facts.runnerG())) + " kg",
            Basis.ESTIMATE));
    Regrind regrind = regrind(facts, totalKg, lines);
    masterbatch(facts, totalKg, regrind, lines);
    return new Section("Resin and masterbatch", lines);
  }

  private static Regrind regrind(RunFacts facts, double totalKg, List<Line> lines) {
    OptionalDouble limit = facts.resin(ResinRow::regrindMaxPct);
    if (limit.isEmpty()) {
      lines.add(
          new Missing(facts).resin(false, "regrind_max_pct").line("regrind (none is counted on)"));
      return new Regrind(0, 0);
    }
    Regrind.Restriction restriction = facts.plastic().regrind();
    double pct = Regrind.limitPct(limit.getAsDouble(), restriction);
    Regrind regrind = Regrind.steady(facts.runnerG(), facts.shotG().orElse(0), pct);
    lines.add(
        new Line.Sum(
            "regrind",
            "plastic x min(runner / shot, limit)",
            "%s kg x min(%s g / %s g, %s)"
                .formatted(
                    Figure.of(totalKg),
                    Figure.exact(facts.runnerG()),
                    Figure.of(facts.shotG().orElse(0)),
                    Figure.exact(pct / 100)),
            Figure.of(totalKg * regrind.share()) + " kg",
            Basis.ESTIMATE));
    if (regrind.surplus() > 0) {
      lines.add(
          new Line.Sum(
              "runners left over",
              "plastic x (runner / shot - regrind share)",
              "%s kg x %s".formatted(Figure.of(totalKg), Figure.of(regrind.surplus())),
              Figure.of(totalKg * regrind.surplus()) + " kg",
              Basis.ESTIMATE));
    }
    lines.add(new Line.Note(rule(facts, restriction)));
    return regrind;
  }

  private static String rule(RunFacts facts, Regrind.Restriction restriction) {
    return switch (restriction) {
      case NONE ->
          "limit by resins.csv regrind_max_pct; runners only, parts with metal are never ground";
      case APPROVED ->
          "records.csv approves regrind:%s; runners only, parts with metal are never ground"
              .formatted(facts.plastic().resinId());
      case NOT_APPROVED ->
          "food or restricted substances: no regrind without a row regrind:%s in records.csv"
              .formatted(facts.plastic().resinId());
    };
  }

  private static void masterbatch(
      RunFacts facts, double totalKg, Regrind regrind, List<Line> lines) {
    OptionalDouble pct =
        facts.plastic().colour().map(ColourRow::letDownPct).orElse(OptionalDouble.empty());
    if (pct.isEmpty()) {
      lines.add(new Line.Unknown("masterbatch", List.of(colourColumn(facts))));
      return;
    }
    double fraction = pct.getAsDouble() / 100;
    Plastic plastic = Plastic.mix(totalKg, fraction, regrind.share());
    if (fraction == 0) {
      lines.add(new Line.Note("colours.csv let_down_pct is 0: no masterbatch"));
    } else {
      dosed(facts, totalKg, plastic, lines);
    }
    lines.add(
        new Line.Sum(
            "natural resin",
            "plastic - regrind - masterbatch",
            "%s kg - %s kg - %s kg"
                .formatted(
                    Figure.of(totalKg),
                    Figure.of(plastic.regrindKg()),
                    Figure.of(plastic.masterbatchKg())),
            Figure.of(plastic.naturalKg()) + " kg",
            Basis.ESTIMATE));
  }

  private static void dosed(RunFacts facts, double totalKg, Plastic plastic, List<Line> lines) {
    String name = facts.plastic().colour().map(ColourRow::masterbatch).orElse("");
    double fraction =
        facts.plastic().colour().map(ColourRow::letDownPct).orElseThrow().orElse(0) / 100;
    lines.add(
        new Line.Sum(
            ("masterbatch " + name).strip(),
            "(plastic - regrind) x let-down",
            "(%s kg - %s kg) x %s"
                .formatted(
                    Figure.of(totalKg),
                    Figure.of(plastic.regrindKg()),
                    String.format(Locale.ROOT, "%.4f", fraction)),
            Figure.of(plastic.masterbatchKg()) + " kg",
            Basis.ESTIMATE));
    lines.add(
        new Line.Note(
            "the let-down is a fraction of the total mass; regrind has its colour already"));
  }

  private static String colourColumn(RunFacts facts) {
    return facts.plastic().colourId().isEmpty()
        ? "colours.csv let_down_pct, and the colour itself (guide.json, orders.csv colour, or"
            + " colour= here)"
        : "colours.csv let_down_pct of " + facts.plastic().colourId();
  }
}
