package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Run;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;

/**
 * Dryer D1 feeds P1 and P2, D2 feeds P2 alone, nothing feeds P3. ABS comes natural and dries for
 * 120 min, red PP comes coloured and dries for 60, all other PP needs no dryer. Cleaning takes 30
 * min. P2 holds ABS when the plan starts, so D1 does.
 */
class DryerTest {
  private static final Job NATURAL =
      job(
          "A/1",
          "ABS RD",
          option("P2 M4", pace(60, 0, 0), making(0)),
          option("P3 M4", pace(60, 0, 0), making(0)));
  private static final Job BLACK = job("A/2", "ABS BK", option("P2 M4", pace(60, 0, 0), making(0)));
  private static final Job RED = job("B/1", "PP RD", option("P1 M1 T8", pace(60, 0, 0), making(0)));

  private static Problem problem(Job... jobs) {
    Problem problem = TinyWeek.problem(jobs);
    problem = Edited.set(problem, "plant.hours.shifts[early].breaks", List.of());
    Drying drying =
        new Drying(
            List.of(
                new Drying.Feed("D1", List.of("P1", "P2")), new Drying.Feed("D2", List.of("P2"))),
            List.of(
                new Drying.Dried("ABS", "RD", "ABS", 120),
                new Drying.Dried("ABS", "BK", "ABS", 120),
                new Drying.Dried("PP", "RD", "PP RD", 60)),
            30);
    return Arranged.set(problem, "settled.drying", drying);
  }

  private static PlantWide.DryerUse use(
      String runAndDryer, String content, String from, String to) {
    String[] ids = runAndDryer.split(" ");
    return new PlantWide.DryerUse(ids[0], ids[1], content, at(from), at(to));
  }

  private static Plan plan(Problem problem, List<Run> runs, PlantWide.DryerUse... uses) {
    PlantWide whole = Edited.set(PlantWide.NONE, "dryings", Arrays.asList(uses));
    return TinyWeek.with(TinyWeek.plan(problem, runs), whole);
  }

  private static Run natural(String start, String end) {
    return WeekPlan.run(
        "R1 A/1 P2 M4 1", WeekPlan.none(start, WeekPlan.setup("M4 - ABS RD")), start, end);
  }

  /** Black to red is lighter by 50: 30 + 23, and 10 for the first article; purge 4 x 250 g. */
  private static Run red(String change, String start, String end) {
    Change colour =
        WeekPlan.change(
            "M1 T8 PP BK > M1 T8 PP RD", change + " - " + start, 63, 1000, ChangeKind.COLOUR);
    return WeekPlan.run("R2 B/1 P1 M1 1", colour, start, end);
  }

  private static final Run SIX = natural("Mon 06:00", "Mon 07:00");
  private static final PlantWide.DryerUse SIX_DRY = use("R1 D1", "ABS", "Mon 06:00", "Mon 07:00");

  @Test
  void aDryerIsDryWithWhatIsInTheBarrel() {
    assertThat(TinyWeek.told(plan(problem(NATURAL), List.of(SIX), SIX_DRY))).isEmpty();
  }

  /** D2 is not the first dryer of any press, so it is empty and is not cleaned. */
  @Test
  void anEmptyDryerDriesFromTheStartOfThePlan() {
    Plan good =
        plan(
            problem(NATURAL),
            List.of(natural("Mon 08:00", "Mon 09:00")),
            use("R1 D2", "ABS", "Mon 06:00", "Mon 09:00"));
    assertThat(TinyWeek.told(good)).isEmpty();
    Plan early =
        plan(
            problem(NATURAL),
            List.of(natural("Mon 07:59", "Mon 08:59")),
            use("R1 D2", "ABS", "Mon 05:59", "Mon 08:59"));
    assertThat(TinyWeek.told(early))
        .containsExactly(
            "DRYER run R1 (A/1) on P2 starts Mon 2026-11-30 07:59; dryer D2 is free from 06:00 and"
                + " takes 0 min to clean and 120 min to dry ABS");
  }

  /** R1 ends at 07:00; 30 min to clean and 60 to dry. */
  @Test
  void anotherContentIsCleanedAndDriedAfterTheLast() {
    Problem problem = problem(NATURAL, RED);
    Plan good =
        plan(
            problem,
            List.of(SIX, red("Mon 07:27", "Mon 08:30", "Mon 09:30")),
            SIX_DRY,
            use("R2 D1", "PP RD", "Mon 07:30", "Mon 09:30"));
    assertThat(TinyWeek.told(good)).isEmpty();
    Plan early =
        plan(
            problem,
            List.of(SIX, red("Mon 07:26", "Mon 08:29", "Mon 09:29")),
            SIX_DRY,
            use("R2 D1", "PP RD", "Mon 07:29", "Mon 09:29"));
    assertThat(TinyWeek.told(early))
        .containsExactly(
            "DRYER run R2 (B/1) on P1 starts Mon 2026-11-30 08:29; dryer D1 is free from 07:00 and"
                + " takes 30 min to clean and 60 min to dry PP RD");
    // P2 has its own: D1 has been free, and holds ABS, since the start of the plan.
    Plan own =
        plan(
            problem,
            List.of(natural("Mon 08:00", "Mon 09:00"), red("Mon 06:27", "Mon 07:30", "Mon 08:30")),
            use("R2 D1", "PP RD", "Mon 06:30", "Mon 08:30"),
            use("R1 D2", "ABS", "Mon 06:00", "Mon 09:00"));
    assertThat(TinyWeek.told(own)).isEmpty();
  }

