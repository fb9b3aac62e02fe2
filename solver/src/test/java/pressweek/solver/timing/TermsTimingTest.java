package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.carryOut;
import static pressweek.solver.timing.Arranged.sequences;
import static pressweek.solver.timing.Arranged.work;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Charge;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;

/** Short campaigns, the close, moved runs, and jobs held back on purpose. */
final class TermsTimingTest {
  private static final Terms CAMPAIGNS = new Terms(120, 6_000_000, 0, 0, List.of());

  @Test
  void withoutTermsNothingIsCharged() {
    assertThat(campaign(Terms.NONE, 100, 100).whole()).isEqualTo(PlantWide.NONE);
  }

  @Test
  void aCampaignAsLongAsThePlantWantsItIsNotCharged() {
    assertThat(campaign(CAMPAIGNS, 120, 10).whole().charges()).isEmpty();
  }

  /** A minute of an hour at 60.00. M2, which stays on, is not charged however short it ran. */
  @Test
  void aMinuteShortIsCharged() {
    assertThat(amounts(campaign(CAMPAIGNS, 119, 10), Rule.SHORT_CAMPAIGN))
        .containsExactly(100_000L);
  }

  @Test
  void runsOfOneMoldAreOneCampaign() {
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 60))
            .job(work("2").on("P1", "M1", 60))
            .job(work("3").on("P1", "M2", 10))
            .build()
            .with(Arranged.terms(CAMPAIGNS));
    Timetable done = carryOut(problem, new int[] {0, 1, 2}, new int[] {});
    assertThat(done.whole().charges()).isEmpty();
  }

  private static Timetable campaign(Terms terms, int first, int second) {
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", first))
            .job(work("2").on("P1", "M2", second))
            .build()
            .with(Arranged.terms(terms));
    return carryOut(problem, new int[] {0, 1}, new int[] {});
  }

  /** 146 minutes at 6.00 an hour; the shorter run beside it counts nothing. */
  @Test
  void theCloseIsChargedToTheEndOfTheLastRun() {
    Terms terms = new Terms(0, 0, 600_000, 0, List.of());
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M2", 50))
            .build()
            .with(Arranged.terms(terms));
    Timetable both = Arranged.sideBySide(problem);
    assertThat(amounts(both, Rule.CLOSE)).containsExactly(1_460_000L);
    Timetable none = carryOut(problem, new int[] {}, new int[] {});
    assertThat(none.whole().charges()).isEmpty();
  }

  /** The run starts at 00:46; a promised run may shift by 60 minutes. */
  @Test
  void aRunIsMovedWhenItStartsMoreThanTheToleranceFromWhereItWas() {
    assertThat(moved("P1", MOUNT)).isEmpty();
    assertThat(moved("P1", MOUNT - 60)).isEmpty();
    assertThat(moved("P1", MOUNT + 60)).isEmpty();
    assertThat(moved("P1", MOUNT - 61)).containsExactly(1_500_000L);
    assertThat(moved("P1", MOUNT + 61)).containsExactly(1_500_000L);
  }

  @Test
  void aRunOnAnotherPressIsMoved() {
    assertThat(moved("P2", MOUNT)).containsExactly(1_500_000L);
  }

  private static List<Long> moved(String press, int start) {
    Terms.Place place = new Terms.Place("1/1", press, START + start);
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M2", 100))
            .build()
            .with(Arranged.terms(new Terms(0, 0, 0, 1_500_000, List.of(place))));
    List<Run> runs = Arranged.sideBySide(problem).runs();
    assertThat(runs.get(1).charges()).extracting(Charge::rule).doesNotContain(Rule.MOVED);
    return runs.get(0).charges().stream()
        .filter(charge -> charge.rule() == Rule.MOVED)
        .map(Charge::amount)
        .toList();
  }

  /** The first may begin at 05:00, and the second, free at 00:00, is held back until it has. */
  @Test
  void aJobHeldBackStartsWhenTheOtherHasBegun() {
    Timetable done = held(1, 0);
    assertThat(done.runs().get(1).change().startMin()).isEqualTo(START + 300);
    assertThat(done.runs().get(1).waits())
        .containsExactly(new Wait(Cause.CHOICE, "1/1", START, START + 300));
    assertThat(done.whole().held()).containsExactly(new PlantWide.Held("2/1", "1/1"));
  }

  @Test
  void aJobHeldBackBehindOneThatHasBegunDoesNotWait() {
    Timetable done = held(0, 1);
    assertThat(done.runs().get(0).change().startMin()).isEqualTo(START + 300);
    assertThat(done.runs().get(0).waits()).extracting(Wait::cause).containsExactly(Cause.EARLIEST);
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void twoJobsHeldBackBehindEachOtherAreBothPlanned() {
    Problem problem = early();
    WeekTables week = new WeekTables(problem);
    Sequences sequences = sequences(week, new int[] {0}, new int[] {1});
    sequences.holdBehind(0, 1);
    sequences.holdBehind(1, 0);
    assertThat(Timetable.of(week, sequences).runs()).hasSize(2);
  }

  /** The run may begin an hour before it did, at 04:00; its change of 46 minutes at 03:14. */
  @Test
  void aJobThatKeepsItsTimeDoesNotRunSooner() {
    Timetable done = kept("P1", 300);
    assertThat(done.runs().get(0).startMin()).isEqualTo(START + 240);
    assertThat(done.runs().get(0).waits())
        .containsExactly(new Wait(Cause.CHOICE, "", START, START + 240 - MOUNT));
    assertThat(done.runs().get(0).charges()).extracting(Charge::rule).doesNotContain(Rule.MOVED);
    assertThat(done.whole().held()).containsExactly(new PlantWide.Held("1/1", "1/1"));
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void aTimeIsKeptFromTheToleranceOn() {
    assertThat(kept("P1", MOUNT + 60).runs().get(0).startMin()).isEqualTo(START + MOUNT);
    assertThat(kept("P1", MOUNT + 61).runs().get(0).startMin()).isEqualTo(START + MOUNT + 1);
    assertThat(kept("P1", MOUNT - 30).runs().get(0).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void aTimeIsKeptOnItsPressOnly() {
    assertThat(kept("P2", 300).runs().get(0).startMin()).isEqualTo(START + MOUNT);
  }

  private static Timetable kept(String press, int start) {
    Terms.Place place = new Terms.Place("1/1", press, START + start);
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M2", 100))
            .build()
            .with(Arranged.terms(new Terms(0, 0, 0, 1_500_000, List.of(place))));
    WeekTables week = new WeekTables(problem);
    Sequences sequences = sequences(week, new int[] {0}, new int[] {1});
    sequences.keepTime(0);
    return Timetable.of(week, sequences);
  }

  private static Timetable held(int job, int behind) {
    WeekTables week = new WeekTables(early());
    Sequences sequences = sequences(week, new int[] {0}, new int[] {1});
    sequences.holdBehind(job, behind);
    return Timetable.of(week, sequences);
  }

  private static Problem early() {
    return new SmallPlant()
        .job(work("1").earliest(START + 300).on("P1", "M1", 100))
        .job(work("2").on("P2", "M2", 100))
        .build();
  }

  private static List<Long> amounts(Timetable done, Rule rule) {
    return done.whole().charges().stream()
        .filter(charge -> charge.rule() == rule)
        .map(Charge::amount)
        .toList();
  }
}
