package pressweek.solver.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Bound;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Link;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Opening;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;
import pressweek.data.problem.Terms;
import pressweek.solver.Plans;

/**
 * Bounds worked out by hand on the small plant: a cut-off missed costs 100.00, a day late 60.00, an
 * hour of change 45.00, a line left out 400.00 and its lateness.
 */
final class LowerBoundTest {
  private static final long STEP = 10_000_000;
  private static final long DAY_LATE = 6_000_000;

  /** Of a charge, what rounding may take off. */
  private static final long ROUNDING = 100;

  /** No charge for changes and purge, so that lateness stands alone. */
  private static SmallPlant free() {
    return new SmallPlant()
        .rates(new Rates("EUR", true, STEP, DAY_LATE, 0, 0, 2_500_000, 40_000_000));
  }

  private static long amount(Problem problem) {
    Optional<Bound> bound = LowerBound.of(problem);
    bound.ifPresent(
        b ->
            assertThat(b.parts().stream().mapToLong(Bound.Part::amount).sum())
                .isEqualTo(b.amount()));
    long amount = bound.map(Bound::amount).orElse(0L);
    assertThat(amount).isLessThanOrEqualTo(Plans.of(problem, 50, 1).figures().avoidableCost());
    return amount;
  }

  @Test
  void nothingIsProvedOfAWeekWithoutTrouble() {
    assertThat(LowerBound.of(new SmallPlant().build())).isEmpty();
    Problem easy = free().job(job("10").on("P1", "M1", 600)).build();
    assertThat(LowerBound.of(easy)).isEmpty();
  }

  @Test
  void aLineThatIsLateEvenAloneCostsThat() {
    // ready at 16:00 on the better press, due at 15:00: one cut-off and an hour
    SmallPlant plant =
        free().job(job("10").due(START + 900).on("P1", "M1", 960).on("P2", "M1", 1_200));
    assertThat(amount(plant.build())).isEqualTo(STEP + DAY_LATE / 24);
  }

  @Test
  void timeAfterMoldingAndEarliestCount() {
    SmallPlant plant =
        free().job(job("10").earliest(START + 60).after(120).due(START + 180).on("P1", "M1", 60));
    // from 01:00 to 02:00, ready at 04:00, an hour late and no cut-off
    assertThat(amount(plant.build())).isEqualTo(DAY_LATE / 24);
  }

  @Test
  void aLineThatNoPlanCanPlaceCostsItsCharge() {
    SmallPlant plant =
        free().days(1).job(job("10").earliest(START + DAY).due(START + 960).on("P1", "M1", 60));
    // 400.00 and 8 hours late at the horizon's end, no cut-off between 16:00 and midnight
    assertThat(amount(plant.build())).isEqualTo(40_000_000 + DAY_LATE / 3);
  }

  @Test
  void componentsHoldUpALine() {
    Take take = new Take("I1", 100, 0, 0);
    Lot few = new Lot("I1", "L1", "B1", 40, START - DAY, OptionalInt.empty(), LotStatus.USABLE, "");
    Receipt more = new Receipt("I1", 60, START + 510, START + 570);
    SmallPlant plant =
        free()
            .stock(List.of(few), List.of(more))
            .job(job("10").takes(take).due(START + 600).on("P1", "M1", 60));
    // usable at 09:30, at the press by 10:00, over at 11:00
    assertThat(amount(plant.build())).isEqualTo(DAY_LATE / 24);
    SmallPlant never =
        free()
            .stock(List.of(few), List.of())
            .job(job("10").takes(take).due(START + 7 * DAY).on("P1", "M1", 60));
    assertThat(amount(never.build())).isEqualTo(40_000_000);
  }

  @Test
  void aLineThatBuildsOnAnotherWaitsForIt() {
    Problem problem =
        free()
            .job(job("10").on("P1", "M1", 120))
            .job(job("11").due(START + 240).on("P2", "M2", 60))
            .build();
    assertThat(LowerBound.of(problem)).isEmpty();
    // 2 h for the first, 2 h of rest, 1 h: an hour late
    Problem linked = problem.with(arranged(new Link("11/1", "10/1", 120), 0));
    assertThat(amount(linked)).isEqualTo(DAY_LATE / 24);
  }

  private static Arrangements arranged(Link link, long closeHour) {
    return new Arrangements(
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        link.restMin() < 0 ? List.of() : List.of(link),
        List.of(),
        Opening.NONE,
        new Arrangements.Settled(Drying.NONE, new Terms(0, 0, closeHour, 0, List.of())));
  }

