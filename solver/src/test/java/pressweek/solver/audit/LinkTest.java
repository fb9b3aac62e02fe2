package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Link;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;

/** The grip B/1 on P2 goes over the core A/1 of P1, which ends at 08:00 and rests for 2 h. */
class LinkTest {
  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(120, 0, 0), making(0))),
            job("B/1", "ABS RD", option("P2 M4", pace(60, 0, 0), making(0))));
    return Arranged.set(problem, "links", List.of(new Link("B/1", "A/1", 120)));
  }

  private static final Run CORE =
      WeekPlan.run(
          "R1 A/1 P1 M1 1",
          WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
          "Mon 06:00",
          "Mon 08:00");

  private static Run grip(String start, String end) {
    return WeekPlan.run(
        "R2 B/1 P2 M4 1", WeekPlan.none(start, WeekPlan.setup("M4 - ABS RD")), start, end);
  }

  /** The rest is over at 10:00, so no press pauses then. */
  private static Problem withoutPause() {
    return Edited.set(problem(), "plant.hours.shifts[early].breaks", List.of());
  }

  @Test
  void itStartsWhenTheRestIsOver() {
    assertThat(
            TinyWeek.told(
                TinyWeek.plan(withoutPause(), List.of(CORE, grip("Mon 10:00", "Mon 11:00")))))
        .isEmpty();
    assertThat(
            TinyWeek.told(
                TinyWeek.plan(withoutPause(), List.of(CORE, grip("Mon 09:59", "Mon 10:59")))))
        .containsExactly(
            "LINKED run R2 (B/1) on P2 starts Mon 2026-11-30 09:59; it builds on run R1 (A/1) on P1"
                + " and may start 10:00, 120 min after that ends");
  }

  @Test
  void anotherRunIsNotAsked() {
    Problem other = Arranged.set(withoutPause(), "links", List.of(new Link("C/1", "A/1", 120)));
    assertThat(TinyWeek.told(TinyWeek.plan(other, List.of(CORE, grip("Mon 06:00", "Mon 07:00")))))
        .isEmpty();
  }

  @Test
  void whatIsRunningAlreadyIsNotAsked() {
    Problem running = Edited.set(withoutPause(), "floor.states[P2].job", "B/1");
    assertThat(TinyWeek.told(TinyWeek.plan(running, List.of(CORE, grip("Mon 06:00", "Mon 07:00")))))
        .isEmpty();
  }

  @Test
  void itIsInThePlanOnlyWithTheOther() {
    assertThat(TinyWeek.told(without("A", grip("Mon 12:00", "Mon 13:00"))))
        .containsExactly(
            "LINKED run R2 (B/1) on P2 builds on line A/1, of which the plan has no run");
    assertThat(TinyWeek.told(without("B", CORE))).isEmpty();
  }

  /** A plan of one run, in which the other line found no place. */
  private static Plan without(String order, Run run) {
    Plan plan = TinyWeek.plan(problem(), List.of(run));
    Unplaced line = new Unplaced(order, "1", "item " + order + "/1", 1000, "no room", "");
    plan = Edited.set(plan, "unplaced", List.of(line));
    plan = Edited.set(plan, "figures.unplacedLines", 1);
    Charge nothing = new Charge(Rule.UNPLACED, 0, "");
    return Edited.set(plan, "unplacedCharges", List.of(nothing));
  }
}
