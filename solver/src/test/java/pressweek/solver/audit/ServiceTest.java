package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Problem;

/**
 * M1 is on P1. Each run makes 1000 shots, and 10 more when it begins with a change. A service takes
 * 90 min of the clock.
 */
class ServiceTest {
  private static final Job A1 = job("A/1", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0)));
  private static final Job A2 = job("A/2", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0)));
  private static final Run FIRST = run("R1 A/1 P1 M1 1", "Mon 06:00", "Mon 07:00");
  private static final Run SECOND = run("R2 A/2 P1 M1 2", "Mon 07:00", "Mon 08:00");
  private static final Dismount OFF =
      new Dismount("P1", "M1", at("Mon 07:00"), at("Mon 07:24"), 24, 0);

  private static Run run(String ids, String start, String end) {
    return WeekPlan.run(ids, WeekPlan.none(start, WeekPlan.setup("M1 T8 PP BK")), start, end);
  }

  /** The second run, with M1 mounted anew: 36 min, and 10 for the first article. */
  private static Run again(String change, String start, String end) {
    return WeekPlan.run(
        "R2 A/2 P1 M1 2",
        WeekPlan.change("- - PP BK > M1 T8 PP BK", change + " - " + start, 46, 0, ChangeKind.MOLD),
        start,
        end);
  }

  private static Problem problem(int left, int between, Job... jobs) {
    return Arranged.set(
        TinyWeek.problem(jobs), "services", List.of(new MoldService("M1", left, between, 90)));
  }

  private static Plan off(Plan plan) {
    Plan more = Edited.set(plan, "dismounts", List.of(OFF));
    more = Edited.set(more, "figures.changes", plan.figures().changes() + 1);
    return Edited.set(more, "figures.changeMin", plan.figures().changeMin() + OFF.minutes());
  }

  @Test
  void asManyShotsAsAreLeft() {
    assertThat(TinyWeek.told(TinyWeek.plan(problem(2000, 5000, A1, A2), List.of(FIRST, SECOND))))
        .isEmpty();
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1999, 5000, A1, A2), List.of(FIRST, SECOND))))
        .containsExactly(
            "SERVICE run R2 (A/2) on P1 makes 1000 shots, mold M1 has 999 left to its service of 90"
                + " min; it is not taken off before that");
  }

  /** M1 is off from 07:24 on. */
  @Test
  void aServiceTakesItsMinutesOffThePress() {
    Problem problem = problem(1999, 1010, A1, A2);
    Plan good =
        TinyWeek.plan(problem, List.of(FIRST, again("Mon 08:54", "Mon 09:40", "Mon 11:10")));
    assertThat(TinyWeek.told(off(good))).isEmpty();
    Plan early =
        TinyWeek.plan(problem, List.of(FIRST, again("Mon 08:53", "Mon 09:39", "Mon 11:09")));
    assertThat(TinyWeek.told(off(early)))
        .containsExactly(
            "SERVICE run R2 (A/2) on P1 makes 1010 shots, mold M1 has 999 left to its service of 90"
                + " min; it is off only from Mon 2026-11-30 07:24 to 08:53");
  }

  /** Mounted anew it makes 10 start-up shots: of 2009 left 1009 are one too few. */
  @Test
  void startUpShotsCount() {
    Run again = again("Mon 07:30", "Mon 08:16", "Mon 09:16");
    assertThat(
            TinyWeek.told(off(TinyWeek.plan(problem(2010, 5000, A1, A2), List.of(FIRST, again)))))
        .isEmpty();
    assertThat(
            TinyWeek.told(off(TinyWeek.plan(problem(2009, 5000, A1, A2), List.of(FIRST, again)))))
        .containsExactly(
            "SERVICE run R2 (A/2) on P1 makes 1010 shots, mold M1 has 1009 left to its service of"
                + " 90 min; it is off only from Mon 2026-11-30 07:24 to 07:30");
  }

  /**
   * A service gives 2010 shots, 1010 of which R2 makes; 1000 are left for R3, and none is left for
   * R4.
   */
  @Test
  void theCountBeginsAnewWithTheService() {
    Job third = job("A/3", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0)));
    Run more = run("R3 A/3 P1 M1 3", "Mon 11:10", "Mon 12:10");
    Run again = again("Mon 08:54", "Mon 09:40", "Mon 11:10");
    List<Run> runs = List.of(FIRST, again, more);
    assertThat(TinyWeek.told(off(TinyWeek.plan(problem(1999, 2010, A1, A2, third), runs))))
        .isEmpty();
    assertThat(TinyWeek.told(off(TinyWeek.plan(problem(1999, 2009, A1, A2, third), runs))))
        .containsExactly(
            "SERVICE run R3 (A/3) on P1 makes 1000 shots, mold M1 has 999 left to its service of 90"
                + " min; it is not taken off before that");
    // Off for long enough, but not serviced: 2010 of 2999 were enough for the first two.
    assertThat(TinyWeek.told(off(TinyWeek.plan(problem(2999, 5000, A1, A2, third), runs))))
        .containsExactly(
            "SERVICE run R3 (A/3) on P1 makes 1000 shots, mold M1 has 989 left to its service of 90"
                + " min; it is not taken off before that");
  }

  /** A run of more shots than there are between two services begins right after one. */
  @Test
  void aLongRunGoesWithAsManyAsThereCanBe() {
    assertThat(TinyWeek.told(TinyWeek.plan(problem(900, 900, A1), List.of(FIRST)))).isEmpty();
    assertThat(TinyWeek.told(TinyWeek.plan(problem(899, 900, A1), List.of(FIRST)))).hasSize(1);
  }

  @Test
  void whatIsRunningGoesOnAndCounts() {
    Problem problem = Edited.set(problem(0, 5000, A1, A2), "floor.states[P1].job", "A/1");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, SECOND))))
        .containsExactly(
            "SERVICE run R2 (A/2) on P1 makes 1000 shots, mold M1 has -1000 left to its service of"
                + " 90 min; it is not taken off before that");
  }

  /** M2 is on no press when the plan starts at 06:00, and overdue: it is mounted from 07:30 on. */
  @Test
  void aMoldOnNoPressIsServicedFromTheStartOfThePlan() {
    Job other = job("B/1", "PP BK", option("P1 M2", pace(60, 0, 0), making(0)));
    Problem problem =
        Arranged.set(
            problem(0, 1, other), "services", List.of(new MoldService("M2", -5, 5000, 90)));
    assertThat(
            TinyWeek.told(
                TinyWeek.plan(problem, List.of(onM2("Mon 07:30", "Mon 08:40", "Mon 09:40")))))
        .isEmpty();
    assertThat(
            TinyWeek.told(
                TinyWeek.plan(problem, List.of(onM2("Mon 07:29", "Mon 08:39", "Mon 09:39")))))
        .containsExactly(
            "SERVICE run R1 (B/1) on P1 makes 1010 shots, mold M2 has -5 left to its service of 90"
                + " min; it is off only from Mon 2026-11-30 06:00 to 07:29");
    Problem unserviced = Arranged.set(problem, "services", List.of());
    assertThat(
            TinyWeek.told(
                TinyWeek.plan(unserviced, List.of(onM2("Mon 07:29", "Mon 08:39", "Mon 09:39")))))
        .isEmpty();
  }

  private static Run onM2(String change, String start, String end) {
    return WeekPlan.run(
        "R1 B/1 P1 M2 1",
        WeekPlan.change("M1 T8 PP BK > M2 - PP BK", change + " - " + start, 70, 0, ChangeKind.MOLD),
        start,
        end);
  }
}