  @Test
  void linesOfOneMoldComeOneAfterTheOther() {
    SmallPlant plant = free();
    for (String order : List.of("10", "11", "12")) {
      plant.job(job(order).due(START + 240).on("P1", "M1", 240).on("P2", "M1", 240));
    }
    // over at 04:00, 08:00, 12:00 at the earliest: 0, 4 and 8 hours late
    assertThat(amount(plant.build())).isBetween(DAY_LATE / 2 - ROUNDING, DAY_LATE / 2);
  }

  @Test
  void leavingOutALineMayBeCheaper() {
    SmallPlant plant =
        new SmallPlant().rates(new Rates("EUR", true, STEP, DAY_LATE, 0, 0, 0, 0)).days(1);
    plant.job(job("10").due(START + 1_000).on("P1", "M1", 1_000));
    plant.job(job("11").due(START + DAY).on("P1", "M1", 1_000));
    assertThat(LowerBound.of(plant.build())).isEmpty();
  }

  @Test
  void linesOfAPressShareItsHours() {
    SmallPlant plant =
        free()
            .job(job("10").due(START + 240).on("P1", "M1", 240))
            .job(job("11").due(START + 240).weight(200).on("P1", "M2", 240));
    // one of them is 4 hours late; which of them is not known, so the lighter weight counts
    assertThat(amount(plant.build())).isBetween(DAY_LATE / 6 - ROUNDING, DAY_LATE / 6);
    plant.job(job("12").due(START + 240).on("P2", "M2", 60));
    assertThat(amount(plant.build())).isBetween(DAY_LATE / 6 - ROUNDING, DAY_LATE / 6);
  }

  @Test
  void aMoldThatStandsNowhereIsMounted() {
    SmallPlant plant =
        new SmallPlant().job(job("10").startup(5, 500, 5).on("P1", "M1", 60).on("P2", "M1", 60));
    // 36 min mount and 10 min first article at 45.00 an hour, 500 g at 2.00 a kilogram
    assertThat(amount(plant.build())).isEqualTo(3_450_000 + 100_000);
    plant.state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""));
    assertThat(LowerBound.of(plant.build())).isEmpty();
  }

  @Test
  void aRecordedChangeMayBeShorter() {
    SmallPlant plant = new SmallPlant().job(job("10").on("P1", "M1", 60));
    Setup any = new Setup("", "", "", "");
    plant.recorded(new RecordedChange("P2", any, any, 1, OptionalInt.empty()));
    assertThat(amount(plant.build())).isEqualTo(3_450_000);
    plant.recorded(
        new RecordedChange("P1", any, new Setup("M1", "", "", ""), 20, OptionalInt.empty()));
    assertThat(amount(plant.build())).isEqualTo(1_500_000);
  }

  @Test
  void everySetupIsComeToOnce() {
    SmallPlant plant =
        new SmallPlant()
            .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""))
            .job(job("10").on("P1", "M1", "T1", 60))
            .job(job("11").on("P1", "M1", "T2", 60));
    // twice 20 min tooling and 10 min first article
    assertThat(amount(plant.build())).isEqualTo(2 * 2_250_000);
  }

  @Test
  void aColourInNoBarrelIsPurgedIn() {
    SmallPlant plant =
        new SmallPlant()
            .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""))
            .job(job("10").in("PP", "WHT").on("P1", "M1", 60));
    // 30 min and 45 x 0.85 = 39 min lighter, 10 min first article come to less by another mount:
    // 46 min; four barrels of 200 g at 2.00 a kilogram
    assertThat(amount(plant.build())).isEqualTo(3_450_000 + 160_000);
    plant.job(job("11").in("PP", "WHT").on("P2", "M2", 60));
    // P2 may be empty: no purge is certain
    assertThat(amount(plant.build())).isEqualTo(2 * 3_450_000);
  }

  @Test
  void theLastRunEndsNoEarlierThanTheWorkAllows() {
    Problem problem =
        free().job(job("10").on("P1", "M1", 600)).job(job("11").on("P1", "M2", 600)).build();
    // 20 hours at 1.00
    Problem closed = problem.with(arranged(new Link("", "", -1), 100_000));
    assertThat(amount(closed)).isEqualTo(2_000_000);
  }

  @Test
  void overtimeIsCountedAsOpen() {
    SmallPlant plant =
        free()
            .shifts(
                SmallPlant.shift("day", "06:00", "14:00"),
                SmallPlant.shift("more", "14:00", "22:00"))
            .job(job("10").due(START + 1_320).on("P1", "M1", 900));
    Problem problem = plant.build();
    Problem overtime =
        problem.with(
            Arrangements.NONE.with(
                new Opening(List.of(new Opening.Overtime("more", 3_000_000)), List.of())));
    assertThat(LowerBound.of(overtime)).isEmpty();
  }
}
