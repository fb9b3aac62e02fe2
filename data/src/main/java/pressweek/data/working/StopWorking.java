package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Residence;
import pressweek.data.molding.Shot;
import pressweek.data.problem.Barrel;

/** How long melt stays in the barrel, and what a stop of the press means for it. */
final class StopWorking {
  private StopWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    OptionalDouble rated = facts.press().size().shotPsG();
    OptionalDouble density = facts.resin(ResinRow::densityGCm3);
    Missing missing =
        new Missing(facts)
            .mold(facts.shotG(), "part_g")
            .press(rated, "shot_ps_g")
            .resin(density, "density")
            .cycle();
    if (missing.any()) {
      lines.add(missing.line("residence in the barrel"));
    } else {
      residence(facts, rated.getAsDouble(), density.getAsDouble(), lines);
    }
    boolean thermoset =
        facts.plastic().resin().map(ResinRow::barrel).filter(Barrel.THERMOSET::equals).isPresent();
    if (thermoset) {
      lines.add(
          new Line.Note("it cures in the barrel: a stop is purged at once (common practice)"));
    }
    lines.add(
        new Line.Caution(
            "hot melt and purge burn: shield, face and hands; the resin sheet and the site's"
                + " procedure rule"));
    return new Section("Barrel residence and stops", lines);
  }

  private static void residence(RunFacts facts, double ratedPsG, double density, List<Line> lines) {
    double ps = facts.plant().fit().psDensityGCm3();
    double factor = facts.plant().fit().barrelInventory();
    double inventoryG = factor * Shot.ratedG(ratedPsG, density, ps).orElse(0);
    lines.add(
        new Line.Sum(
            "melt in the barrel",
            "inventory factor x rated shot x density / density of polystyrene",
            "%s x %s g x %s / %s"
                .formatted(
                    Figure.exact(factor),
                    Figure.exact(ratedPsG),
                    Figure.exact(density),
                    Figure.exact(ps)),
            Figure.of(inventoryG) + " g",
            Basis.ESTIMATE));
    double shotG = facts.shotG().orElse(0);
    double cycleS = facts.pace().counts().map(RunFacts.Timed::cycleS).orElse(0.0);
    Optional<Residence> residence = Residence.of(inventoryG, shotG, cycleS);
    residence.ifPresent(
        stay -> {
          lines.add(
              new Line.Sum(
                  "residence",
                  "melt in the barrel / shot x whole cycle",
                  "%s g / %s g x %s s"
                      .formatted(Figure.of(inventoryG), Figure.of(shotG), Figure.of(cycleS)),
                  Figure.of(stay.minutes()) + " min",
                  Basis.ESTIMATE));
          stops(facts, stay, lines);
        });
  }

  private static void stops(RunFacts facts, Residence stay, List<Line> lines) {
    OptionalDouble limit = facts.resin(ResinRow::residenceMaxMin);
    if (limit.isEmpty()) {
      lines.add(
          new Missing(facts)
              .resin(false, "residence_max_min")
              .line("longest stop without a purge"));
      return;
    }
    String most = Figure.exact(limit.getAsDouble());
    Optional<Residence.StopRule> rule = stay.stopRule(limit.getAsDouble());
    if (rule.isEmpty()) {
      lines.add(
          new Line.Note(
              "the resin bears "
                  + most
                  + " min by its record: too long without any stop; a smaller barrel or a shorter"
                  + " cycle is needed"));
      return;
    }
    lines.add(
        new Line.Sum(
            "longest stop",
            "limit of the resin - residence, whole minutes",
            "%s min - %s min".formatted(most, Figure.of(stay.minutes())),
            rule.get().longestMin() + " min",
            Basis.ESTIMATE));
    lines.add(new Line.Note("job sheet: " + rule.get().sentence()));
  }
}
