package pressweek.solver.model;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.WeekTables;

/** A week as the search moves it: every press with its queue. */
@PlanningSolution
public class PressWeek {
  @PlanningEntityCollectionProperty private List<PressQueue> queues = List.of();

  @PlanningScore private @Nullable HardSoftLongScore score;

  private @Nullable WeekTables week;

  /** Which jobs are held back and which shifts are open; the library's moves leave that alone. */
  private @Nullable Sequences choices;

  /** For the solver, which clones. */
  public PressWeek() {}

  /** The week with jobs in the given sequences. */
  public PressWeek(WeekTables week, Sequences sequences) {
    this.week = week;
    choices = sequences.copy();
    List<PlannedJob> jobs = new ArrayList<>();
    for (int j = 0; j < week.jobCount(); j++) {
      jobs.add(new PlannedJob(j));
    }
    queues = new ArrayList<>();
    for (int p = 0; p < week.pressCount(); p++) {
      int press = p;
      List<PlannedJob> queue = new ArrayList<>();
      for (int j : sequences.of(p)) {
        queue.add(jobs.get(j));
      }
      List<PlannedJob> eligible =
          jobs.stream().filter(j -> week.canRun(j.number(), press)).toList();
      queues.add(new PressQueue(p, queue, eligible, week.fixedOn(p).length));
    }
  }

  /** The presses. */
  public List<PressQueue> queues() {
    return queues;
  }

  /** The tables that the timing pass reads. */
  public WeekTables week() {
    if (week == null) {
      throw new IllegalStateException("a week without tables");
    }
    return week;
  }

  private Sequences choices() {
    if (choices == null) {
      throw new IllegalStateException("a week without sequences");
    }
    return choices;
  }

  /** Promises broken as hard, avoidable cost as soft; null before the first calculation. */
  public @Nullable HardSoftLongScore score() {
    return score;
  }

  /** The queues as sequences. */
  public Sequences sequences() {
    Sequences out = new Sequences(queues.size(), week().jobCount());
    copyTo(out);
    return out;
  }

  /** Writes the queues into sequences of the same size. */
  public void copyTo(Sequences out) {
    out.copyChoices(choices());
    for (PressQueue queue : queues) {
      out.clear(queue.press());
      List<PlannedJob> jobs = queue.jobs();
      for (int i = 0; i < jobs.size(); i++) {
        out.add(queue.press(), jobs.get(i).number());
      }
    }
  }
}
