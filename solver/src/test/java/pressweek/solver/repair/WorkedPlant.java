package pressweek.solver.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.Optional;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.SmallPlant;
import pressweek.solver.Planner;
import pressweek.solver.Plans;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;

/**
 * A plant whose times are worked out by hand: P1 mounts M1 in 36 minutes and 10 for the first
 * article, runs 1/1 for 400 minutes from minute 46, then changes the colour and runs 2/1 for 400
 * minutes.
 */
final class WorkedPlant {
  static final int MOUNT = 46;
  static final int FIRST_END = MOUNT + 400;

  static SmallPlant plant() {
    return new SmallPlant()
        .job(job("1").pieces(400).due(START + 500).weight(2_000).on("P1", "M1", 400))
        .job(job("2").pieces(400).in("PP", "WHT").due(START + 2 * DAY).on("P1", "M1", 400));
  }

  static FloorEvent event(EventKind kind, String what, int from, int to, int count) {
    return new FloorEvent(
        new At("events.csv", 2), kind, what, START + from, START + to, count, "why");
  }

  static Repaired at(Plan plan, int minute, FloorEvent... events) {
    return Repair.of(plan, List.of(events), Optional.empty(), START + minute);
  }

  static Plan planned(SmallPlant plant) {
    return Plans.of(plant.build(), 20, 1);
  }

  static Plan next(Plan before, Repaired left) {
    Plan plan =
        new Planner(left.problem()).plan(Plans.head(20, 1), Optional.of(before), Watcher.NONE);
    Plan kept = RunNumbers.kept(before, plan);
    assertThat(Audit.check(left.problem(), kept)).isEmpty();
    return kept;
  }

  static Job line(Repaired left, String id) {
    return left.problem().jobs().stream()
        .filter(j -> j.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no job " + id));
  }

  static PressState state(Repaired left, String press) {
    return left.problem().floor().states().stream()
        .filter(s -> s.press().equals(press))
        .findFirst()
        .orElseThrow();
  }

  static Run run(Plan plan, String line) {
    return plan.runs().stream().filter(r -> r.job().equals(line)).findFirst().orElseThrow();
  }

  private WorkedPlant() {}
}
