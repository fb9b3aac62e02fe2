package pressweek.app.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Unplaced;
import pressweek.solver.Finishing;
import pressweek.solver.why.Placement;
import pressweek.solver.why.Reordering;

/** Carries edits out on a week, which stays as it is. For use by several threads. */
public final class Editing {
  private final DeskWeek week;
  private final Plan plan;
  private final Reordering order;

  Editing(DeskWeek week) {
    this.week = week;
    plan = week.plan();
    order = new Reordering(plan);
  }

  /** The order, to try places by. */
  public Reordering order() {
    return order;
  }

  Edited edit(Edit edit) {
    if (job(edit.line()).isEmpty()) {
      return new Edited.Refused(
          "line " + edit.line() + " is not among those that can be planned this week");
    }
    if (edit instanceof Edit.Move move) {
      return move(move);
    }
    if (edit instanceof Edit.Promise promise) {
      return fix(promise.line(), false);
    }
    if (edit instanceof Edit.Hold hold) {
      return fix(hold.line(), true);
    }
    if (edit instanceof Edit.LetGo letGo) {
      return free(letGo.line(), false);
    }
    if (edit instanceof Edit.Release release) {
      return free(release.line(), true);
    }
    if (edit instanceof Edit.LeaveOut out) {
      return leaveOut(out);
    }
    return edit instanceof Edit.TakeIn in
        ? takeIn(in.line())
        : new Edited.Refused("the files are wanted for that");
  }

  /** Why a line cannot go to a press; empty when it can. */
  Optional<String> objection(String line, String press) {
    boolean known = plan.problem().floor().presses().stream().anyMatch(p -> p.id().equals(press));
    if (!known) {
      return Optional.of("the plant has no press " + press);
    }
    if (isRunning(line)) {
      return Optional.of(line + " is running; it stays where it is");
    }
    if (promise(line).isPresent()) {
      String how = week.marks().held().contains(line) ? "held; release it" : "promised; let it go";
      return Optional.of(line + " is " + how + " first");
    }
    if (!order.canRun(line, press)) {
      String may =
          job(line).stream()
              .flatMap(j -> j.options().stream())
              .map(o -> o.press())
              .distinct()
              .collect(Collectors.joining(", "));
      return Optional.of("press " + press + " may not run " + line + "; those that may are " + may);
    }
    return Optional.empty();
  }

  private Edited move(Edit.Move move) {
    Optional<String> objection = objection(move.line(), move.press());
    if (objection.isPresent()) {
      return new Edited.Refused(objection.get());
    }
    Plan moved = order.moved(move.line(), move.press(), Math.max(0, move.place()));
    Marks marks = week.marks().takenIn(move.line());
    Optional<Run> run = run(moved, move.line());
    if (run.isEmpty()) {
      return new Edited.Refused(
          move.line() + " finds no time there before the horizon ends; nothing was moved");
    }
    String where = "moved " + move.line() + " to " + move.press() + ", place " + run.get().seq();
    return done(moved, marks, where);
  }

  private Edited fix(String line, boolean held) {
    Optional<Run> run = run(plan, line);
    if (run.isEmpty()) {
      return new Edited.Refused(line + " has no run; give it a place first");
    }
    if (isRunning(line)) {
      return new Edited.Refused(line + " is running already");
    }
    Set<String> lines = new LinkedHashSet<>();
    List<Promise> promises = new ArrayList<>(plan.problem().floor().promises());
    for (Run each : plan.runs()) {
      boolean upTo = each.press().equals(run.get().press()) && each.seq() <= run.get().seq();
      if (upTo && !isRunning(each.job()) && promise(each.job()).isEmpty()) {
        promises.add(new Promise(each.job(), each.press(), each.startMin()));
        lines.add(each.job());
      } else if (upTo && !held && week.marks().held().contains(each.job())) {
        lines.add(each.job());
      }
    }
    if (lines.isEmpty()) {
      return new Edited.Refused(
          line + " is " + (held ? "held or promised" : "promised") + " already");
    }
    Marks marks = held ? week.marks().withHeld(lines) : week.marks().withoutHeld(lines);
    String what = (held ? "held " : "promised ") + named(lines, line);
    return withPromises(promises, marks, what);
  }

