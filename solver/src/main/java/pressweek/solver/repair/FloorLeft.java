package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.solver.repair.Progress.Stage;

/** Presses and molds as they stand at present, what is away, and the promises that can be kept. */
final class FloorLeft {
  private final Problem was;
  private final List<FloorEvent> events;
  private final FloorClock clock;
  private final Standing standing;
  private final List<String> notes = new ArrayList<>();

  FloorLeft(Plan plan, List<FloorEvent> events, FloorClock clock, Standing standing) {
    this.was = plan.problem();
    this.events = events;
    this.clock = clock;
    this.standing = standing;
  }

  /** What had to be given up. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The floor for the jobs that are left. */
  Floor floor(List<Job> jobs) {
    Set<String> left = new HashSet<>(jobs.stream().map(Job::id).toList());
    List<PressState> states =
        standing.presses().stream()
            .map(
                s ->
                    left.contains(s.job())
                        ? s
                        : new PressState(s.press(), s.setup(), s.clearedForFood(), ""))
            .toList();
    return new Floor(
        was.floor().presses(),
        was.floor().molds(),
        states,
        downtime(),
        promises(left),
        was.floor().recordedChanges());
  }

  private List<Downtime> downtime() {
    List<Downtime> all = new ArrayList<>(was.floor().downtime());
    for (FloorEvent event : events) {
      boolean press = event.kind() == EventKind.PRESS_AWAY;
      if (press || event.kind() == EventKind.MOLD_AWAY) {
        Downtime.Kind kind = press ? Downtime.Kind.PRESS : Downtime.Kind.MOLD;
        all.add(new Downtime(kind, event.what(), event.fromMin(), event.toMin(), event.words()));
      }
    }
    standing.takenOff().forEach(off -> takenOff(all, off));
    standing.runs().stream()
        .filter(p -> p.stage() == Stage.CHANGING && p.atMin() > clock.nowMin())
        .forEach(p -> changing(all, p));
    return all;
  }

  private void takenOff(List<Downtime> all, Standing.TakenOff off) {
    String reason = "mold " + off.mold() + " is being taken off";
    int now = clock.nowMin();
    all.add(new Downtime(Downtime.Kind.PRESS, off.press(), now, off.untilMin(), reason));
    all.add(new Downtime(Downtime.Kind.MOLD, off.mold(), now, off.untilMin(), reason));
  }

  /**
   * A change goes on: its press does nothing else, and the old mold is not free before it is off.
   */
  private void changing(List<Downtime> all, Progress progress) {
    Run run = progress.run();
    int now = clock.nowMin();
    String reason = "change to mold " + run.mold() + " for " + run.job() + " goes on";
    all.add(new Downtime(Downtime.Kind.PRESS, run.press(), now, progress.atMin(), reason));
    String old = run.change().from().mold();
    if (!old.isEmpty() && !old.equals(run.mold())) {
      WorkSpans hours = clock.press(run.press());
      int made = run.change().minutes() - hours.between(now, progress.atMin());
      int off = hours.finish(now, Math.max(0, clock.dismountMin(old) - made));
      if (off > now) {
        all.add(
            new Downtime(
                Downtime.Kind.MOLD, old, now, Math.min(off, progress.atMin()), "is coming off"));
      }
    }
  }

  private List<Promise> promises(Set<String> left) {
    Set<String> begun = new HashSet<>();
    standing.runs().stream()
        .filter(p -> p.stage() != Stage.WAITING)
        .forEach(p -> begun.add(p.run().job()));
    List<Promise> kept = new ArrayList<>();
    for (Promise promise : was.floor().promises()) {
      boolean open = left.contains(promise.job()) && !begun.contains(promise.job());
      if (open && promise.startMin() + was.plant().moveToleranceMin() < clock.nowMin()) {
        notes.add(
            "line %s was promised on %s, has not begun and is past its time; it is promised no more"
                .formatted(promise.job(), promise.press()));
      } else if (open) {
        kept.add(promise);
      }
    }
    return kept;
  }
}
