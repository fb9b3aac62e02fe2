package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.plan.ChangeKind.COLOUR;
import static pressweek.data.plan.ChangeKind.FOOD_CLEARANCE;
import static pressweek.data.plan.ChangeKind.MOLD;
import static pressweek.data.plan.ChangeKind.RESIN;
import static pressweek.data.plan.ChangeKind.TOOLING;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;

/**
 * Setups are written mold, tooling, resin, colour; a press with a barrel of 120 g; the table of
 * {@link WeekProblem}.
 */
class ChangeReckonerTest {
  private static DueChange change(Problem problem, String from, String to, boolean clearance) {
    Press press = problem.floor().presses().get(0);
    return new ChangeReckoner(problem, new Ids(problem))
        .change(press, WeekPlan.setup(from), WeekPlan.setup(to), clearance);
  }

  private static DueChange change(String from, String to) {
    return change(WeekProblem.problem(), from, to, false);
  }

  @Test
  void theSameSetupNeedsNothing() {
    assertThat(change("M1 T8 PP BK", "M1 T8 PP BK")).isEqualTo(DueChange.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    // mold: off and on, on alone; 24 + 54, 24 + 36
    "M1 - PP BK, M2 - PP BK, 88, 0",
    "- - PP BK, M2 - PP BK, 64, 0",
    "M1 T8 PP BK, M4 T8 PP BK, 70, 0",
    "M2 - PP BK, M9 - PP BK, 82, 0",
    // tooling: another set, from none, to none
    "M1 T8 PP BK, M1 T10 PP BK, 30, 0",
    "M1 - PP BK, M1 T10 PP BK, 30, 0",
    "M1 T8 PP BK, M1 - PP BK, 30, 0",
    // resin: 30 hotter and 30 cooler are the same, PP 230, POM 200, PA 280; one unknown; 3 x 120 g
    "M1 - POM BK, M1 - PP BK, 30, 360",
    "M1 - PP BK, M1 - POM BK, 30, 360",
    "M1 - PP BK, M1 - PA BK, 30, 360",
    "M1 - PA BK, M1 - PP BK, 50, 360",
    "M1 - XX BK, M1 - PA BK, 30, 360",
    "M1 - - BK, M1 - PA BK, 0, 0",
    "M1 - PA BK, M1 - - BK, 0, 0",
    // colour: darker, lighter, unknown, barrel unknown; 1.5 x 120 g, 4 x 120 g
    "M1 - PP WH, M1 - PP BK, 20, 180",
    "M1 - PP BK, M1 - PP WH, 85, 480",
    "M1 - PP BK, M1 - PP RD, 63, 480",
    "M1 - PP GN, M1 - PP BK, 50, 480",
    "M1 - PP -, M1 - PP BK, 0, 0",
    "M1 - PP BK, M1 - PP -, 0, 0",
    // both on the barrel: the larger minutes and the larger purge
    "M1 - PA WH, M1 - PP BK, 50, 360",
    "M1 - PP BK, M1 - PA WH, 85, 480",
  })
  void theTableSaysMinutesAndPurge(String from, String to, int minutes, int purgeG) {
    Problem problem = Edited.set(WeekProblem.problem(), "floor.recordedChanges", List.of());
    DueChange due = change(problem, from, to, false);
    assertThat(due.minutes()).isEqualTo(minutes);
    assertThat(due.purgeG()).isEqualTo(purgeG);
  }

  @ParameterizedTest
  @CsvSource({
    "M1 - PP BK, M2 - PA WH, 88", // 78 beside 75
    "M1 T8 PP BK, M1 T10 PP WH, 85", // 20 beside 75
  })
  void theLargerCountsWhenColourWorkGoesOnBeside(String from, String to, int minutes) {
    Problem beside = Edited.set(WeekProblem.problem(), "plant.changes.colourWorkBeside", true);
    assertThat(change(beside, from, to, false).minutes()).isEqualTo(minutes);
  }

  @Test
  void kindsAreInTheOrderOfTheEnum() {
    Problem problem = WeekProblem.problem();
    assertThat(change(problem, "M1 - PP BK", "M2 - PA WH", true).kinds())
        .containsExactly(MOLD, RESIN, COLOUR, FOOD_CLEARANCE);
    assertThat(change("M1 T8 PP BK", "M1 - PP BK").kinds()).containsExactly(TOOLING);
  }

  @Test
  void aClearanceAloneHasNoFirstArticleAndExchangesNothing() {
    DueChange due = change(WeekProblem.problem(), "M1 - PP BK", "M1 - PP BK", true);
    List<ChangeKind> clearance = List.of(FOOD_CLEARANCE);
    assertThat(due).isEqualTo(new DueChange(clearance, 30, 0));
    assertThat(due.exchanges()).isFalse();
  }

  @Test
  void aRecordedChangeWithoutPurgeKeepsThatOfTheTable() {
    // The row of P1 from M4 to POM comes first: 15 min; POM to it is 3 barrels, black to black
    // none.
    assertThat(change("M4 - PP BK", "M4 - POM BK"))
        .isEqualTo(new DueChange(List.of(RESIN), 15, 360));
    // Any other change to POM: the last row.
    assertThat(change("M1 - PP BK", "M1 - POM BK").minutes()).isEqualTo(99);
  }

  @Test
  void aClearanceComesOnTopOfARecordedChangeAndIsNotReplacedByIt() {
    assertThat(change(WeekProblem.problem(), "M4 - PP BK", "M4 - POM BK", true).minutes())
        .isEqualTo(45);
    assertThat(change(WeekProblem.problem(), "M4 - POM BK", "M4 - POM BK", true).minutes())
        .isEqualTo(30);
  }

  @Test
  void lightnessCountsAsItIsWritten() {
    // 45 x 60 / 100 = 27; in binary fractions it comes to a little more, which would be 28.
    assertThat(45 * (64.4 - 4.4) / 100).isGreaterThan(27);
    Problem problem =
        Edited.edit(
            WeekProblem.problem(),
            "materials.colours",
            Edited.with(0, new Colour("PP", "BK", "", "", OptionalDouble.of(4.4))));
    problem =
        Edited.edit(
            problem,
            "materials.colours",
            Edited.with(0, new Colour("PP", "WH", "", "", OptionalDouble.of(64.4))));
    assertThat(change(problem, "M1 - PP BK", "M1 - PP WH", false).minutes())
        .isEqualTo(30 + 27 + 10);
  }

  @Test
  void aDismountIsItsShareRoundedUp() {
    Problem problem = WeekProblem.problem();
    ChangeReckoner reckoner = new ChangeReckoner(problem, new Ids(problem));
    assertThat(reckoner.dismountMin("M3")).isEqualTo(18);
    Problem odd = Edited.set(problem, "plant.changes.dismountPct", 41);
    assertThat(new ChangeReckoner(odd, new Ids(odd)).dismountMin("M3")).isEqualTo(19);
  }
}
