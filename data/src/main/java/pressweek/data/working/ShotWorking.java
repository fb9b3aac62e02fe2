package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.files.PlantRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Shot;

/** The plastic of a shot and the share of the barrel that it takes. */
final class ShotWorking {
  private ShotWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    if (facts.shotG().isEmpty()) {
      lines.add(new Missing(facts).mold(false, "part_g").line("shot"));
    } else {
      double shotG = facts.shotG().getAsDouble();
      lines.add(
          new Line.Sum(
              "shot",
              "live cavities x part + runner",
              "%d x %s g + %s g"
                  .formatted(
                      facts.live(),
                      Figure.exact(facts.mold().cavities().partG().orElse(0)),
                      Figure.exact(facts.runnerG())),
              Figure.of(shotG) + " g",
              Basis.ARITHMETIC));
      share(facts, shotG, lines);
    }
    return new Section("Shot and barrel", lines);
  }

  private static void share(RunFacts facts, double shotG, List<Line> lines) {
    OptionalDouble rated = facts.press().size().shotPsG();
    OptionalDouble density = facts.resin(ResinRow::densityGCm3);
    Missing missing = new Missing(facts).press(rated, "shot_ps_g").resin(density, "density");
    if (missing.any()) {
      lines.add(missing.line("share of the barrel"));
      return;
    }
    PlantRow.Fit figures = facts.plant().fit();
    double pct =
        Shot.barrelPct(shotG, rated.getAsDouble(), density.getAsDouble(), figures.psDensityGCm3())
            .orElse(0);
    lines.add(
        new Line.Sum(
            "share of the barrel",
            "shot / (rated shot x density / density of polystyrene)",
            "%s g / (%s g x %s / %s)"
                .formatted(
                    Figure.of(shotG),
                    Figure.exact(rated.getAsDouble()),
                    Figure.exact(density.getAsDouble()),
                    Figure.exact(figures.psDensityGCm3())),
            Figure.of(pct) + " %",
            Basis.ESTIMATE));
    lines.add(new Line.Note(verdict(pct, figures)));
  }

  private static String verdict(double pct, PlantRow.Fit figures) {
    String usual =
        "usual is %s-%s %%"
            .formatted(Figure.exact(figures.shotLowPct()), Figure.exact(figures.shotHighPct()));
    if (pct > figures.shotStopPct()) {
      return usual
          + "; above "
          + Figure.exact(figures.shotStopPct())
          + " % only on a press that is proven by molds.csv runs_on";
    }
    return pct < figures.shotLowPct()
        ? usual + "; this is little, and melt stays long in the barrel"
        : pct > figures.shotHighPct() ? usual + "; this is much" : usual + "; within it";
  }
}
