package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.WeekPlan.charge;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Terms;

/** A run on P1 from 12:00; a move costs 7.00, an hour earlier or later is none. */
class MovedTest {
  private static Plan plan(String job, String press, String start, boolean charged) {
    Problem problem =
        TinyWeek.problem(job("A/1", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0))));
    Terms.Place place = new Terms.Place(job, press, at(start));
    problem = Arranged.set(problem, "settled.terms", new Terms(0, 0, 0, 700_000, List.of(place)));
    Run run =
        WeekPlan.run(
            "R1 A/1 P1 M1 1",
            WeekPlan.none("Mon 12:00", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 12:00",
            "Mon 13:00");
    if (charged) {
      run = WeekPlan.charged(run, charge(Rule.MOVED, 700_000));
    }
    return TinyWeek.with(TinyWeek.plan(problem, List.of(run)), PlantWide.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    "A/1, P1, Mon 12:00",
    "A/1, P1, Mon 11:00",
    "A/1, P1, Mon 13:00",
    "B/1, P2, Tue 06:00"
  })
  void aRunThatStaysOrIsNewIsNotCharged(String job, String press, String start) {
    assertThat(TinyWeek.told(plan(job, press, start, false))).isEmpty();
    assertThat(TinyWeek.told(plan(job, press, start, true)))
        .containsExactly(
            "FIGURES run R1 (A/1) on P1 is charged 7.00000 by MOVED; expected 0.00000",
            "FIGURES figures list MOVED with 7.00000; the charges come to nothing, which is not"
                + " listed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"P1 Mon 10:59", "P1 Mon 13:01", "P2 Mon 12:00"})
  void aRunThatMovesIs(String place) {
    String press = place.substring(0, 2);
    String start = place.substring(3);
    assertThat(TinyWeek.told(plan("A/1", press, start, true))).isEmpty();
    assertThat(TinyWeek.told(plan("A/1", press, start, false)))
        .containsExactly(
            "FIGURES run R1 (A/1) on P1 is charged 0.00000 by MOVED; expected 7.00000",
            "FIGURES figures list MOVED with 0.00000; the charges come to 7.00000");
  }
}
