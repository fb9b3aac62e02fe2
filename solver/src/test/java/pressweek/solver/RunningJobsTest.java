package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.data.problem.SmallPlant.shift;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;
import pressweek.solver.audit.Audit;

/** Planner and audit on what drawn plants and first users showed, each worked out by hand. */
class RunningJobsTest {
  private static final int LEAD = 30;

  /** Jobs 1/1 on P1, which waits for a receipt, and 2/1 on P2 are running; 4 operators there. */
  private static Problem running(int first, int second) {
    return new SmallPlant()
        .crew(new Crew(false, true, 80, false, LEAD))
        .stock(List.of(), List.of(new Receipt("I1", 100, START + 500, START + 600)))
        .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, "1/1"))
        .state(new PressState("P2", new Setup("M2", "", "PP", "BLK"), false, "2/1"))
        .job(work("1").operators(first).takes(new Take("I1", 100, 0, 0)).on("P1", "M1", 200))
        .job(work("2").operators(second).on("P2", "M2", 100))
        .build();
  }

  private static JobBuilder work(String order) {
    return job(order).due(START + 5 * DAY);
  }

  private static Plan plan(Problem problem) {
    Plan plan = Plans.of(problem, 20, 1);
    assertThat(Audit.check(problem, plan)).isEmpty();
    return plan;
  }

  private static Run run(Plan plan, String job) {
    return plan.runs().stream().filter(r -> r.job().equals(job)).findFirst().orElseThrow();
  }

  @Test
  void aJobThatWaitsForItsComponentsHoldsNoOperatorsMeanwhile() {
    Plan plan = plan(running(2_500, 1_501));
    assertThat(run(plan, "2/1").startMin()).isEqualTo(START);
    assertThat(run(plan, "1/1").startMin()).isEqualTo(START + 600 + LEAD);
  }

  @Test
  void allOperatorsAreEnough() {
    assertThat(run(plan(running(4_000, 4_000)), "2/1").startMin()).isEqualTo(START);
  }

  @Test
  void aJobThatNeedsMoreOperatorsThanThereAreIsLeftOut() {
    Plan plan = plan(running(2_500, 4_001));
    assertThat(plan.unplaced())
        .singleElement()
        .satisfies(line -> assertThat(line.id()).isEqualTo("2/1"))
        .satisfies(line -> assertThat(line.reason()).contains("operator"));
  }

  @Test
  void aLineLacksOnlyWhatNeverComes() {
    Problem problem =
        new SmallPlant()
            .crew(new Crew(false, false, 80, false, LEAD))
            .stock(
                List.of(),
                List.of(
                    new Receipt("I1", 100, START + 500, START + 600),
                    new Receipt("CARTON-9", 3, START + 500, START + 600)))
            .job(
                work("1")
                    .takes(
                        new Take("I1", 100, 0, 0), new Take(Component.CARTON, "CARTON-9", 4, 0, 0))
                    .on("P1", "M1", 200))
            .build();
    assertThat(plan(problem).unplaced())
        .singleElement()
        .satisfies(line -> assertThat(line.lacks()).contains("CARTON-9"));
  }

  /**
   * By day there are two setters, at all other times one. At 07:40 the second one begins a change
   * of 46 minutes on P1, which is away from 08:00 to 07:00 of the next day; he goes home at 14:00.
   */
  @Test
  void aSetterWhoHasGoneHomeInAPauseOfThePressIsNotCounted() {
    Problem problem =
        new SmallPlant()
            .crew(new Crew(true, false, 100, true, LEAD))
            .shifts(shift("all", "00:00", "00:00", 1), shift("day", "06:00", "14:00", 1))
            .away(
                new Downtime(
                    Downtime.Kind.PRESS, "P1", START + 480, START + DAY + 420, "inspection"))
            .job(work("1").earliest(START + 450).in("PP", "RED").on("P2", "M2", 60))
            .job(work("2").earliest(START + 460).on("P1", "M1", 100))
            .job(work("3").earliest(START + 900).on("P2", "M2", 50))
            .build();
    Plan plan = plan(problem);
    assertThat(run(plan, "2/1").change().startMin()).isEqualTo(START + 460);
    assertThat(run(plan, "2/1").startMin()).isEqualTo(START + DAY + 420 + 46 - 20);
    assertThat(run(plan, "3/1").change().startMin()).isEqualTo(START + 900);
  }
}
