package pressweek.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;
import pressweek.data.problem.Unplaced;
import pressweek.solver.Plans;
import pressweek.solver.RandomPlant;
import pressweek.solver.timing.WeekTables;

/** Explanations of lines that are on time, late, unplaced, running or out before planning. */
final class WhyTest {
  private static final Settings FEW = new Settings(0, 20, 1);

  private static Plan planned(Problem problem) {
    return Plans.of(problem, 30, 1);
  }

  private static SmallPlant two() {
    return new SmallPlant()
        .job(job("1").due(START + DAY).on("P1", "M1", 100).on("P2", "M1", 120))
        .job(job("2").due(START + DAY).on("P1", "M2", 100));
  }

  @Test
  void aLineOnTimeSaysWhatItCostsAndWhereElseItCouldGo() {
    Plan plan = planned(two().build());
    Explanation why = new Why(plan, FEW).of("1/1");
    assertThat(why.lateMin()).isZero();
    assertThat(why.cost())
        .isEqualTo(why.charges().stream().mapToLong(Charge::amount).sum())
        .isPositive();
    assertThat(why.cures()).isEqualTo(Cures.NONE);
    assertThat(why.elsewhere()).isNotEmpty().hasSizeLessThanOrEqualTo(3);
    assertThat(why.elsewhere())
        .isSortedAccordingTo(java.util.Comparator.comparingLong(Placement::costsMore));
  }

  @Test
  void aPlaceIsPricedByTheDifferenceOfThePlans() {
    Problem problem = two().build();
    Plan plan = planned(problem);
    Placement place = new Why(plan, FEW).of("1/1").elsewhere().get(0);
    Plan there =
        Replay.with(
            plan, new Replay.Spot("1/1", place.press(), place.spot()), new WeekTables(problem));
    assertThat(place.costsMore())
        .isEqualTo(there.figures().avoidableCost() - plan.figures().avoidableCost());
    assertThat(there.runs())
        .anySatisfy(
            run -> {
              assertThat(run.job()).isEqualTo("1/1");
              assertThat(run.press()).isEqualTo(place.press());
              assertThat(run.startMin()).isEqualTo(place.startMin());
            });
  }

  /** Of plans made without a search, which hold nothing back on purpose. */
  @Test
  void aPlanCarriedOutAnewIsThePlan() {
    for (long seed = 1; seed <= 10; seed++) {
      Problem problem = RandomPlant.of(seed, 20, 4).plain().build();
      Plan plan = Plans.of(problem, 0, seed);
      assertThat(Replay.of(problem, plan).figures()).isEqualTo(plan.figures());
    }
  }

  @Test
  void whatIsRunningHasNoOtherPlace() {
    Plan plan =
        planned(
            two()
                .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, "1/1"))
                .build());
    assertThat(new Why(plan, FEW).of("1/1").elsewhere()).isEmpty();
  }

  @Test
  void anUnplacedLineSaysItsReasonItsPriceAndItsCure() {
    Plan plan =
        planned(
            new SmallPlant()
                .stock(List.of(), List.of())
                .job(job("1").takes(new Take("I1", 100, 0, 0)).on("P1", "M1", 100))
                .build());
    Explanation why = new Why(plan, FEW).of("1/1");
    assertThat(why.run()).isEmpty();
    assertThat(why.unplaced()).map(Unplaced::lacks).contains(java.util.Optional.of("I1"));
    assertThat(why.charges()).extracting(Charge::rule).containsExactly(Rule.UNPLACED);
    assertThat(why.chain()).isEmpty();
    assertThat(why.cures().helping())
        .singleElement()
        .satisfies(c -> assertThat(c.what()).isEqualTo("100 pcs more of I1 in the house at once"))
        .satisfies(c -> assertThat(c.placed()).isTrue())
        .satisfies(c -> assertThat(c.costsMore()).isNegative());
  }

  @Test
  void anUnplacedLineGetsAPlaceWithItsPressBack() {
    Plan plan =
        planned(
            new SmallPlant()
                .away(new Downtime(Downtime.Kind.PRESS, "P1", START, START + 7 * DAY, "gone"))
                .job(job("1").on("P1", "M1", 100))
                .build());
    assertThat(plan.runs()).isEmpty();
    assertThat(new Why(plan, FEW).of("1/1").cures().helping())
        .extracting(Cure::what)
        .contains("press P1 back at once");
  }

  @Test
  void ofALineThatFellOutBeforeOnlyTheReasonIsKnown() {
    Plan plan =
        planned(two().unplaced(new Unplaced("3", "1", "X", 5, "on hold: x", "lift it")).build());
    Explanation why = new Why(plan, FEW).of("3/1");
    assertThat(why.job()).isEmpty();
    assertThat(why.charges()).isEmpty();
    assertThat(why.unplaced()).map(Unplaced::reason).contains("on hold: x");
    assertThat(why.cures()).isEqualTo(Cures.NONE);
  }

  @Test
  void whenNothingHelpsNoCureIsNamed() {
    Plan plan =
        planned(new SmallPlant().job(job("1").due(START - DAY).on("P1", "M1", 100)).build());
    Explanation why = new Why(plan, FEW).of("1/1");
    assertThat(why.lateMin()).isPositive();
    assertThat(why.cures().tried()).isPositive();
    assertThat(why.cures().helping()).isEmpty();
  }

  @Test
  void anOrderMeansAllOfItsLines() {
    Plan plan =
        planned(two().unplaced(new Unplaced("1", "2", "X", 5, "on hold: x", "lift it")).build());
    Why why = new Why(plan, FEW);
    assertThat(why.lines("1")).containsExactly("1/1", "1/2");
    assertThat(why.lines("1/2")).containsExactly("1/2");
    assertThat(why.lines("7")).isEmpty();
  }
}
