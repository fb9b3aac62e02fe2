package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.carryOut;
import static pressweek.solver.timing.Arranged.sideBySide;
import static pressweek.solver.timing.Arranged.work;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Crew;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Trial;

/** A job of 100 pieces is 25 shots of four cavities. A trial is from 01:40 to 03:20. */
final class ServiceAndTrialTimingTest {
  private static final int FIRST_END = START + MOUNT + 100;

  @Test
  void asManyShotsAsAreLeftNeedNoService() {
    Run second = twoRuns(50).runs().get(1);
    assertThat(second.change().kinds()).isEmpty();
    assertThat(second.startMin()).isEqualTo(FIRST_END);
  }

  /** Off by 02:26 + 24 = 02:50, serviced until 04:50, mounted and checked by 05:36. */
  @Test
  void oneShotMoreComesAfterAService() {
    Timetable done = twoRuns(49);
    Run second = done.runs().get(1);
    assertThat(done.dismounts())
        .singleElement()
        .satisfies(d -> assertThat(d.minutes()).isEqualTo(24));
    assertThat(second.change().startMin()).isEqualTo(FIRST_END + 24 + 120);
    assertThat(second.startMin()).isEqualTo(FIRST_END + 24 + 120 + MOUNT);
    assertThat(second.waits())
        .containsExactly(new Wait(Cause.SERVICE, "M1", FIRST_END + 24, FIRST_END + 144));
  }

  @Test
  void anotherMoldIsNotServicedForIt() {
    Run other = twoRuns(49).runs().get(2);
    assertThat(other.startMin()).isEqualTo(START + MOUNT);
  }

  private static Timetable twoRuns(int shotsLeft) {
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P1", "M1", 100))
            .job(work("3").on("P2", "M2", 100))
            .build()
            .with(Arranged.service(new MoldService("M1", shotsLeft, 1_000, 120)));
    return carryOut(problem, new int[] {0, 1}, new int[] {2});
  }

  @Test
  void aRunThatEndsWithTheTrialsBeginningIsNotTouched() {
    assertThat(onTrial(54, START).runs().get(0).endMin()).isEqualTo(START + 100);
  }

  @Test
  void aMinuteMoreIsWorkedAfterTheTrial() {
    assertThat(onTrial(55, START).runs().get(0).endMin()).isEqualTo(START + 201);
  }

  @Test
  void theTrialsMoldIsAwayForIt() {
    assertThat(onTrial(54, START).runs().get(1).startMin()).isEqualTo(START + MOUNT);
    Run late = onTrial(55, START).runs().get(1);
    assertThat(late.change().startMin()).isEqualTo(START + 200);
    assertThat(late.waits()).containsExactly(new Wait(Cause.MOLD_AWAY, "M2", START, START + 200));
  }

  /** The only setter is at the trial from 01:40: a change that begins at 00:54 is just done. */
  @Test
  void theTrialsSetterDoesNoChange() {
    assertThat(elsewhere(START + 54).change().startMin()).isEqualTo(START + 54);
    Run late = elsewhere(START + 55);
    assertThat(late.change().startMin()).isEqualTo(START + 200);
    assertThat(late.waits())
        .containsExactly(
            new Wait(Cause.EARLIEST, "", START, START + 55),
            new Wait(Cause.SETTER, "", START + 55, START + 200));
  }

  private static Timetable onTrial(int minutes, int earliest) {
    Problem problem =
        new SmallPlant()
            .job(work("1").earliest(earliest).on("P1", "M1", minutes))
            .job(work("2").earliest(earliest).on("P2", "M2", minutes))
            .build()
            .with(
                Arranged.trial(
                    new Trial(
                        "P1", "M2", START + 100, START + 200, 1, "trial", OptionalInt.empty())));
    return sideBySide(problem);
  }

  private static Run elsewhere(int earliest) {
    Problem problem =
        new SmallPlant()
            .shifts(SmallPlant.shift("all", "00:00", "00:00", 1))
            .crew(new Crew(true, false, 100, false, 30))
            .job(work("1").earliest(earliest).on("P2", "M1", 100))
            .build()
            .with(
                Arranged.trial(
                    new Trial(
                        "P1", "M2", START + 100, START + 200, 1, "trial", OptionalInt.empty())));
    return carryOut(problem, new int[] {}, new int[] {0}).runs().get(0);
  }
}
