package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Clamp;
import pressweek.data.problem.Mold;

/** The clamp force that a shot needs. */
final class ClampWorking {
  private ClampWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    Mold.Cavities cavities = facts.mold().cavities();
    if (cavities.partAreaCm2().isEmpty()) {
      lines.add(new Missing(facts).mold(false, "part_area_cm2").line("clamp force needed"));
    } else {
      force(facts, cavities.partAreaCm2().getAsDouble(), lines);
    }
    return new Section("Clamp force", lines);
  }

  private static void force(RunFacts facts, double partAreaCm2, List<Line> lines) {
    double runnerCm2 = facts.mold().cavities().runnerAreaCm2().orElse(0);
    double areaCm2 = Clamp.projectedAreaCm2(facts.live(), partAreaCm2, runnerCm2);
    lines.add(
        new Line.Sum(
            "projected area",
            "live cavities x part + runner",
            "%d x %s cm2 + %s cm2"
                .formatted(facts.live(), Figure.exact(partAreaCm2), Figure.exact(runnerCm2)),
            Figure.of(areaCm2) + " cm2",
            Basis.ARITHMETIC));
    OptionalDouble own = facts.resin(ResinRow::cavityKnCm2);
    double pressure = own.orElse(facts.plant().fit().cavityKnCm2());
    double factor = facts.plant().fit().clampFactor();
    double neededKn = Clamp.forceKn(areaCm2, pressure, factor);
    lines.add(
        new Line.Sum(
            "clamp force",
            "area x cavity pressure x factor",
            "%s cm2 x %s kN/cm2 x %s"
                .formatted(Figure.of(areaCm2), Figure.exact(pressure), Figure.exact(factor)),
            Figure.of(neededKn) + " kN",
            Basis.ESTIMATE));
    if (own.isEmpty()) {
      lines.add(
          new Line.Note(
              "the cavity pressure is plant.json fit.cavity_kn_cm2, an average; "
                  + new Missing(facts).resin(false, "cavity_kn_cm2").words()
                  + " would say it"));
    }
    press(facts, neededKn, lines);
    lines.add(
        new Line.Caution(
            "the machine manual and the resin sheet rule; lock out before reaching in"));
  }

  private static void press(RunFacts facts, double neededKn, List<Line> lines) {
    OptionalDouble has = facts.press().size().clampKn();
    if (has.isEmpty()) {
      lines.add(
          new Missing(facts)
              .press(false, "clamp_kn")
              .line("whether the press holds the mold shut"));
      return;
    }
    boolean enough = neededKn <= has.getAsDouble();
    lines.add(
        new Line.Note(
            "press %s has %s kN by its record: %s"
                .formatted(
                    facts.press().press(),
                    Figure.exact(has.getAsDouble()),
                    enough ? "enough" : "too little")));
  }
}