  @Test
  void oneContentAtATime() {
    Plan plan =
        plan(
            problem(NATURAL, RED),
            List.of(natural("Mon 08:29", "Mon 09:29"), red("Mon 07:26", "Mon 08:29", "Mon 09:29")),
            use("R1 D1", "ABS", "Mon 08:29", "Mon 09:29"),
            use("R2 D1", "PP RD", "Mon 07:29", "Mon 09:29"));
    assertThat(TinyWeek.told(plan))
        .containsExactly(
            "DRYER run R1 (A/1) on P2 has ABS out of dryer D1 from Mon 2026-11-30 08:29, run R2"
                + " (B/1) on P1 has PP RD out of it until 09:29");
  }

  /** Another colour of what is coloured at the press is the same in the dryer. */
  @Test
  void theSameContentGoesOn() {
    // Red 50 to black 0 is darker: 10, and 10 for the first article; purge 1.5 x 250 g.
    Change darker =
        WeekPlan.change(
            "M4 - ABS RD > M4 - ABS BK", "Mon 07:00 - Mon 07:20", 20, 375, ChangeKind.COLOUR);
    Run black = WeekPlan.run("R3 A/2 P2 M4 2", darker, "Mon 07:20", "Mon 08:20");
    Problem problem = problem(NATURAL, BLACK);
    Plan plan =
        plan(problem, List.of(SIX, black), SIX_DRY, use("R3 D1", "ABS", "Mon 07:20", "Mon 08:20"));
    assertThat(TinyWeek.told(plan)).isEmpty();
    Plan twoDryers =
        plan(problem, List.of(SIX, black), SIX_DRY, use("R3 D2", "ABS", "Mon 05:20", "Mon 08:20"));
    assertThat(TinyWeek.told(twoDryers))
        .singleElement()
        .asString()
        .endsWith("dryer D2 is free from 06:00 and takes 0 min to clean and 120 min to dry ABS");
  }

  @Test
  void oneDryerOfThePressIsNamed() {
    Problem problem = problem(NATURAL);
    String told = "DRYER run R1 (A/1) on P2 needs one dryer of its press (D1, D2), the plan names ";
    assertThat(TinyWeek.told(plan(problem, List.of(SIX)))).containsExactly(told + "none");
    assertThat(TinyWeek.told(plan(problem, List.of(SIX), SIX_DRY, SIX_DRY)))
        .containsExactly(told + "D1, D1");
    assertThat(
            TinyWeek.told(
                plan(problem, List.of(SIX), use("R1 D9", "ABS", "Mon 06:00", "Mon 07:00"))))
        .containsExactly(told + "D9");
    Problem red = problem(RED);
    Run run = red("Mon 07:27", "Mon 08:30", "Mon 09:30");
    assertThat(
            TinyWeek.told(plan(red, List.of(run), use("R2 D2", "PP RD", "Mon 07:30", "Mon 09:30"))))
        .containsExactly(
            "DRYER run R2 (B/1) on P1 needs one dryer of its press (D1), the plan names D2");
  }

