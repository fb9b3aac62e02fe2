package pressweek.app.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.Folder;
import pressweek.data.files.OrderRow;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.week.Week;
import pressweek.solver.Finishing;
import pressweek.solver.why.Placement;
import pressweek.solver.why.Reordering;
import pressweek.solver.why.Replay;

/** Makes the week from the files of the folder, with the lines in parts that were split by hand. */
final class Splitting {
  private final Folder folder;
  private final int nowMin;

  Splitting(Folder folder, int nowMin) {
    this.folder = folder;
    this.nowMin = nowMin;
  }

  /** The week of the files; empty when they have errors. */
  Optional<Problem> problem(Marks marks) {
    List<OrderRow> rows = new ArrayList<>();
    for (OrderRow row : folder.demand().orders()) {
      Integer first = marks.splits().get(row.id());
      if (first == null || first >= row.quantity()) {
        rows.add(row);
      } else {
        rows.add(row.part(1, first));
        rows.add(row.part(2, row.quantity() - first));
      }
    }
    return Week.build(folder.withOnly(rows), nowMin).problem();
  }

  Edited split(DeskWeek week, Edit.Split split) {
    Optional<OrderRow> row = row(split.line());
    if (row.isEmpty() || week.marks().splits().containsKey(split.line())) {
      return new Edited.Refused(split.line() + " is not a whole line of orders.csv");
    }
    int quantity = row.get().quantity();
    if (split.pieces() < 1 || split.pieces() >= quantity) {
      return new Edited.Refused(
          "the first part has %,d pieces; expected 1 to %,d"
              .formatted(split.pieces(), quantity - 1));
    }
    boolean promised =
        week.plan().problem().floor().promises().stream()
            .map(Promise::job)
            .anyMatch(split.line()::equals);
    if (promised) {
      return new Edited.Refused(split.line() + " is promised or held; let it go first");
    }
    String what =
        "split %s into %,d and %,d"
            .formatted(split.line(), split.pieces(), quantity - split.pieces());
    Plan renamed = renamed(week.plan(), split.line(), split.line() + "/1");
    return made(week.plan(), renamed, week.marks().split(split.line(), split.pieces()), what);
  }

  Edited join(DeskWeek week, Edit.Join join) {
    if (!week.marks().splits().containsKey(join.line())) {
      return new Edited.Refused(join.line() + " was not split by hand");
    }
    Plan renamed = renamed(week.plan(), join.line() + "/1", join.line());
    return made(
        week.plan(), renamed, week.marks().joined(join.line()), "joined " + join.line() + " again");
  }

  private Optional<OrderRow> row(String line) {
    return folder.demand().orders().stream().filter(r -> r.id().equals(line)).findFirst();
  }

  private Edited made(Plan plan, Plan renamed, Marks marks, String what) {
    Optional<Problem> problem = problem(marks);
    if (problem.isEmpty()) {
      return new Edited.Refused("the files have errors; correct them first");
    }
    if (problem.get().plant().hours().startMin() != plan.problem().plant().hours().startMin()) {
      return new Edited.Refused(
          "the week was repaired on the floor; split the line in orders.csv and take the files");
    }
    Problem promised = Promised.in(problem.get(), plan);
    Plan replayed = atBest(Replay.of(promised, renamed), renamed);
    Plan done = Finishing.of(plan.head(), replayed, plan);
    List<String> findings = Desk.findings(done);
    return findings.isEmpty()
        ? new Edited.Done(new DeskWeek(done, marks), what)
        : new Edited.Refused("that would break a rule: " + findings.get(0));
  }

  /** Lines that the plan did not know go where they cost least. */
  private static Plan atBest(Plan replayed, Plan before) {
    Set<String> known = new HashSet<>(before.runs().stream().map(Run::job).toList());
    before.unplaced().forEach(u -> known.add(u.id()));
    Plan plan = replayed;
    for (Job job : replayed.problem().jobs()) {
      if (!known.contains(job.id())) {
        Reordering order = new Reordering(plan);
        List<Placement> places = order.places(job.id(), 1);
        if (!places.isEmpty() && places.get(0).costsMore() < 0) {
          plan = order.moved(job.id(), places.get(0).press(), places.get(0).spot());
        }
      }
    }
    return plan;
  }

  /** The plan with a line under another name; the run keeps all else. */
  private static Plan renamed(Plan plan, String line, String name) {
    List<Run> runs = new ArrayList<>();
    for (Run r : plan.runs()) {
      runs.add(
          r.job().equals(line)
              ? new Run(
                  r.id(),
                  name,
                  r.press(),
                  r.mold(),
                  r.seq(),
                  r.change(),
                  r.startMin(),
                  r.endMin(),
                  r.readyMin(),
                  r.waits(),
                  r.charges())
              : r);
    }
    return plan.withRuns(runs);
  }
}
