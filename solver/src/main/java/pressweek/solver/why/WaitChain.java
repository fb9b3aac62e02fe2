package pressweek.solver.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.solver.why.Stretch.What;

/**
 * Where the time goes until a line is ready: what its press does from the start of the plan on,
 * each wait with its cause, each run before it with its own waits. The stretches follow each other
 * without a gap, so that their minutes add up.
 */
final class WaitChain {
  private final Plan plan;
  private final Run run;
  private final Behind behind;

  private WaitChain(Plan plan, Run run) {
    this.plan = plan;
    this.run = run;
    behind = new Behind(plan);
  }

  /** The stretches from the start of the plan to the time when the run's line is ready. */
  static List<Stretch> of(Plan plan, Run run) {
    return new WaitChain(plan, run).stretches();
  }

  private List<Stretch> stretches() {
    List<Stretch> known = new ArrayList<>();
    for (Run each : plan.runs()) {
      if (each.press().equals(run.press()) && each.seq() <= run.seq()) {
        of(each, known);
      }
    }
    for (Dismount off : plan.dismounts()) {
      if (off.press().equals(run.press()) && off.startMin() < run.startMin()) {
        String mold = "mold " + off.mold() + " goes to another press";
        known.add(
            new Stretch(
                What.DISMOUNT, run.job(), Optional.empty(), off.startMin(), off.endMin(), mold));
      }
    }
    known.removeIf(s -> s.minutes() <= 0);
    known.sort(Comparator.comparingInt(Stretch::fromMin));
    List<Stretch> tiled = tiled(known);
    if (run.readyMin() > run.endMin()) {
      tiled.add(
          new Stretch(What.AFTER, run.job(), Optional.empty(), run.endMin(), run.readyMin(), ""));
    }
    return tiled;
  }

  private void of(Run each, List<Stretch> known) {
    for (Wait wait : each.waits()) {
      known.add(
          new Stretch(
              What.WAIT,
              each.job(),
              Optional.of(wait),
              wait.fromMin(),
              wait.toMin(),
              behind.words(each, wait)));
    }
    known.add(
        new Stretch(
            What.CHANGE,
            each.job(),
            Optional.empty(),
            each.change().startMin(),
            each.change().endMin(),
            ""));
    known.add(
        new Stretch(What.RUN, each.job(), Optional.empty(), each.startMin(), each.endMin(), ""));
  }

  /** The same without gaps and overlaps, from the start of the plan to the end of the run. */
  private List<Stretch> tiled(List<Stretch> known) {
    List<Stretch> tiled = new ArrayList<>();
    int at = plan.problem().plant().hours().startMin();
    for (Stretch next : known) {
      if (next.toMin() <= at) {
        continue;
      }
      if (next.fromMin() > at) {
        tiled.add(new Stretch(What.EMPTY, next.line(), Optional.empty(), at, next.fromMin(), ""));
      }
      int from = Math.max(at, next.fromMin());
      tiled.add(
          new Stretch(next.what(), next.line(), next.waited(), from, next.toMin(), next.because()));
      at = next.toMin();
    }
    return tiled;
  }
}
