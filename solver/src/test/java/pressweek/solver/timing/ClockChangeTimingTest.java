package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.sequences;
import static pressweek.solver.timing.ClockChanges.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Charge;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;
import pressweek.solver.Plans;
import pressweek.solver.audit.Audit;

/**
 * The nights on which the clocks of Berlin change. P1 works days from 06:00 to 22:00 and nights
 * without people, P2 days and a late shift until 04:00 that may be opened at 10.00 an hour. A run
 * from 06:46 has 914 minutes of the day; the night has 540 minutes in October and 420 in March, the
 * late shift 420 and 300.
 */
final class ClockChangeTimingTest {
  private static final int DAY_PART = 914;

  @Test
  void theNightInOctoberIsAnHourLonger() {
    Timetable done = carryOut("2026-10-24", DAY_PART + 540, DAY_PART + 420);
    assertThat(done.runs().get(0).endMin()).isEqualTo(at("2026-10-25T06:00"));
    assertThat(done.runs().get(1).endMin()).isEqualTo(at("2026-10-25T04:00"));
    assertThat(done.whole().charges()).extracting(Charge::amount).containsExactly(7_000_000L);
  }

  @Test
  void theNightInMarchIsAnHourShorter() {
    Timetable done = carryOut("2027-03-27", DAY_PART + 420, DAY_PART + 300);
    assertThat(done.runs().get(0).endMin()).isEqualTo(at("2027-03-28T06:00"));
    assertThat(done.runs().get(1).endMin()).isEqualTo(at("2027-03-28T04:00"));
    assertThat(done.whole().charges()).extracting(Charge::amount).containsExactly(5_000_000L);
  }

  @Test
  void aMinuteMoreIsWorkedInTheNextDay() {
    Timetable october = carryOut("2026-10-24", DAY_PART + 541, DAY_PART + 421);
    assertThat(october.runs().get(0).endMin()).isEqualTo(at("2026-10-25T06:01"));
    assertThat(october.runs().get(1).endMin()).isEqualTo(at("2026-10-25T06:01"));
    Timetable march = carryOut("2027-03-27", DAY_PART + 421, DAY_PART + 301);
    assertThat(march.runs().get(0).endMin()).isEqualTo(at("2027-03-28T06:01"));
    assertThat(march.runs().get(1).endMin()).isEqualTo(at("2027-03-28T06:01"));
  }

  @Test
  void theAuditAgreesOnBothWeeks() {
    for (String day : List.of("2026-10-24", "2027-03-27")) {
      Problem problem = problem(day, DAY_PART + 480, DAY_PART + 480);
      assertThat(Audit.check(problem, Plans.of(problem, 40, 1))).isEmpty();
    }
  }

  private static Timetable carryOut(String day, int first, int second) {
    WeekTables week = new WeekTables(problem(day, first, second));
    Sequences sequences = sequences(week, new int[] {0}, new int[] {1});
    sequences.open(1);
    Timetable done = Timetable.of(week, sequences);
    assertThat(done.runs().get(0).startMin()).isEqualTo(at(day + "T06:00") + MOUNT);
    return done;
  }

  private static Problem problem(String day, int first, int second) {
    int start = at(day + "T00:00");
    int due = start + 1_440;
    SmallPlant plant =
        new SmallPlant()
            .shifts(
                SmallPlant.shift("day", "06:00", "22:00"),
                SmallPlant.shift("night", "22:00", "06:00"),
                SmallPlant.shift("late", "22:00", "04:00"))
            .calendar("nights", "day", "night")
            .calendar("lates", "day", "late")
            .press(ClockChanges.on(SmallPlant.horizontal("P1"), "nights"))
            .press(ClockChanges.on(SmallPlant.vertical("P2"), "lates"))
            .mold(ClockChanges.handLoaded(SmallPlant.mold("M2"), true))
            .job(job("1").earliest(start).due(due).on("P1", "M1", first))
            .job(job("2").earliest(start).due(due).on("P2", "M2", second));
    Opening opening =
        new Opening(List.of(new Opening.Overtime("late", 1_000_000)), List.of("night"));
    return ClockChanges.from(plant.build(), start)
        .with(Arranged.settled(opening, Drying.NONE, Terms.NONE));
  }
}
