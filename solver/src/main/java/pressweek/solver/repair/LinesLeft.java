package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Unplaced;
import pressweek.solver.repair.Progress.Stage;

/** The order lines that are left, and what became of the others. No line is lost. */
final class LinesLeft {
  private final Plan plan;
  private final List<FloorEvent> events;
  private final FloorClock clock;
  private final Standing standing;
  private final Map<String, Run> runs = new HashMap<>();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Unplaced> unplaced = new ArrayList<>();
  private final Map<String, Ended> ended = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();

  LinesLeft(Plan plan, List<FloorEvent> events, FloorClock clock, Standing standing) {
    this.plan = plan;
    this.events = events;
    this.clock = clock;
    this.standing = standing;
    plan.runs().forEach(run -> runs.put(run.job(), run));
  }

  List<Job> jobs() {
    return List.copyOf(jobs);
  }

  List<Unplaced> unplaced() {
    return List.copyOf(unplaced);
  }

  List<Ended> ended() {
    return List.copyOf(ended.values());
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  /**
   * Works out what is left.
   *
   * @param brought runs whose pieces are at their press
   */
  void leftOver(Set<String> brought) {
    for (Unplaced line : plan.problem().unplaced()) {
      Optional<FloorEvent> said = said(line.id());
      if (said.isPresent() && said.get().kind() != EventKind.ON_HOLD) {
        end(said.get());
      } else {
        unplaced.add(line);
      }
    }
    plan.problem().jobs().forEach(job -> take(job, brought));
    links();
  }

  private Optional<FloorEvent> said(String line) {
    return events.stream().filter(e -> e.kind().ofLine() && e.what().equals(line)).findFirst();
  }

  private void end(FloorEvent event) {
    boolean dropped = event.kind() == EventKind.DROPPED;
    Ended.How how = dropped ? Ended.How.DROPPED : Ended.How.FINISHED;
    ended.put(event.what(), new Ended(event.what(), how, event.source() + ": " + event.words()));
  }

  private void take(Job job, Set<String> brought) {
    Optional<Progress> progress = Optional.ofNullable(runs.get(job.id())).map(standing::of);
    Optional<FloorEvent> said = said(job.id());
    Stage stage = progress.map(Progress::stage).orElse(Stage.WAITING);
    boolean done = stage == Stage.DONE;
    if (said.isPresent() && said.get().kind() == EventKind.COUNT_SHORT && stage == Stage.WAITING) {
      notes.add(said.get().source() + ": the run of " + job.id() + " has not begun; not used");
    }
    if (said.isPresent() && (ends(said.get()))) {
      end(said.get());
    } else if (done) {
      ended.put(job.id(), new Ended(job.id(), Ended.How.DONE, "its run had ended by the plan"));
      said.ifPresent(e -> notes.add(e.source() + ": the run of " + job.id() + " has ended"));
    } else if (said.isPresent() && said.get().kind() == EventKind.ON_HOLD) {
      unplaced.add(held(left(job, progress, brought), said.get()));
    } else {
      jobs.add(left(job, progress, brought));
    }
  }

  private static boolean ends(FloorEvent event) {
    return event.kind() == EventKind.DROPPED || event.kind() == EventKind.FINISHED;
  }

  private static Job left(Job job, Optional<Progress> progress, Set<String> brought) {
    return progress
        .filter(p -> p.under() || p.stage() == Stage.STOPPED)
        .map(p -> new JobLeft(job, p, brought.contains(p.run().id())).job())
        .orElse(job);
  }

  private static Unplaced held(Job job, FloorEvent event) {
    return unplaced(
        job,
        "on hold: " + (event.note().isBlank() ? event.source() : event.note()),
        "lift the hold");
  }

  private static Unplaced unplaced(Job job, String reason, String cure) {
    return new Unplaced(
        job.line().order(),
        job.line().line(),
        job.item().code(),
        job.quantity().good(),
        reason,
        cure);
  }

  /** What builds on a run that has ended may start after its rest; on one that never is, not. */
  private void links() {
    Set<String> left = new HashSet<>(jobs.stream().map(Job::id).toList());
    for (Link link : plan.problem().arranged().links()) {
      if (left.contains(link.job()) && !left.contains(link.after())) {
        Job job = jobs.stream().filter(j -> j.id().equals(link.job())).findFirst().orElseThrow();
        int place = jobs.indexOf(job);
        Optional<Integer> end = endOf(link.after());
        if (end.isPresent()) {
          jobs.set(place, notBefore(job, end.get() + link.restMin()));
        } else {
          jobs.remove(place);
          left.remove(job.id());
          unplaced.add(
              unplaced(
                  job,
                  "the run that it builds on, " + link.after() + ", is not in the plan",
                  "plan " + link.after() + " again"));
        }
      }
    }
  }

  private Optional<Integer> endOf(String line) {
    boolean made =
        Optional.ofNullable(ended.get(line)).filter(e -> e.how() != Ended.How.DROPPED).isPresent();
    return made
        ? Optional.of(
            Optional.ofNullable(runs.get(line))
                .map(run -> standing.of(run).atMin())
                .orElse(clock.nowMin()))
        : Optional.empty();
  }

  private static Job notBefore(Job job, int minute) {
    Deadline was = job.deadline();
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        new Deadline(
            Math.max(was.earliestMin(), minute),
            was.dueMin(),
            was.afterMin(),
            was.weightHundredths()),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }
}
