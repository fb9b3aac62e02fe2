package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;

/**
 * Follows a press from how it stands through its runs and dismounts, one after the other, since a
 * counted tooling set may be taken from it for another press in between.
 */
final class PressWalker {
  private final Press press;
  private final PressState state;
  private final PressTime time;
  private final Ids ids;
  private final ChangeReckoner reckoner;

  private final List<Step> steps = new ArrayList<>();
  private final List<Stay> stays = new ArrayList<>();
  private final List<Hold> holds = new ArrayList<>();
  private final List<Dismount> stray = new ArrayList<>();

  private List<Run> runs = List.of();
  private List<Dismount> dismounts = List.of();
  private int nextRun;
  private int nextDismount;

  private Setup setup;

  /** The tooling set that was exchanged last, and when it was out. */
  private String outgoing = "";

  private long outgoingUntil = Long.MIN_VALUE;
  private boolean cleared;
  private long freeMin;

  PressWalker(Press press, PressTime time, Ids ids, ChangeReckoner reckoner) {
    this.press = press;
    this.time = time;
    this.ids = ids;
    this.reckoner = reckoner;
    state = ids.state(press.id());
    setup = state.setup();
    cleared = state.clearedForFood();
  }

  /** Begins with the runs and dismounts of the press, which may be given in any order. */
  PressWalker begin(List<Run> ofPress, List<Dismount> takenOff, long startMin) {
    freeMin = startMin;
    hold(setup.mold(), Long.MIN_VALUE, "", "");
    runs =
        ofPress.stream()
            .sorted(
                Comparator.comparingInt((Run run) -> run.change().startMin())
                    .thenComparingInt(Run::startMin))
            .toList();
    dismounts = takenOff.stream().sorted(Comparator.comparingInt(Dismount::startMin)).toList();
    return this;
  }

  /** When the next run (with its change) or dismount begins; empty when there is none. */
  OptionalLong nextMin() {
    if (nextRun == runs.size() && nextDismount == dismounts.size()) {
      return OptionalLong.empty();
    }
    return OptionalLong.of(
        dismountIsNext()
            ? dismounts.get(nextDismount).startMin()
            : runs.get(nextRun).change().startMin());
  }

  /** Takes the next run or dismount. */
  void step(ToolingSets sets) {
    if (dismountIsNext()) {
      dismount(dismounts.get(nextDismount++));
    } else {
      run(runs.get(nextRun++), sets);
    }
  }

  private boolean dismountIsNext() {
    return nextDismount < dismounts.size()
        && (nextRun == runs.size()
            || dismounts.get(nextDismount).startMin() <= runs.get(nextRun).change().startMin());
  }

  /** What has happened on the press. */
  PressWalk walked() {
    return new PressWalk(press, time, steps, stays, holds, dismounts, stray);
  }

  String pressId() {
    return press.id();
  }

  /** True when the press has the tooling set then, in its mold or on the way out of it. */
  boolean holds(String tooling, long min) {
    return setup.tooling().equals(tooling) || outgoing.equals(tooling) && min < outgoingUntil;
  }

  /** True when its mold has the set, does not run then, is not being changed, nor waits to run. */
  boolean canLose(String tooling, long min) {
    return setup.tooling().equals(tooling)
        && runs.stream().noneMatch(run -> keepsSet(run, min))
        && dismounts.stream().noneMatch(off -> off.startMin() <= min && min < off.endMin());
  }

  private boolean keepsSet(Run run, long min) {
    boolean running = run.job().equals(state.job());
    boolean begun = Math.min(run.change().startMin(), run.startMin()) <= min;
    return (running || begun) && min < run.endMin();
  }

  /** End of the last run so far, or the start of the plan. */
  long freeMin() {
    return freeMin;
  }

  /** The tooling set is taken out of its mold, which does not run. */
  void loseSet() {
    setup = new Setup(setup.mold(), "", setup.resin(), setup.colour());
  }

  private void dismount(Dismount dismount) {
    if (!setup.mold().equals(dismount.mold()) || setup.mold().isEmpty()) {
      stray.add(dismount);
      return;
    }
    release(dismount.endMin());
    outgoing = setup.tooling();
    outgoingUntil = dismount.endMin();
    setup = new Setup("", "", setup.resin(), setup.colour());
  }

  private void run(Run run, ToolingSets sets) {
    Setup said = run.change().to();
    Optional<Job> job = ids.job(run.job());
    Optional<Option> option =
        job.flatMap(known -> Ids.option(known, press.id(), run.mold(), said.tooling()));
    String tooling = option.map(Option::tooling).orElse(said.tooling());
    boolean running = steps.isEmpty() && job.isPresent() && state.job().equals(run.job());
    List<String> heldBy =
        running || setup.tooling().equals(tooling)
            ? List.of()
            : sets.fit(tooling, this, run.change().startMin());
    Step step = new Step(run, setup, cleared, steps.size() + 1, freeMin, heldBy);
    steps.add(step);
    if (!run.mold().equals(setup.mold())) {
      release(goneMin(run));
      hold(run.mold(), run.change().startMin(), run.id(), Words.of(run));
    }
    if (!setup.tooling().equals(tooling)) {
      outgoing = setup.tooling();
      outgoingUntil = run.change().endMin();
    }
    setup =
        new Setup(
            run.mold(),
            tooling,
            job.map(Job::resin).orElse(said.resin()),
            job.map(Job::colour).orElse(said.colour()));
    if (job.isPresent()) {
      option.ifPresent(known -> stays.add(stay(step, job.get(), known, running)));
      cleared = job.get().foodGrade() && (cleared || !running);
    }
    freeMin = run.endMin();
  }

  private Stay stay(Step step, Job job, Option option, boolean running) {
    boolean clearance = job.foodGrade() && !step.cleared();
    DueChange due =
        running ? DueChange.NONE : reckoner.change(press, step.before(), setup, clearance);
    return new Stay(step, job, option, running, due);
  }

  /** When the change before a run has taken the mold off that was on the press. */
  private long goneMin(Run run) {
    long start = run.change().startMin();
    long gone =
        time.working().end(start, reckoner.dismountMin(setup.mold())).orElse(Long.MAX_VALUE);
    return Math.max(start, Math.min(gone, run.change().endMin()));
  }

  private void hold(String mold, long fromMin, String run, String words) {
    if (!mold.isEmpty()) {
      holds.add(new Hold(mold, press.id(), fromMin, Long.MAX_VALUE, run, words));
    }
  }

  private void release(long min) {
    if (!setup.mold().isEmpty()) {
      holds.add(holds.remove(holds.size() - 1).until(min));
    }
  }
}
