package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.solver.repair.Progress.Stage;

/**
 * Walks through a plan up to the present and says how the floor stands: everything begins when the
 * plan says, or as soon after it as what came before it on its press and with its mold has ended;
 * it takes the plan's working minutes out of the time that was really worked. What the floor says
 * itself (a run that ended, a count) counts before that.
 */
final class FloorWalk {
  private final Plan plan;
  private final FloorClock clock;
  private final int now;
  private final Standing standing = new Standing();

  private FloorWalk(Plan plan, FloorClock clock) {
    this.plan = plan;
    this.clock = clock;
    now = clock.nowMin();
  }

  /** How the floor stands. */
  static Standing of(Plan plan, FloorClock clock) {
    FloorWalk walk = new FloorWalk(plan, clock);
    walk.begin();
    walk.steps().forEach(Step::take);
    return walk.standing;
  }

  /** Something that the plan has at a time. */
  private record Step(int atMin, Runnable what) {
    void take() {
      what.run();
    }
  }

  private void begin() {
    for (Press press : plan.problem().floor().presses()) {
      standing.at(standing.press(press.id()));
    }
    plan.problem().floor().states().forEach(standing::at);
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Dismount off : plan.dismounts()) {
      steps.add(new Step(off.startMin(), () -> dismount(off)));
    }
    for (Run run : plan.runs()) {
      steps.add(new Step(begins(run), () -> run(run)));
    }
    steps.sort(Comparator.comparingInt(Step::atMin));
    return steps;
  }

  /** When the plan begins with a run: the start of its change, or its own without one. */
  private static int begins(Run run) {
    return run.change().minutes() > 0 ? run.change().startMin() : run.startMin();
  }

  private void dismount(Dismount off) {
    WorkSpans hours = clock.press(off.press());
    int begun = hours.next(Math.max(off.startMin(), standing.free(off.press(), off.mold())));
    if (begun >= now) {
      standing.holdPress(off.press(), WorkSpans.NEVER);
      standing.holdMold(off.mold(), WorkSpans.NEVER);
      return;
    }
    int end = hours.finish(begun, off.minutes());
    PressState before = standing.press(off.press());
    Setup bare = new Setup("", "", before.setup().resin(), before.setup().colour());
    standing.at(new PressState(off.press(), bare, before.clearedForFood(), ""));
    standing.holdPress(off.press(), end);
    standing.holdMold(off.mold(), end);
    if (end > now) {
      standing.add(new Standing.TakenOff(off.press(), off.mold(), end));
    }
  }

  private void run(Run run) {
    Optional<FloorEvent> finished = clock.said(EventKind.FINISHED, run);
    Progress progress =
        finished
            .map(event -> new Progress(run, Stage.DONE, event.fromMin(), 0))
            .orElseGet(() -> progress(run));
    standing.keep(progress);
    switch (progress.stage()) {
      case DONE -> {
        setUp(run, "");
        standing.holdPress(run.press(), progress.atMin());
        standing.holdMold(run.mold(), progress.atMin());
      }
      case RUNNING, CHANGING -> {
        setUp(run, run.job());
        hold(run);
      }
      case STOPPED -> {
        setUp(run, "");
        hold(run);
      }
      case WAITING -> hold(run);
    }
  }

  private void hold(Run run) {
    standing.holdPress(run.press(), WorkSpans.NEVER);
    standing.holdMold(run.mold(), WorkSpans.NEVER);
  }

  private Progress progress(Run run) {
    WorkSpans press = clock.press(run.press());
    int begun = press.next(Math.max(begins(run), standing.free(run.press(), run.mold())));
    if (begun >= now) {
      return new Progress(run, Stage.WAITING, now, 0);
    }
    int changed = press.finish(begun, run.change().minutes());
    int start = press.next(Math.max(changed, run.startMin()));
    if (start >= now) {
      return clock.stopped(run)
          ? new Progress(run, Stage.WAITING, now, 0)
          : new Progress(run, Stage.CHANGING, Math.max(changed, begun), 0);
    }
    return running(run, start);
  }

  private Progress running(Run run, int start) {
    Job job = clock.job(run);
    Work work = Work.of(run, job);
    WorkSpans hours = clock.of(run);
    int from = start;
    int left = work.totalMin();
    Optional<FloorEvent> count = clock.said(EventKind.COUNT_SHORT, run);
    if (count.isPresent()) {
      int good = job.quantity().good();
      from = count.get().fromMin();
      left = work.minutesFor(good - count.get().count(), good);
    }
    int end = hours.finish(from, left);
    if (end <= now) {
      return new Progress(run, Stage.DONE, end, work.totalMin());
    }
    int worked = work.totalMin() - (left - hours.between(from, now));
    return new Progress(run, clock.stopped(run) ? Stage.STOPPED : Stage.RUNNING, now, worked);
  }

  /** The press is set up for a run, whose mold has left the press that it was on. */
  private void setUp(Run run, String job) {
    for (PressState other : standing.presses()) {
      if (other.setup().mold().equals(run.mold()) && !other.press().equals(run.press())) {
        Setup bare = new Setup("", "", other.setup().resin(), other.setup().colour());
        standing.at(new PressState(other.press(), bare, other.clearedForFood(), ""));
      }
    }
    boolean clearance = run.change().kinds().contains(ChangeKind.FOOD_CLEARANCE);
    boolean cleared = standing.press(run.press()).clearedForFood() || clearance;
    boolean food = clock.job(run).foodGrade();
    standing.at(new PressState(run.press(), run.change().to(), food && cleared, job));
  }
}
