package pressweek.reports.changes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.data.molding.Changeover;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.ChangeTable;
import pressweek.reports.changes.ChangeWork.Tasks;
import pressweek.reports.changes.Step.Work;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.staging.StagingReport;
import pressweek.reports.staging.StagingRow;

/**
 * What there is to do for a change: first what can be done while the press still runs, then what
 * stops it. That the two be kept apart is the first step to shorter changes (S. Shingo's internal
 * and external setup). Each task that stops the press has its minutes by the plant's change table;
 * none has when they do not add up to the change's, as after a recorded change.
 */
final class SetterTasks {
  private final PlanBook book;
  private final MoldMoves molds;
  private final BarrelStep barrel;
  private final Changeover changeover;
  private final ChangeTable table;
  private final Map<String, StagingRow> staging;
  private final Map<String, List<Pull>> pulls;

  SetterTasks(PlanBook book, MoldMoves molds, BarrelStep barrel) {
    this.book = book;
    this.molds = molds;
    this.barrel = barrel;
    this.changeover = new Changeover(book.plan().problem());
    this.table = book.plan().problem().plant().changes();
    this.staging =
        StagingReport.rows(book).stream()
            .collect(Collectors.toMap(r -> r.run().id(), r -> r, (first, second) -> first));
    this.pulls = book.plan().pulls().stream().collect(Collectors.groupingBy(Pull::run));
  }

  /** The tasks of a change. */
  Tasks of(Run run, ChangeRow row, String firstArticle) {
    List<Step> steps = steps(run.change(), row, firstArticle);
    boolean beside = table.colourWorkBeside();
    boolean known = Step.minutes(steps, beside) == row.minutes();
    return new Tasks(before(run, row), Step.words(steps, known, beside));
  }

  /** The tasks of a dismount. */
  Tasks ofDismount(ChangeRow row) {
    String words = "take off " + molds.out(row).words(row.moldOut());
    Step step = new Step(words, row.minutes(), Work.MOLD);
    return new Tasks(List.of(), Step.words(List.of(step), true, false));
  }

  private List<Step> steps(Change change, ChangeRow row, String firstArticle) {
    List<Step> steps = new ArrayList<>();
    if (!row.moldOut().isEmpty()) {
      String words = "take off " + molds.out(row).words(row.moldOut());
      steps.add(new Step(words, changeover.dismountMin(row.moldOut()), Work.MOLD));
    }
    if (change.kinds().contains(ChangeKind.TOOLING)) {
      steps.add(new Step("exchange tooling" + tooling(row), table.toolingMin(), Work.MOLD));
    }
    if (BarrelStep.filled(row)) {
      int minutes = changeover.barrelWork(change.from(), change.to()).minutes();
      steps.add(new Step(barrel.task(row), minutes, Work.BARREL));
    }
    if (!row.moldIn().isEmpty()) {
      String words = "put on " + molds.in(row).words(row.moldIn());
      steps.add(new Step(words, changeover.mountMin(row.moldIn()), Work.MOLD));
    }
    if (change.kinds().contains(ChangeKind.FOOD_CLEARANCE)) {
      steps.add(
          new Step(
              "clear press, mold, dryer and loader for food", table.foodClearMin(), Work.LAST));
    }
    if (Kinds.exchanges(change)) {
      steps.add(new Step("first article: " + firstArticle, table.firstArticleMin(), Work.LAST));
    }
    return steps;
  }

  private static String tooling(ChangeRow row) {
    String out = row.toolingOut();
    String in = row.toolingIn();
    return (out.isEmpty() ? "" : " " + out) + (in.isEmpty() ? "" : " for " + in);
  }

  private List<String> before(Run run, ChangeRow row) {
    List<String> tasks = new ArrayList<>();
    if (!row.moldIn().isEmpty()) {
      tasks.add(fetch(row));
      tasks.add("preheat " + row.moldIn() + " where the site can");
    }
    if (!row.toolingIn().isEmpty()) {
      String where = row.moldIn().isEmpty() ? "" : ", and set it in " + row.moldIn();
      tasks.add("check that tooling " + row.toolingIn() + " is complete" + where);
    }
    Optional<StagingRow> resin = Optional.ofNullable(staging.get(run.id()));
    if (BarrelStep.filled(row)) {
      resin.ifPresent(r -> stage(r, tasks));
    }
    List<String> inserts =
        pulls.getOrDefault(run.id(), List.of()).stream().map(Pull::insert).distinct().toList();
    if (!inserts.isEmpty()) {
      tasks.add("kit inserts " + String.join(", ", inserts));
    }
    return tasks;
  }

  private String fetch(ChangeRow row) {
    ChangeWork.MoldMove move = molds.in(row);
    String what = "fetch " + move.words(row.moldIn()) + (move.weightKg().isEmpty() ? "" : ",");
    return molds
        .otherPress(row)
        .or(() -> molds.place(row.moldIn()))
        .map(from -> what + " from " + from)
        .orElse("fetch " + move.words(row.moldIn()));
  }

  private void stage(StagingRow row, List<String> tasks) {
    row.drying()
        .fromMin()
        .ifPresent(
            from ->
                tasks.add(
                    "start drying %s by %s"
                        .formatted(row.job().resin(), book.clock().brief(from))));
    String kilograms =
        row.batch()
            .plasticG()
            .map(g -> ": " + BigDecimal.valueOf(g, 3).toPlainString() + " kg in all")
            .orElse("");
    String colour = row.job().colour().isEmpty() ? "" : ", " + row.job().colour();
    tasks.add("stage " + row.job().resin() + colour + kilograms);
  }
}
