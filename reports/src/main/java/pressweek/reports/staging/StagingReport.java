package pressweek.reports.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Run;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Job;
import pressweek.data.problem.Preparation;
import pressweek.data.problem.Press;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/**
 * What the material handlers load: a row a run, by the shift that loads it, then by press in the
 * plant's order, then by time.
 */
public final class StagingReport {
  private static final Preparation NOTHING = new Preparation(List.of(), List.of(), List.of(), 0);

  private final PlanBook book;
  private final Preparation preparation;
  private final DryerBook dryers;
  private final DryerCautions cautions;
  private final NotComputed notComputed;

  private StagingReport(PlanBook book) {
    Optional<Preparation> kept = book.plan().problem().materials().preparation();
    this.book = book;
    this.preparation = kept.orElse(NOTHING);
    this.dryers = new DryerBook(book, preparation);
    this.cautions = new DryerCautions(book, preparation, dryers);
    this.notComputed = new NotComputed(book, kept);
  }

  /** The rows of the staging list. */
  public static List<StagingRow> rows(PlanBook book) {
    return book.once(StagingReport.class, () -> new StagingReport(book).all());
  }

  private List<StagingRow> all() {
    List<String> presses = book.presses().stream().map(Press::id).toList();
    return book.plan().runs().stream()
        .map(this::row)
        .sorted(
            Comparator.comparingInt(StagingReport::shiftStart)
                .thenComparingInt(r -> presses.indexOf(r.run().press()))
                .thenComparingInt(StagingRow::needByMin))
        .toList();
  }

  private static int shiftStart(StagingRow row) {
    return row.shift().map(ShiftSpan::span).map(s -> s.fromMin()).orElse(Integer.MIN_VALUE);
  }

  private StagingRow row(Run run) {
    Job job = book.job(run);
    Batch batch = Batch.of(book, preparation, run);
    Optional<DryerUse> use = dryers.of(run);
    int needBy = needBy(run, use);
    List<String> mind = new ArrayList<>(cautions.late(run, use, needBy));
    mind.addAll(use.map(cautions::of).orElseGet(() -> cautions.ofFood(run)));
    if (use.isEmpty() && book.stay(run) == Stay.RUNNING) {
      mind.add("running already: the amount is what it still takes");
    }
    if (run.change().kinds().contains(ChangeKind.FOOD_CLEARANCE)) {
      mind.add("food-grade: dryer, hopper and loader are cleared, too, by the site procedure");
    }
    return new StagingRow(
        run,
        job,
        book.bringing(run.press(), needBy),
        needBy,
        batch,
        drying(run, use),
        mind,
        notComputed.of(run, batch, use));
  }

  /** What is dried, when drying starts; else when the change begins that fills the barrel. */
  private static int needBy(Run run, Optional<DryerUse> use) {
    int atPress = run.change().kinds().isEmpty() ? run.startMin() : run.change().startMin();
    return use.map(u -> u.held().fromMin()).orElse(atPress);
  }

  private StagingRow.DryingStep drying(Run run, Optional<DryerUse> use) {
    Optional<Granules> granules = preparation.granules(book.job(run).resin());
    Optional<DryerUse> started = use.filter(u -> u.hours() > 0);
    return new StagingRow.DryingStep(
        where(run, use),
        use.map(DryerUse::dryer).orElse(""),
        started.map(u -> u.held().fromMin()),
        started.flatMap(u -> StagingRow.figure(OptionalDouble.of(u.hours()))),
        use.isEmpty() ? Optional.empty() : granules.flatMap(g -> StagingRow.figure(g.dryC())),
        use.flatMap(u -> StagingRow.figure(u.litres())),
        use.flatMap(u -> preparation.dryer(run.press()))
            .map(Dryer::hopperL)
            .flatMap(StagingRow::figure));
  }

  private static String where(Run run, Optional<DryerUse> use) {
    if (use.isEmpty()) {
      return "hopper at " + run.press();
    }
    String dryer = use.get().dryer();
    return dryer.isEmpty() ? "a dryer for " + run.press() : "dryer " + dryer;
  }
}
