package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.files.DryerRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Drying;
import pressweek.data.molding.Plastic;

/** Hours of drying before the first shot, and whether the hopper holds enough. */
final class DryingWorking {
  private DryingWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    OptionalDouble dryH = facts.resin(ResinRow::dryH);
    if (dryH.isEmpty()) {
      lines.add(
          new Missing(facts)
              .resin(false, "dry_h, dry_c")
              .line("drying (not checked; empty where the resin needs none)"));
    } else if (dryH.getAsDouble() == 0) {
      lines.add(new Line.Note("resins.csv dry_h is 0: the resin needs no drying"));
    } else {
      hours(facts, dryH.getAsDouble(), lines);
      hopper(facts, dryH.getAsDouble(), lines);
      lines.add(
          new Line.Caution(
              "drying is an estimate: the resin sheet rules, and moisture is measured"));
    }
    return new Section("Drying", lines);
  }

  private static void hours(RunFacts facts, double dryH, List<Line> lines) {
    double coldH = facts.plant().heat().coldStartH();
    double hours = Drying.hoursBeforeFirstShot(dryH, coldH, true);
    lines.add(
        new Line.Sum(
            "before the first shot, cold hopper",
            "hours at temperature + cold start",
            "%s h at %s C + %s h"
                .formatted(
                    Figure.exact(dryH),
                    Figure.exact(facts.resin(ResinRow::dryC).orElse(0)),
                    Figure.exact(coldH)),
            Figure.of(hours) + " h",
            Basis.ESTIMATE));
    OptionalDouble most = facts.resin(ResinRow::dryMaxH);
    if (most.isPresent()) {
      lines.add(
          new Line.Note(
              "no longer than "
                  + Figure.exact(most.getAsDouble())
                  + " h at temperature by resins.csv dry_max_h"));
    }
  }

  private static void hopper(RunFacts facts, double dryH, List<Line> lines) {
    Optional<RunFacts.Timed> timed = facts.pace().counts();
    Missing missing = new Missing(facts).mold(facts.shotG(), "part_g").cycle();
    if (missing.any()) {
      lines.add(missing.line("hopper"));
      return;
    }
    double shotG = facts.shotG().getAsDouble();
    double cycleS = timed.get().cycleS();
    double rate = Drying.rateKgH(shotG, cycleS).orElse(0);
    lines.add(
        new Line.Sum(
            "rate",
            "shot / whole cycle",
            "%s g / %s s".formatted(Figure.of(shotG), Figure.of(cycleS)),
            Figure.of(rate) + " kg/h",
            Basis.ESTIMATE));
    double kg = Drying.hopperKg(rate, dryH);
    lines.add(
        new Line.Sum(
            "in the hopper",
            "rate x hours",
            "%s kg/h x %s h".formatted(Figure.of(rate), Figure.exact(dryH)),
            Figure.of(kg) + " kg",
            Basis.ESTIMATE));
    double runKg =
        Plastic.shotsKg(QuantityWorking.shots(facts), QuantityWorking.startupShots(facts), shotG);
    if (runKg < kg) {
      lines.add(
          new Line.Note(
              "the whole run takes only "
                  + Figure.of(runKg)
                  + " kg, which is all there is to dry"));
    }
    litres(facts, Math.min(kg, runKg), lines);
  }

  private static void litres(RunFacts facts, double kg, List<Line> lines) {
    OptionalDouble bulk = facts.resin(ResinRow::bulkKgL);
    if (bulk.isEmpty()) {
      lines.add(new Missing(facts).resin(false, "bulk_density_kg_l").line("hopper volume"));
      return;
    }
    double litres = Drying.litres(kg, bulk.getAsDouble()).orElse(0);
    lines.add(
        new Line.Sum(
            "hopper volume",
            "kilograms / bulk density",
            "%s kg / %s kg/L".formatted(Figure.of(kg), Figure.exact(bulk.getAsDouble())),
            Figure.of(litres) + " L",
            Basis.ESTIMATE));
    Optional<DryerRow> dryer = facts.plastic().dryer();
    if (dryer.isEmpty()) {
      lines.add(
          new Line.Unknown(
              "whether the dryer is big enough",
              List.of("dryers.csv hopper_l, feeds for press " + facts.press().press())));
      return;
    }
    lines.add(
        new Line.Note(
            "dryer %s holds %s L by its record, %s kg of this resin: %s"
                .formatted(
                    dryer.get().dryer(),
                    Figure.exact(dryer.get().hopperL()),
                    Figure.of(Drying.massKg(dryer.get().hopperL(), bulk.getAsDouble())),
                    litres <= dryer.get().hopperL() ? "big enough" : "too small")));
  }
}
