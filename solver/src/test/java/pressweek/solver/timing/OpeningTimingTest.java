package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.carryOut;
import static pressweek.solver.timing.Arranged.sequences;
import static pressweek.solver.timing.Arranged.work;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;
import pressweek.solver.Planner;
import pressweek.solver.Plans;
import pressweek.solver.Watcher;

/** Overtime from 02:00 to 04:00 after a shift from 00:00, and nights without people from 22:00. */
final class OpeningTimingTest {
  /** 74 minutes after the change of 46 end with the shift; nothing is opened or charged. */
  @Test
  void whatEndsWithTheShiftNeedsNoOvertime() {
    Timetable done = carryOut(overtime(3_000_000, 74), new int[] {0}, new int[] {1});
    assertThat(done.runs().get(0).endMin()).isEqualTo(START + 120);
    assertThat(done.whole()).isEqualTo(PlantWide.NONE);
  }

  @Test
  void aMinuteMoreIsWorkedTheNextDayWhileTheShiftIsClosed() {
    Timetable done = carryOut(overtime(3_000_000, 75), new int[] {0}, new int[] {1});
    assertThat(done.runs().get(0).endMin()).isEqualTo(START + DAY + 1);
  }

  /** Two hours at 30.00; P2, which does not work the shift, goes on the next day all the same. */
  @Test
  void anOpenedShiftIsWorkedAndPaidWhole() {
    Problem problem = overtime(3_000_000, 75);
    WeekTables week = new WeekTables(problem);
    Sequences sequences = sequences(week, new int[] {0}, new int[] {1});
    sequences.open(1);
    Timetable done = Timetable.of(week, sequences);
    assertThat(done.runs().get(0).endMin()).isEqualTo(START + 121);
    assertThat(done.runs().get(1).endMin()).isEqualTo(START + DAY + 1);
    assertThat(done.whole().opened())
        .containsExactly(new PlantWide.Opened("extra", START + 120, START + 240));
    assertThat(done.whole().charges())
        .singleElement()
        .satisfies(
            charge -> {
              assertThat(charge.rule()).isEqualTo(Rule.OVERTIME);
              assertThat(charge.amount()).isEqualTo(6_000_000);
            });
  }

  /**
   * A run of 100 minutes due when overtime would end it, at 02:26, ends the next day at 00:26: 1320
   * minutes late, 55.00, with one cut-off missed, 100.00. Overtime at 77.50 an hour is as dear.
   */
  @Test
  void aShiftIsOpenedWhenThatIsCheaperThanToBeLate() {
    assertThat(opened(7_749_999)).hasSize(1);
    assertThat(opened(7_750_001)).isEmpty();
  }

  private static List<PlantWide.Opened> opened(long perHour) {
    return Plans.of(lateOrOpened(perHour), 60, 1).head().plantWide().opened();
  }

  private static Problem lateOrOpened(long perHour) {
    return overtimePlant()
        .job(work("1").due(START + 146).on("P1", "M1", 100))
        .build()
        .with(opening(perHour));
  }

  /** With too few steps to find it anew. */
  @Test
  void aSearchFromAPlanKeepsItsOpenedShift() {
    Problem problem = lateOrOpened(7_000_000);
    Plan good = Plans.of(problem, 60, 1);
    assertThat(good.head().plantWide().opened()).hasSize(1);
    Plan again = new Planner(problem).plan(Plans.head(1, 0), Optional.of(good), Watcher.NONE);
    assertThat(again.head().plantWide().opened()).isEqualTo(good.head().plantWide().opened());
    assertThat(again.runs()).isEqualTo(good.runs());
  }

  private static Problem overtime(long perHour, int minutes) {
    return overtimePlant()
        .job(work("1").on("P1", "M1", minutes))
        .job(work("2").on("P2", "M2", minutes))
        .build()
        .with(opening(perHour));
  }

  private static SmallPlant overtimePlant() {
    SmallPlant plant =
        new SmallPlant()
            .shifts(
                SmallPlant.shift("day", "00:00", "02:00"),
                SmallPlant.shift("extra", "02:00", "04:00"));
    return plant.calendar("days", "day").press(ClockChanges.on(SmallPlant.vertical("P2"), "days"));
  }

  private static pressweek.data.problem.Arrangements opening(long perHour) {
    Opening opening = new Opening(List.of(new Opening.Overtime("extra", perHour)), List.of());
    return Arranged.settled(opening, Drying.NONE, Terms.NONE);
  }

  /** From 06:46 there are 914 minutes to 22:00. */
  @Test
  void aRunWithoutHandLoadingGoesOnThroughTheNight() {
    assertThat(night(false, 914).runs().get(0).endMin()).isEqualTo(START + 1_320);
    assertThat(night(false, 915).runs().get(0).endMin()).isEqualTo(START + 1_321);
  }

  @Test
  void aRunWithHandLoadingPausesForTheNight() {
    assertThat(night(true, 914).runs().get(0).endMin()).isEqualTo(START + 1_320);
    assertThat(night(true, 915).runs().get(0).endMin()).isEqualTo(START + DAY + 361);
  }

  @Test
  void nothingStartsInTheNight() {
    assertThat(night(false, 915).runs().get(1).startMin()).isEqualTo(START + DAY + 360);
  }

  private static Timetable night(boolean handLoad, int minutes) {
    Opening opening = new Opening(List.of(), List.of("night"));
    Mold mold = ClockChanges.handLoaded(SmallPlant.mold("M1"), handLoad);
    Problem problem =
        new SmallPlant()
            .shifts(
                SmallPlant.shift("day", "06:00", "22:00"),
                SmallPlant.shift("night", "22:00", "06:00"))
            .mold(mold)
            .job(work("1").on("P1", "M1", minutes))
            .job(work("2").on("P1", "M1", 10))
            .build()
            .with(Arranged.settled(opening, Drying.NONE, Terms.NONE));
    Timetable done = carryOut(problem, new int[] {0, 1}, new int[] {});
    assertThat(done.whole().charges()).extracting(Charge::rule).isEmpty();
    assertThat(done.runs().get(0).startMin()).isEqualTo(START + 360 + MOUNT);
    return done;
  }
}
