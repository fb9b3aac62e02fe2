package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Arranged.opened;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.WeekPlan.charge;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;

/**
 * Overtime from 22:00 to 02:00, pause at 23:00, at 60.00 an hour. P1 runs 300 min from Monday
 * 20:00.
 */
class OpeningTest {
  private static final PlantWide.Opened MONDAY = opened("night", "Mon 22:00", "Tue 02:00");
  private static final PlantWide.Opened TUESDAY = opened("night", "Tue 22:00", "Wed 02:00");

  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(job("A/1", "PP BK", option("P1 M1 T8", pace(300, 5, 0), making(0))));
    problem = Arranged.shift(problem, "night", "22:00-02:00", "23:00-23:15");
    return Arranged.set(problem, "opening", Arranged.overtime("night"));
  }

  private static Plan plan(String end, PlantWide.Opened... opened) {
    Run run =
        WeekPlan.run(
            "R1 A/1 P1 M1 1",
            WeekPlan.none("Mon 20:00", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 20:00",
            end);
    // 4 h at 60.00, the pause counted.
    Charge[] charges =
        Arrays.stream(opened).map(o -> charge(Rule.OVERTIME, 24_000_000)).toArray(Charge[]::new);
    PlantWide whole = Arranged.opening(List.of(opened), charges);
    return TinyWeek.with(TinyWeek.plan(problem(), List.of(run)), whole);
  }

  /** 120 min before 22:00, 60 to the pause, 120 from 23:15. */
  @Test
  void anOpenedShiftIsWorkedButForItsPause() {
    assertThat(TinyWeek.told(plan("Tue 01:15", MONDAY))).isEmpty();
    assertThat(TinyWeek.told(plan("Tue 01:16", MONDAY)))
        .containsExactly(
            "RUN_TIME run R1 (A/1) on P1 from Mon 2026-11-30 20:00 to Tue 2026-12-01 01:16 has 301"
                + " working min; expected 300 for 1000 shots");
  }

  @Test
  void oneThatIsNotOpenedIsNotThere() {
    assertThat(TinyWeek.told(plan("Tue 09:00"))).isEmpty();
    assertThat(TinyWeek.told(plan("Tue 01:15")))
        .contains(
            "PRESS_HOURS run R1 (A/1) on P1 ends Tue 2026-12-01 01:15, when the press does not work");
  }

  @Test
  void anotherDayIsNotOpened() {
    assertThat(TinyWeek.told(plan("Tue 09:00", TUESDAY))).isEmpty();
    assertThat(TinyWeek.told(plan("Tue 01:15", TUESDAY)))
        .contains(
            "PRESS_HOURS run R1 (A/1) on P1 ends Tue 2026-12-01 01:15, when the press does not work");
  }

  @Test
  void onlyOvertimeIsOpened() {
    Plan plan = plan("Tue 01:15", opened("late", "Mon 14:00", "Mon 22:00"), MONDAY);
    plan = withCharges(plan, charge(Rule.OVERTIME, 24_000_000));
    assertThat(TinyWeek.told(plan))
        .containsExactly(
            "FIGURES the plan opens shift late from Mon 2026-11-30 14:00 to 22:00, which is not an"
                + " overtime shift");
  }

  @Test
  void onlyOnItsDaysAndAtItsTimes() {
    for (PlantWide.Opened open :
        List.of(
            opened("night", "Wed 22:00", "Thu 02:00"), // closed
            opened("night", "Tue 22:00", "Wed 02:01"),
            opened("night", "Tue 22:01", "Wed 02:00"))) {
      Plan plan = withCharges(plan("Tue 01:15", MONDAY, open), charge(Rule.OVERTIME, 24_000_000));
      assertThat(TinyWeek.told(plan))
          .singleElement()
          .asString()
          .startsWith("FIGURES the plan opens shift night from ")
          .endsWith(", which is not when it may be worked");
    }
  }

  @Test
  void onceAndInOrder() {
    Plan twice = withCharges(plan("Tue 01:15", MONDAY, MONDAY), charge(Rule.OVERTIME, 24_000_000));
    assertThat(TinyWeek.told(twice))
        .containsExactly(
            "FIGURES the plan opens shift night from Mon 2026-11-30 22:00 to Tue 2026-12-01 02:00,"
                + " twice");
    assertThat(TinyWeek.told(plan("Tue 01:15", MONDAY, TUESDAY))).isEmpty();
    assertThat(TinyWeek.told(plan("Tue 01:15", TUESDAY, MONDAY)))
        .containsExactly("FIGURES opened shifts are not listed by their start");
  }

  @Test
  void itIsCharged() {
    Plan dear = withCharges(plan("Tue 01:15", MONDAY), charge(Rule.OVERTIME, 24_000_001));
    assertThat(TinyWeek.told(dear))
        .containsExactly(
            "FIGURES charge 1 of the plant as a whole is 240.00001 by OVERTIME; expected 240.00000"
                + " by OVERTIME",
            "FIGURES figures list OVERTIME with 240.00001; the charges come to 240.00000");
    assertThat(TinyWeek.told(withCharges(plan("Tue 01:15", MONDAY))))
        .containsExactly(
            "FIGURES charge 1 of the plant as a whole is none; expected 240.00000 by OVERTIME",
            "FIGURES figures list OVERTIME with 0.00000; the charges come to 240.00000");
  }

  /** A change of 70 min from Monday 21:30 needs a setter after 22:00, who is free until 23:10. */
  @Test
  void itsSettersAreThereWhenItIsOpened() {
    for (int setters : new int[] {0, 1}) {
      Problem problem =
          TinyWeek.problem(job("A/1", "PP BK", option("P1 M2", pace(50, 0, 0), making(0))));
      problem = Arranged.shift(problem, "night", "22:00-02:00");
      problem = Arranged.set(problem, "opening", Arranged.overtime("night"));
      problem = Edited.set(problem, "plant.crew.settersChecked", true);
      problem = Edited.set(problem, "plant.hours.shifts[night].setters", setters);
      Run run =
          WeekPlan.run(
              "R1 A/1 P1 M2 1",
              WeekPlan.change(
                  "M1 T8 PP BK > M2 - PP BK", "Mon 21:30 - Mon 22:40", 70, 0, ChangeKind.MOLD),
              "Mon 22:40",
              "Mon 23:30");
      PlantWide whole = Arranged.opening(List.of(MONDAY), charge(Rule.OVERTIME, 24_000_000));
      Plan plan = TinyWeek.with(TinyWeek.plan(problem, List.of(run)), whole);
      if (setters == 1) {
        assertThat(TinyWeek.told(plan)).isEmpty();
      } else {
        assertThat(TinyWeek.told(plan))
            .containsExactly(
                "SETTERS the change before run R1 (A/1) on P1 starts Mon 2026-11-30 21:30; at 22:00"
                    + " it is one of 1 that take a setter, there are 0",
                "SETTERS the change before run R1 (A/1) on P1 from Mon 2026-11-30 21:30 to 22:40 is"
                    + " not within shifts that have a setter");
      }
    }
  }

  private static Plan withCharges(Plan plan, Charge... charges) {
    return TinyWeek.with(plan, Edited.set(plan.head().plantWide(), "charges", List.of(charges)));
  }
}
