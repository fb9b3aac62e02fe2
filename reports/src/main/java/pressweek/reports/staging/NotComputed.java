package pressweek.reports.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.Run;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Job;
import pressweek.data.problem.Preparation;
import pressweek.reports.schedule.PlanBook;

/**
 * What could not be worked out for a run, each with the column that would give it.
 *
 * @param book the plan
 * @param preparation how plastic is got ready; empty in a plan that was made before it was kept
 */
record NotComputed(PlanBook book, Optional<Preparation> preparation) {
  List<String> of(Run run, Batch batch, Optional<DryerUse> use) {
    List<String> lines = new ArrayList<>();
    if (batch.plasticG().isEmpty()) {
      lines.add("kilograms: molds.csv part_g of " + run.mold());
    }
    if (preparation.isEmpty()) {
      lines.add("masterbatch and drying: the plan was made before they were kept; plan anew");
      return lines;
    }
    Job job = book.job(run);
    Preparation known = preparation.get();
    boolean dosed =
        known
            .masterbatch(job.resin(), job.colour())
            .filter(m -> m.letDownPct().isPresent())
            .isPresent();
    if (!dosed) {
      lines.add(
          job.colour().isEmpty()
              ? "masterbatch: the colour of the line"
              : "masterbatch: colours.csv let_down_pct of " + job.colour());
    }
    Optional<Granules> granules = known.granules(job.resin());
    if (granules.map(Granules::dryH).orElse(OptionalDouble.empty()).isEmpty()) {
      lines.add("drying: resins.csv dry_h of " + job.resin() + ", 0 where it needs none");
    }
    use.ifPresent(u -> dryer(known, u, lines));
    return lines;
  }

  private static void dryer(Preparation known, DryerUse use, List<String> lines) {
    if (use.kilograms().isPresent() && use.litres().isEmpty()) {
      lines.add("litres: resins.csv bulk_density_kg_l of " + use.resin());
    }
    Optional<Dryer> dryer = known.dryer(use.run().press());
    if (dryer.isEmpty()) {
      lines.add("which dryer: presses.csv dryer of " + use.run().press());
    } else if (dryer.get().hopperL().isEmpty()) {
      lines.add("whether the hopper is big enough: dryers.csv hopper_l of " + use.dryer());
    }
  }
}
