package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Cooling;
import pressweek.data.molding.Cooling.Criterion;
import pressweek.data.molding.Cooling.Heat;
import pressweek.data.molding.Cooling.Shape;
import pressweek.data.molding.Cycle;
import pressweek.data.problem.Barrel;

/** Cooling of the thickest wall, or curing of a thermoset, beside the mold's own cycle. */
final class CoolingWorking {
  private CoolingWorking() {}

  static Section of(RunFacts facts) {
    boolean thermoset =
        facts.plastic().resin().map(ResinRow::barrel).filter(Barrel.THERMOSET::equals).isPresent();
    List<Line> lines = new ArrayList<>();
    double longestS = thermoset ? curing(facts, lines) : cooling(facts, lines);
    moldCycle(facts, longestS, lines);
    return new Section(thermoset ? "Curing" : "Cooling", lines);
  }

  private static double curing(RunFacts facts, List<Line> lines) {
    OptionalDouble wall = facts.mold().cavities().wallMm();
    OptionalDouble perMm = facts.resin(ResinRow::curePerMmS);
    Missing missing = new Missing(facts).mold(wall, "wall_mm").resin(perMm, "cure_s_per_mm");
    OptionalDouble cureS = Cycle.cureS(wall.orElse(0), perMm.orElse(0));
    if (cureS.isEmpty()) {
      lines.add(missing.line("curing"));
    } else {
      lines.add(
          new Line.Sum(
              "curing",
              "thickest wall x seconds a millimetre",
              "%s mm x %s s/mm"
                  .formatted(Figure.exact(wall.getAsDouble()), Figure.exact(perMm.getAsDouble())),
              Figure.of(cureS.getAsDouble()) + " s",
              Basis.ESTIMATE));
    }
    facts
        .pace()
        .standard()
        .filter(row -> row.cureS().isPresent())
        .ifPresent(
            row ->
                lines.add(
                    new Line.Sum(
                        "curing",
                        "",
                        row.at() + " cure_s",
                        Figure.exact(row.cureS().getAsDouble()) + " s",
                        Basis.RECORDED)));
    return cureS.orElse(0);
  }

  private static double cooling(RunFacts facts, List<Line> lines) {
    OptionalDouble wall = facts.mold().cavities().wallMm();
    OptionalDouble diffusivity = facts.resin(ResinRow::diffusivity);
    OptionalDouble melt = facts.resin(ResinRow::meltC);
    OptionalDouble mold = facts.resin(ResinRow::moldC);
    OptionalDouble eject = facts.resin(ResinRow::ejectC);
    Missing missing =
        new Missing(facts)
            .mold(wall, "wall_mm")
            .resin(diffusivity, "diffusivity")
            .resin(melt, "melt_c")
            .resin(mold, "mold_c")
            .resin(eject, "eject_c");
    if (missing.any()) {
      lines.add(missing.line("cooling"));
      return 0;
    }
    Heat heat = new Heat(melt.getAsDouble(), mold.getAsDouble(), eject.getAsDouble());
    double a = diffusivity.getAsDouble();
    Cooling.Section plate = new Cooling.Section(Shape.PLATE, wall.getAsDouble());
    lines.add(
        new Line.Note(
            "Tm melt, Tw mold and Te ejection temperature in C, a diffusivity in mm2/s; "
                + (facts.made().solid()
                    ? "the solid head as a wall and as a round section of that size"
                    : "the thickest wall as a plate")));
    line(plate, Criterion.MEAN, a, heat).ifPresent(lines::add);
    line(plate, Criterion.CENTRE, a, heat).ifPresent(lines::add);
    if (facts.made().solid()) {
      line(new Cooling.Section(Shape.CYLINDER, wall.getAsDouble()), Criterion.CENTRE, a, heat)
          .ifPresent(lines::add);
    }
    lines.add(
        new Line.Caution(
            "published diffusivities of one resin differ by up to 1.8 times; the resin sheet rules,"
                + " and a recorded cycle wins"));
    return Cooling.of(plate, Criterion.CENTRE, a, heat).map(Cooling::seconds).orElse(0.0);
  }

  private static Optional<Line> line(
      Cooling.Section section, Criterion criterion, double a, Heat heat) {
    Shape shape = section.shape();
    String factor = String.format(Locale.ROOT, "%.3f", shape.factor(criterion));
    String divisor = String.format(Locale.ROOT, "%.2f", shape.divisor());
    String size = shape == Shape.PLATE ? "s" : "D";
    return Cooling.of(section, criterion, a, heat)
        .map(
            cooling ->
                new Line.Sum(
                    (shape == Shape.PLATE ? "wall" : "round section")
                        + (criterion == Criterion.MEAN
                            ? ", its mean at ejection"
                            : ", its centre at ejection"),
                    size + "^2 / (" + divisor + " a) x ln(" + factor + " (Tm - Tw) / (Te - Tw))",
                    "%s^2 / (%s x %s) x ln(%s x (%s - %s) / (%s - %s))"
                        .formatted(
                            Figure.exact(section.mm()),
                            divisor,
                            Figure.exact(a),
                            factor,
                            Figure.exact(heat.meltC()),
                            Figure.exact(heat.moldC()),
                            Figure.exact(heat.ejectC()),
                            Figure.exact(heat.moldC())),
                    Figure.of(cooling.seconds()) + " s",
                    Basis.ESTIMATE));
  }

  private static void moldCycle(RunFacts facts, double longestS, List<Line> lines) {
    OptionalDouble cycleS = facts.mold().cycleS();
    if (cycleS.isEmpty()) {
      lines.add(new Missing(facts).mold(false, "cycle_s").line("the mold's own cycle"));
      return;
    }
    lines.add(
        new Line.Sum(
            "the mold's own cycle",
            "",
            "molds.csv cycle_s of " + facts.mold().id(),
            Figure.exact(cycleS.getAsDouble()) + " s",
            Basis.RECORDED));
    if (longestS == 0) {
      return;
    }
    lines.add(
        new Line.Note(
            longestS > cycleS.getAsDouble()
                ? "the recorded cycle counts although the estimate alone is longer: ask which of the"
                    + " two figures is wrong"
                : "the recorded cycle counts, not the estimate"));
  }
}
