package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Making;
import pressweek.data.problem.Option;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.Take;

/**
 * What is left to make of a job whose run has begun. Shots made are rounded down to whole shots,
 * good pieces down to whole pieces, and at least one of each is left; the working minutes that are
 * left are those of the plan less those worked, so that a run that goes as planned ends when the
 * plan says.
 */
final class JobLeft {
  private final Job job;
  private final Progress progress;
  private final Work work;
  private final int shotsMade;
  private final boolean brought;

  /**
   * A job in progress.
   *
   * @param job the job as the plan had it
   * @param progress how far its run has come
   * @param brought true when what its run takes from stock is at its press
   */
  JobLeft(Job job, Progress progress, boolean brought) {
    this.job = job;
    this.progress = progress;
    this.brought = brought;
    work = Work.of(progress.run(), job);
    shotsMade = work.shotsMade(progress.workedMin());
  }

  /** Good pieces made. */
  int goodMade() {
    int good = job.quantity().good();
    return (int) Math.min(good - 1, (long) good * shotsMade / work.option().making().shots());
  }

  /** The job that is left. */
  Job job() {
    Quantity was = job.quantity();
    int made = goodMade();
    return new Job(
        job.line(),
        job.item(),
        new Quantity(was.ordered(), was.fromStock(), was.made() + made, was.good() - made),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        progress.stage() == Progress.Stage.STOPPED ? stopped() : running());
  }

  /** What is running needs no start-up any more: what is left of it is part of the run. */
  private List<Option> running() {
    Run run = progress.run();
    Option own = work.option();
    List<Option> options = new ArrayList<>();
    List<Take> takes = brought ? List.of() : own.making().takes().stream().map(this::all).toList();
    Pace pace = own.pace();
    options.add(
        new Option(
            own.press(),
            own.mold(),
            own.tooling(),
            making(own, own.making().shots() - shotsMade, takes),
            new Pace(
                pace.cycleMillis(),
                Math.max(1, work.totalMin() - progress.workedMin()),
                pace.startupMin(),
                pace.operatorThousandths(),
                pace.basis()),
            own.standing(),
            List.of("running there now")));
    for (Option other : job.options()) {
      if (!other.press().equals(run.press()) || !other.mold().equals(run.mold())) {
        options.add(share(other));
      }
    }
    return options;
  }

  private List<Option> stopped() {
    return job.options().stream().map(this::share).toList();
  }

  /** An option for what is left, its shots and minutes in proportion, rounded up. */
  private Option share(Option whole) {
    int all = work.option().making().shots();
    int left = all - shotsMade;
    Pace pace = whole.pace();
    int shots = up(whole.making().shots(), left, all);
    List<Take> takes =
        brought
            ? whole.making().takes().stream().map(JobLeft::startupOnly).toList()
            : whole.making().takes();
    return new Option(
        whole.press(),
        whole.mold(),
        whole.tooling(),
        making(whole, shots, takes),
        new Pace(
            pace.cycleMillis(),
            up(pace.runMin(), left, all),
            pace.startupMin(),
            pace.operatorThousandths(),
            pace.basis()),
        whole.standing(),
        whole.notes());
  }

  private static int up(int whole, int left, int all) {
    return Math.max(1, (int) (((long) whole * left + all - 1) / all));
  }

  private static Making making(Option option, int shots, List<Take> takes) {
    Making was = option.making();
    return new Making(
        shots,
        was.liveCavities(),
        was.startupShots(),
        was.startupGrams(),
        takes.stream().filter(t -> t.free(true) + t.reserved(true) > 0).toList());
  }

  /** The start-up pieces are part of the run, where its change has been made already. */
  private Take all(Take take) {
    boolean change = work.startupMin() > 0 || Work.exchanges(progress.run().change());
    return new Take(take.component(), take.insert(), take.free(change), 0, take.reserved(change));
  }

  private static Take startupOnly(Take take) {
    return new Take(take.component(), take.insert(), 0, take.startupPieces(), 0)
        .withReservedStartup(take.reservedStartup().orElse(0));
  }
}
