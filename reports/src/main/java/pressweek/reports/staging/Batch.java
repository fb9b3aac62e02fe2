package pressweek.reports.staging;

import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.molding.LetDown;
import pressweek.data.molding.Plastic;
import pressweek.data.molding.Shot;
import pressweek.data.plan.Run;
import pressweek.data.problem.Making;
import pressweek.data.problem.Masterbatch;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Preparation;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;

/**
 * The plastic of a run: parts, runners and scrap, start-up shots and purge. Ground runners are not
 * taken off, so that enough is there. An estimate; what is empty is not known.
 *
 * @param shotG grams of a shot
 * @param plasticG all of it, grams, rounded up
 * @param startupG of it start-up shots, grams, rounded up
 * @param purgeG of it purge, grams
 * @param masterbatchG masterbatch in it, grams, rounded up; 0 for a colour without
 * @param masterbatch name of the masterbatch; may be empty
 */
public record Batch(
    OptionalDouble shotG,
    Optional<Integer> plasticG,
    Optional<Integer> startupG,
    int purgeG,
    Optional<Integer> masterbatchG,
    String masterbatch) {
  private static final double ROUNDING = 1e-6;

  /** The plastic of a run. */
  static Batch of(PlanBook book, Preparation preparation, Run run) {
    OptionalDouble shotG = book.mold(run.mold()).map(Batch::shotG).orElse(OptionalDouble.empty());
    Optional<Making> making = book.option(run).map(Option::making);
    int startup = Kinds.exchanges(run.change()) ? making.map(Making::startupShots).orElse(0) : 0;
    int purgeG = run.change().purgeG();
    Optional<Integer> plasticG = Optional.empty();
    Optional<Integer> startupG = Optional.empty();
    if (shotG.isPresent() && making.isPresent()) {
      double grams = shotG.getAsDouble();
      double kg = Plastic.shotsKg(making.get().shots(), startup, grams);
      plasticG = Optional.of(up(1000 * kg + purgeG));
      startupG = Optional.of(up(startup * grams));
    }
    var job = book.job(run);
    Optional<Masterbatch> colour = preparation.masterbatch(job.resin(), job.colour());
    OptionalDouble pct = colour.map(Masterbatch::letDownPct).orElse(OptionalDouble.empty());
    Optional<Integer> masterbatchG =
        pct.isEmpty() ? Optional.empty() : plasticG.map(g -> dosedG(g, pct.getAsDouble()));
    String name = colour.map(Masterbatch::name).orElse("");
    return new Batch(shotG, plasticG, startupG, purgeG, masterbatchG, name);
  }

  private static OptionalDouble shotG(Mold mold) {
    Mold.Cavities cavities = mold.cavities();
    return cavities.partG().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Shot.grams(
                cavities.live(), cavities.partG().getAsDouble(), cavities.runnerG().orElse(0)));
  }

  private static int dosedG(int plasticG, double pct) {
    return pct == 0 ? 0 : up(new LetDown(pct / 100).masterbatchKg(plasticG));
  }

  private static int up(double grams) {
    return (int) Math.ceil(grams - ROUNDING);
  }

  /** Natural or precoloured resin, grams; empty when the masterbatch is not known. */
  public Optional<Integer> resinG() {
    return plasticG.flatMap(all -> masterbatchG.map(colour -> all - colour));
  }
}
