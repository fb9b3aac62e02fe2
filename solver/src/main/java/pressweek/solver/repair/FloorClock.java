package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.solver.repair.WorkSpans.Stretch;

/** Working time on the floor as it really was: the plan's, less what events took away. */
final class FloorClock {
  private final Plan plan;
  private final List<FloorEvent> events;
  private final int nowMin;
  private final PressHours hours;
  private final Map<String, WorkSpans> attended = new HashMap<>();
  private final Map<String, WorkSpans> around = new HashMap<>();
  private final Map<String, Job> jobs = new HashMap<>();

  FloorClock(Plan plan, List<FloorEvent> events, int nowMin) {
    this.plan = plan;
    this.events = events;
    this.nowMin = nowMin;
    hours = new PressHours(plan);
    plan.problem().jobs().forEach(job -> jobs.put(job.id(), job));
  }

  int nowMin() {
    return nowMin;
  }

  /** The job that a run makes. */
  Job job(Run run) {
    Job job = jobs.get(run.job());
    if (job == null) {
      throw new IllegalArgumentException("run " + run.id() + " makes no job of its plan");
    }
    return job;
  }

  /** Working time of a press for changes. */
  WorkSpans press(String press) {
    return attended.computeIfAbsent(press, p -> spans(p, false));
  }

  /** Working time of a run after its first minute. */
  WorkSpans of(Run run) {
    boolean alone =
        plan.problem().floor().molds().stream()
            .anyMatch(m -> m.id().equals(run.mold()) && !m.handLoad());
    boolean any = !plan.problem().arranged().opening().unattended().isEmpty();
    WorkSpans press =
        alone && any
            ? around.computeIfAbsent(run.press(), p -> spans(p, true))
            : press(run.press());
    return press.without(away(EventKind.MOLD_AWAY, run.mold()));
  }

  private WorkSpans spans(String id, boolean unattended) {
    return plan.problem().floor().presses().stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .map((Press p) -> hours.of(p, unattended).without(away(EventKind.PRESS_AWAY, id)))
        .orElse(new WorkSpans(List.of()));
  }

  private List<Stretch> away(EventKind kind, String id) {
    List<Stretch> away = new ArrayList<>();
    for (FloorEvent event : events) {
      if (event.says(kind, id)) {
        away.add(new Stretch(event.fromMin(), event.toMin()));
      }
    }
    return away;
  }

  /** True when the press or the mold of a run is away at present. */
  boolean stopped(Run run) {
    return events.stream()
        .anyMatch(
            e ->
                e.takesAway(EventKind.PRESS_AWAY, run.press(), nowMin)
                    || e.takesAway(EventKind.MOLD_AWAY, run.mold(), nowMin));
  }

  /** What the floor says of a run's line. */
  Optional<FloorEvent> said(EventKind kind, Run run) {
    return events.stream().filter(e -> e.says(kind, run.job())).findFirst();
  }

  /** Minutes that it takes to take a mold off, as docs/rules.md says. */
  int dismountMin(String mold) {
    int minutes =
        plan.problem().floor().molds().stream()
            .filter(m -> m.id().equals(mold))
            .map(Mold::change)
            .findFirst()
            .map(c -> c.changeMin().orElse(plan.problem().plant().changes().moldMin()))
            .orElse(0);
    return (minutes * plan.problem().plant().changes().dismountPct() + 99) / 100;
  }
}
