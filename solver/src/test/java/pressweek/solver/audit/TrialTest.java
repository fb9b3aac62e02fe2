package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Trial;

/** M2 is tried on P1 from 08:00 to 09:00 with one setter; P1 has a run with M1. */
class TrialTest {
  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(180, 5, 0), making(0))),
            job("B/1", "ABS RD", option("P2 M2", pace(60, 0, 0), making(0))));
    problem = Edited.set(problem, "plant.crew.settersChecked", true);
    problem = Edited.set(problem, "plant.hours.shifts[early].setters", 1);
    Trial trial =
        new Trial(
            "P1", "M2", at("Mon 08:00"), at("Mon 09:00"), 1, "first shots", OptionalInt.empty());
    return Arranged.set(problem, "trials", List.of(trial));
  }

  private static Run onP1(String end) {
    return WeekPlan.run(
        "R1 A/1 P1 M1 1",
        WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
        "Mon 06:00",
        end);
  }

  /** M4 comes off in 24 min and M2 goes on in 36, with 10 for the first article. */
  private static Run onP2(String change, String start, String end) {
    return WeekPlan.run(
        "R2 B/1 P2 M2 1",
        WeekPlan.change(
            "M4 - ABS RD > M2 - ABS RD", change + " - " + start, 70, 0, ChangeKind.MOLD),
        start,
        end);
  }

  private static Plan plan(Problem problem, Run... runs) {
    return TinyWeek.plan(problem, List.of(runs));
  }

  @Test
  void thePressStandsForIt() {
    Plan good = plan(problem(), onP1("Mon 10:00"), onP2("Mon 09:00", "Mon 10:40", "Mon 11:40"));
    assertThat(TinyWeek.told(good)).isEmpty();
    Plan through = plan(problem(), onP1("Mon 09:00"), onP2("Mon 09:00", "Mon 10:40", "Mon 11:40"));
    assertThat(TinyWeek.told(through))
        .containsExactly(
            "PRESS_HOURS run R1 (A/1) on P1 ends Mon 2026-11-30 09:00, when the press does not work",
            "RUN_TIME run R1 (A/1) on P1 from Mon 2026-11-30 06:00 to 09:00 has 120 working min;"
                + " expected 180 for 1000 shots");
  }

  @Test
  void theMoldIsAwayForIt() {
    Problem many = Edited.set(problem(), "plant.hours.shifts[early].setters", 2);
    Plan early = plan(many, onP1("Mon 10:00"), onP2("Mon 08:59", "Mon 10:39", "Mon 11:39"));
    assertThat(TinyWeek.told(early))
        .containsExactly(
            "MOLD_AWAY run R2 (B/1) on P2 is from Mon 2026-11-30 08:59 to 11:39, mold M2 is away"
                + " until 09:00 (first shots)");
  }

  /** Another mold is tried, so M2 is at hand: P2 may change from 08:00 on with a second setter. */
  @Test
  void itsSettersAreFewerInTheHouse() {
    Problem other = Edited.set(problem(), "arrangements", Optional.empty());
    other =
        Arranged.set(
            other,
            "trials",
            List.of(
                new Trial(
                    "P1",
                    "M3",
                    at("Mon 08:00"),
                    at("Mon 09:00"),
                    1,
                    "first shots",
                    OptionalInt.empty())));
    Plan plan = plan(other, onP1("Mon 10:00"), onP2("Mon 07:50", "Mon 09:00", "Mon 10:00"));
    assertThat(TinyWeek.told(plan))
        .containsExactly(
            "SETTERS the change before run R2 (B/1) on P2 starts Mon 2026-11-30 07:50; at 08:00 it"
                + " is one of 1 that take a setter, there are 0");
    assertThat(TinyWeek.told(Edited.set(plan, "problem.plant.hours.shifts[early].setters", 2)))
        .isEmpty();
  }

  /** The change ends at 08:00 sharp, its setter is busy beside it up to 08:18. */
  @Test
  void aSetterWhoWorksBesideHisChangesIsNotAsked() {
    Problem other = Edited.set(problem(), "arrangements", Optional.empty());
    other =
        Arranged.set(
            other,
            "trials",
            List.of(
                new Trial(
                    "P1",
                    "M3",
                    at("Mon 08:00"),
                    at("Mon 09:00"),
                    1,
                    "first shots",
                    OptionalInt.empty())));
    Plan plan = plan(other, onP1("Mon 10:00"), onP2("Mon 06:50", "Mon 08:00", "Mon 09:00"));
    assertThat(TinyWeek.told(plan)).isEmpty();
  }
}