  private Edited free(String line, boolean held) {
    boolean isHeld = week.marks().held().contains(line);
    if (promise(line).isEmpty() || isHeld != held) {
      return new Edited.Refused(line + " is not " + (held ? "held" : "promised"));
    }
    Optional<Run> run = run(plan, line);
    Set<String> lines = new LinkedHashSet<>(Set.of(line));
    for (Run each : plan.runs()) {
      boolean after =
          run.isPresent() && each.press().equals(run.get().press()) && each.seq() > run.get().seq();
      if (after && promise(each.job()).isPresent()) {
        lines.add(each.job());
      }
    }
    List<Promise> rest =
        plan.problem().floor().promises().stream().filter(p -> !lines.contains(p.job())).toList();
    String what = (held ? "released " : "let go ") + named(lines, line);
    return withPromises(rest, week.marks().withoutHeld(lines), what);
  }

  private static String named(Set<String> lines, String line) {
    int others = lines.size() - (lines.contains(line) ? 1 : 0);
    return others == 0
        ? line
        : line
            + " and "
            + others
            + (others == 1 ? " other line" : " other lines")
            + " on its press";
  }

  private Edited withPromises(List<Promise> promises, Marks marks, String what) {
    Problem problem = plan.problem().with(plan.problem().floor().withPromises(promises));
    return done(new Reordering(plan.with(problem)).standing(), marks, what);
  }

  private Edited leaveOut(Edit.LeaveOut out) {
    if (run(plan, out.line()).isEmpty()) {
      return new Edited.Refused(out.line() + " is unplaced already");
    }
    if (isRunning(out.line()) || promise(out.line()).isPresent()) {
      return new Edited.Refused(
          out.line() + " is running, promised or held; only what may move can be left out");
    }
    String reason =
        out.reason().isBlank() ? "left out by hand" : "left out by hand: " + out.reason();
    Plan without = order.without(unplaced(job(out.line()).orElseThrow(), reason));
    return done(without, week.marks().withLeftOut(out.line(), reason), "left out " + out.line());
  }

  static Unplaced unplaced(Job job, String reason) {
    return new Unplaced(
        job.line().order(),
        job.line().line(),
        job.line().item(),
        job.quantity().good(),
        reason,
        "take it in again");
  }

  private Edited takeIn(String line) {
    if (run(plan, line).isPresent()) {
      return new Edited.Refused(line + " has a run already");
    }
    List<Placement> places = order.places(line, 1);
    if (places.isEmpty()) {
      return new Edited.Refused(line + " finds no time on any press before the horizon ends");
    }
    Placement best = places.get(0);
    Plan moved = order.moved(line, best.press(), best.spot());
    return done(moved, week.marks().takenIn(line), "took in " + line + " on " + best.press());
  }

  /** An edit that would make an audit reject a plan which it did not reject is refused. */
  private Edited done(Plan ordered, Marks marks, String what) {
    Set<String> lines = new HashSet<>(ordered.problem().jobs().stream().map(Job::id).toList());
    Plan finished = Finishing.of(plan.head(), ordered, plan);
    List<String> findings = Desk.findings(finished);
    if (!findings.isEmpty() && Desk.findings(plan).isEmpty()) {
      return new Edited.Refused("that would break a rule: " + findings.get(0));
    }
    return new Edited.Done(new DeskWeek(finished, marks.of(lines)), what);
  }

  private Optional<Job> job(String line) {
    return plan.problem().jobs().stream().filter(j -> j.id().equals(line)).findFirst();
  }

  private static Optional<Run> run(Plan of, String line) {
    return of.runs().stream().filter(r -> r.job().equals(line)).findFirst();
  }

  private Optional<Promise> promise(String line) {
    return plan.problem().floor().promises().stream().filter(p -> p.job().equals(line)).findFirst();
  }

  private boolean isRunning(String line) {
    return plan.problem().floor().states().stream().map(PressState::job).anyMatch(line::equals);
  }
}