  @Test
  void aRunThatNeedsNoneHasNone() {
    Problem black = problem(job("B/2", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0))));
    Run run =
        WeekPlan.run(
            "R1 B/2 P1 M1 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 06:00",
            "Mon 07:00");
    assertThat(TinyWeek.told(plan(black, List.of(run)))).isEmpty();
    assertThat(TinyWeek.told(plan(black, List.of(run), SIX_DRY)))
        .containsExactly("DRYER run R1 (B/2) on P1 needs no dryer, the plan names D1");
    assertThat(
            TinyWeek.told(plan(black, List.of(run), use("R9 D1", "ABS", "Mon 06:00", "Mon 07:00"))))
        .containsExactly("DRYER dryer D1 feeds run R9, which is not in the plan");
  }

  /** Nothing feeds P3. */
  @Test
  void aPressWithoutDryerIsNotAsked() {
    Problem problem = Edited.set(problem(NATURAL), "floor.states[P2].setup.mold", "");
    problem = Edited.set(problem, "floor.states[P3].setup", WeekPlan.setup("M4 - ABS RD"));
    Run run =
        WeekPlan.run(
            "R1 A/1 P3 M4 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M4 - ABS RD")),
            "Mon 06:00",
            "Mon 07:00");
    assertThat(TinyWeek.told(plan(problem, List.of(run)))).isEmpty();
  }

  /** Red PP is running on P1, and D1 holds it, whatever P2 has in its barrel. */
  @Test
  void whatIsRunningNeedsNoTime() {
    Problem problem = Edited.set(problem(RED, NATURAL), "floor.states[P1].job", "B/1");
    problem = Edited.set(problem, "floor.states[P1].setup.colour", "RD");
    Run running =
        WeekPlan.run(
            "R2 B/1 P1 M1 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP RD")),
            "Mon 06:00",
            "Mon 07:00");
    PlantWide.DryerUse goesOn = use("R2 D1", "PP RD", "Mon 06:00", "Mon 07:00");
    Run after = natural("Mon 09:30", "Mon 10:30");
    assertThat(
            TinyWeek.told(
                plan(
                    problem,
                    List.of(running, after),
                    goesOn,
                    use("R1 D1", "ABS", "Mon 07:30", "Mon 10:30"))))
        .isEmpty();
    Run early = natural("Mon 09:29", "Mon 10:29");
    assertThat(
            TinyWeek.told(
                plan(
                    problem,
                    List.of(running, early),
                    goesOn,
                    use("R1 D1", "ABS", "Mon 07:29", "Mon 10:29"))))
        .singleElement()
        .asString()
        .contains("dryer D1 is free from 07:00 and takes 30 min to clean and 120 min to dry ABS");
    // Both are running out of one dryer: that is how the plant has it.
    Problem both = Edited.set(problem, "floor.states[P2].job", "A/1");
    assertThat(TinyWeek.told(plan(both, List.of(running, SIX), SIX_DRY, goesOn))).isEmpty();
  }

  @Test
  void contentAndTimesAreThoseOfTheRule() {
    for (PlantWide.DryerUse wrong :
        List.of(
            use("R1 D1", "PP RD", "Mon 06:00", "Mon 07:00"),
            use("R1 D1", "ABS", "Mon 04:00", "Mon 07:00"),
            use("R1 D1", "ABS", "Mon 06:00", "Mon 07:01"))) {
      assertThat(TinyWeek.told(plan(problem(NATURAL), List.of(SIX), wrong)))
          .singleElement()
          .asString()
          .startsWith("FIGURES run R1 (A/1) on P2 has dryer D1 with " + wrong.content())
          .endsWith("expected ABS from 06:00 to 07:00");
    }
  }

  @Test
  void dryingsAreListedByTheStartOfTheirRuns() {
    Plan plan =
        plan(
            problem(NATURAL, RED),
            List.of(SIX, red("Mon 07:27", "Mon 08:30", "Mon 09:30")),
            use("R2 D1", "PP RD", "Mon 07:30", "Mon 09:30"),
            SIX_DRY);
    assertThat(TinyWeek.told(plan))
        .containsExactly("FIGURES dryings are not listed by the start of their runs");
  }

  /** P1 and P2 begin with ABS at 08:30: D1 held red PP, and either may be the one it dries for. */
  @Test
  void runsThatStartTogetherShareTheDrying() {
    Job second = job("B/1", "ABS RD", option("P1 M1 T8", pace(60, 0, 0), making(0)));
    Problem problem =
        Edited.set(
            problem(NATURAL, second), "floor.states[P1].setup", WeekPlan.setup("M1 T8 PP RD"));
    // PP 230 to ABS 240: 20, and 10 for the first article; purge 3 x 250 g.
    Change resin =
        WeekPlan.change(
            "M1 T8 PP RD > M1 T8 ABS RD", "Mon 08:00 - Mon 08:30", 30, 750, ChangeKind.RESIN);
    Run one = WeekPlan.run("R2 B/1 P1 M1 1", resin, "Mon 08:30", "Mon 09:30");
    Run two = natural("Mon 08:30", "Mon 09:30");
    for (String[] from :
        new String[][] {
          {"Mon 06:30", "Mon 06:30"}, {"Mon 06:30", "Mon 08:30"}, {"Mon 08:30", "Mon 06:30"}
        }) {
      Plan plan =
          plan(
              problem,
              List.of(one, two),
              use("R2 D1", "ABS", from[0], "Mon 09:30"),
              use("R1 D1", "ABS", from[1], "Mon 09:30"));
      assertThat(TinyWeek.told(plan)).isEmpty();
    }
    Plan never =
        plan(
            problem,
            List.of(one, two),
            use("R2 D1", "ABS", "Mon 08:30", "Mon 09:30"),
            use("R1 D1", "ABS", "Mon 08:30", "Mon 09:30"));
    assertThat(TinyWeek.told(never)).hasSize(2);
  }
}
