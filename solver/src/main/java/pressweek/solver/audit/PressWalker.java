package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;

/** Follows a press from how it stands through its runs and dismounts. */
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

  private Setup setup;
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

  /** The runs and dismounts of the press, which may be given in any order. */
  PressWalk walk(List<Run> runs, List<Dismount> dismounts, long startMin) {
    freeMin = startMin;
    hold(setup.mold(), Long.MIN_VALUE, "", "");
    List<Run> inOrder =
        runs.stream()
            .sorted(
                Comparator.comparingInt((Run run) -> run.change().startMin())
                    .thenComparingInt(Run::startMin))
            .toList();
    List<Dismount> off =
        dismounts.stream().sorted(Comparator.comparingInt(Dismount::startMin)).toList();
    int next = 0;
    for (Run run : inOrder) {
      while (next < off.size() && off.get(next).startMin() <= run.change().startMin()) {
        dismount(off.get(next++));
      }
      run(run);
    }
    off.subList(next, off.size()).forEach(this::dismount);
    return new PressWalk(press, time, steps, stays, holds, off, stray);
  }

  private void dismount(Dismount dismount) {
    if (!setup.mold().equals(dismount.mold()) || setup.mold().isEmpty()) {
      stray.add(dismount);
      return;
    }
    release(dismount.endMin());
    setup = new Setup("", "", setup.resin(), setup.colour());
  }

  private void run(Run run) {
    Step step = new Step(run, setup, cleared, steps.size() + 1, freeMin);
    steps.add(step);
    if (!run.mold().equals(setup.mold())) {
      release(goneMin(run));
      hold(run.mold(), run.change().startMin(), run.id(), Words.of(run));
    }
    Setup said = run.change().to();
    Optional<Job> job = ids.job(run.job());
    String tooling = said.tooling();
    if (job.isPresent()) {
      Optional<Option> option = Ids.option(job.get(), press.id(), run.mold(), tooling);
      tooling = option.map(Option::tooling).orElse(tooling);
      setup = new Setup(run.mold(), tooling, job.get().resin(), job.get().colour());
      boolean running = step.place() == 1 && state.job().equals(run.job());
      option.ifPresent(known -> stays.add(stay(step, job.get(), known, running)));
      cleared = job.get().foodGrade() && (cleared || !running);
    } else {
      setup = new Setup(run.mold(), tooling, said.resin(), said.colour());
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
