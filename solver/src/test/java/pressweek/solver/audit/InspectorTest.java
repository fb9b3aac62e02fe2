package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.food;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.time.LocalTime;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;

/**
 * P1 and P2 change molds in 70 min, of which the last 10 are the first article. There is one
 * inspector early and none late.
 */
class InspectorTest {
  private static final String SHORT =
      "INSPECTORS the first-article check before run R2 (B/1) on P2";

  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M2", pace(60, 0, 0), making(0))),
            job("B/1", "ABS RD", option("P2 M3", pace(60, 0, 0), making(0))));
    problem = Edited.set(problem, "floor.states[P3].setup.mold", "");
    return Edited.set(problem, "plant.hours.shifts[early].inspectors", OptionalInt.of(1));
  }

  private static Run first(String change, String start, String end) {
    return WeekPlan.run(
        "R1 A/1 P1 M2 1", mold("M1 T8 PP BK > M2 - PP BK", change, start), start, end);
  }

  private static Run second(String change, String start, String end) {
    return WeekPlan.run(
        "R2 B/1 P2 M3 1", mold("M4 - ABS RD > M3 - ABS RD", change, start), start, end);
  }

  private static Change mold(String setups, String from, String to) {
    return WeekPlan.change(setups, from + " - " + to, 70, 0, ChangeKind.MOLD);
  }

  private static Plan plan(Problem problem, Run... runs) {
    return TinyWeek.plan(problem, List.of(runs));
  }

  private static final Run SIX = first("Mon 06:00", "Mon 07:10", "Mon 08:10");

  @Test
  void oneChecksOneArticleAfterTheOther() {
    Run after = second("Mon 06:10", "Mon 07:20", "Mon 08:20");
    assertThat(TinyWeek.told(plan(problem(), SIX, after))).isEmpty();
  }

  @Test
  void oneMinuteTogetherIsOneTooMany() {
    Plan plan = plan(problem(), SIX, second("Mon 06:09", "Mon 07:19", "Mon 08:19"));
    assertThat(TinyWeek.told(plan))
        .containsExactly(
            SHORT
                + " begins Mon 2026-11-30 07:09; at 07:09 it is one of 2 that take an inspector,"
                + " there are 1");
    Problem two =
        Edited.set(plan.problem(), "plant.hours.shifts[early].inspectors", OptionalInt.of(2));
    assertThat(TinyWeek.told(Edited.set(plan, "problem", two))).isEmpty();
    Problem unsaid =
        Edited.set(plan.problem(), "plant.hours.shifts[early].inspectors", OptionalInt.empty());
    assertThat(TinyWeek.told(Edited.set(plan, "problem", unsaid))).isEmpty();
  }

  @Test
  void aPlantWithoutFirstArticlesNeedsNone() {
    Problem none = Edited.set(problem(), "plant.changes.firstArticleMin", 0);
    Run one =
        WeekPlan.run(
            "R1 A/1 P1 M2 1",
            WeekPlan.change(
                "M1 T8 PP BK > M2 - PP BK", "Mon 06:00 - Mon 07:00", 60, 0, ChangeKind.MOLD),
            "Mon 07:00",
            "Mon 08:00");
    Run two =
        WeekPlan.run(
            "R2 B/1 P2 M3 1",
            WeekPlan.change(
                "M4 - ABS RD > M3 - ABS RD", "Mon 06:00 - Mon 07:00", 60, 0, ChangeKind.MOLD),
            "Mon 07:00",
            "Mon 08:00");
    assertThat(TinyWeek.told(plan(none, one, two))).isEmpty();
  }

  /** Its last 10 min are on either side of 14:00 or of a pause. */
  @Test
  void aShiftThatDoesNotSayHasNone() {
    Run before = second("Mon 12:50", "Mon 14:00", "Mon 15:00");
    assertThat(TinyWeek.told(plan(problem(), SIX, before))).isEmpty();
    Run across = second("Mon 12:51", "Mon 14:01", "Mon 15:01");
    assertThat(TinyWeek.told(plan(problem(), SIX, across)))
        .containsExactly(
            SHORT
                + " begins Mon 2026-11-30 13:51; at 14:00 it is one of 1 that take an inspector,"
                + " there are 0");
  }

  /** P1 checks from 09:55 to 10:00 and from 10:30 to 10:35, P2 checks in the 10 min after that. */
  @Test
  void inAPauseOfThePressNoInspectorIsTaken() {
    Run around = first("Mon 08:55", "Mon 10:35", "Mon 11:35");
    assertThat(
            TinyWeek.told(plan(problem(), around, second("Mon 09:05", "Mon 10:45", "Mon 11:45"))))
        .isEmpty();
    assertThat(
            TinyWeek.told(plan(problem(), around, second("Mon 09:04", "Mon 10:44", "Mon 11:44"))))
        .containsExactly(
            SHORT
                + " begins Mon 2026-11-30 10:34; at 10:34 it is one of 2 that take an inspector,"
                + " there are 1");
  }

  /** The record says 5 min, so all 5 of them are checked; P2 may check right before or after. */
  @Test
  void aShortRecordedChangeIsCheckedAllThrough() {
    RecordedChange record =
        new RecordedChange(
            "P1", WeekPlan.setup("M1 - - -"), WeekPlan.setup("M2 - - -"), 5, OptionalInt.empty());
    Problem problem = Edited.set(problem(), "floor.recordedChanges", List.of(record));
    Change change =
        WeekPlan.change("M1 T8 PP BK > M2 - PP BK", "Mon 07:10 - Mon 07:15", 5, 0, ChangeKind.MOLD);
    Run quick = WeekPlan.run("R1 A/1 P1 M2 1", change, "Mon 07:15", "Mon 08:15");
    assertThat(TinyWeek.told(plan(problem, quick, second("Mon 06:00", "Mon 07:10", "Mon 08:10"))))
        .isEmpty();
    assertThat(TinyWeek.told(plan(problem, quick, second("Mon 06:01", "Mon 07:11", "Mon 08:11"))))
        .containsExactly(
            "INSPECTORS the first-article check before run R1 (A/1) on P1 begins Mon 2026-11-30"
                + " 07:10; at 07:10 it is one of 2 that take an inspector, there are 1");
  }

  /** P1 is cleared for food, which takes 30 min and no first article. */
  @Test
  void aClearanceAloneTakesNone() {
    Problem problem =
        Edited.set(
            problem(),
            "jobs",
            List.of(
                food(job("A/1", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0)))),
                job("B/1", "ABS RD", option("P2 M3", pace(60, 0, 0), making(0)))));
    Change clear =
        WeekPlan.change(
            "M1 T8 PP BK > M1 T8 PP BK", "Mon 06:40 - Mon 07:10", 30, 0, ChangeKind.FOOD_CLEARANCE);
    Run run = WeekPlan.run("R1 A/1 P1 M1 1", clear, "Mon 07:10", "Mon 08:10");
    assertThat(TinyWeek.told(plan(problem, run, second("Mon 06:00", "Mon 07:10", "Mon 08:10"))))
        .isEmpty();
  }

  /** The late shift begins at 13:50, so that there are two from then to 14:00. */
  @Test
  void shiftsInProgressAddUp() {
    Problem problem =
        Edited.set(problem(), "plant.hours.shifts[late].inspectors", OptionalInt.of(1));
    problem = Edited.set(problem, "plant.hours.shifts[late].from", LocalTime.of(13, 50));
    Run one = first("Mon 12:50", "Mon 14:00", "Mon 15:00");
    Run two = second("Mon 12:50", "Mon 14:00", "Mon 15:00");
    assertThat(TinyWeek.told(plan(problem, one, two))).isEmpty();
    problem = Edited.set(problem, "plant.hours.shifts[late].from", LocalTime.of(13, 51));
    assertThat(TinyWeek.told(plan(problem, one, two)))
        .singleElement()
        .asString()
        .contains("at 13:50");
  }
}
