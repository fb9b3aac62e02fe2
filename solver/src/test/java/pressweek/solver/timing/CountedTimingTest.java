package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.carryOut;
import static pressweek.solver.timing.Arranged.sideBySide;
import static pressweek.solver.timing.Arranged.things;
import static pressweek.solver.timing.Arranged.work;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;

/**
 * Two runs of 100 minutes side by side, each after 46 minutes of change: both run from 00:46 to
 * 02:26 when nothing is scarce.
 */
final class CountedTimingTest {
  private static final int FIRST_END = START + MOUNT + 100;

  @Test
  void withoutCountedThingsBothRunAtOnce() {
    assertThat(second(Arrangements.NONE).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void twoDevicesDoForTwoMolds() {
    Run second = second(things(ovens(2), oven("M1"), oven("M2")));
    assertThat(second.startMin()).isEqualTo(START + MOUNT);
    assertThat(second.waits()).isEmpty();
  }

  @Test
  void oneDeviceHoldsTheSecondMoldUntilTheFirstHasRun() {
    Run second = second(things(ovens(1), oven("M1"), oven("M2")));
    assertThat(second.change().startMin()).isEqualTo(FIRST_END);
    assertThat(second.waits()).containsExactly(new Wait(Cause.TOOLING, "oven", START, FIRST_END));
  }

  @Test
  void aMoldThatNeedsNoDeviceIsNotHeldUp() {
    assertThat(second(things(ovens(1), oven("M1"))).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void twoSetsDoForTwoPresses() {
    assertThat(sideBySide(sets(2)).runs().get(1).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void oneSetIsTakenOutWhenTheRunOfItHasEnded() {
    Run second = sideBySide(sets(1)).runs().get(1);
    assertThat(second.change().startMin()).isEqualTo(FIRST_END);
    assertThat(second.waits()).containsExactly(new Wait(Cause.TOOLING, "T1", START, FIRST_END));
  }

  /** P2 takes the set at 02:26 and runs to 04:52; P1 then fits it anew, 20 + 10 minutes. */
  @Test
  void aPressThatLostItsSetFitsItAnew() {
    Run third = carryOut(sets(1), new int[] {0, 2}, new int[] {1}).runs().get(1);
    assertThat(third.change().kinds()).containsExactly(ChangeKind.TOOLING);
    assertThat(third.change().startMin()).isEqualTo(FIRST_END + MOUNT + 100);
    assertThat(third.startMin()).isEqualTo(FIRST_END + MOUNT + 100 + 30);
  }

  @Test
  void anUncountedSetIsAlwaysThere() {
    Problem other = sets(1).with(things(List.of(new CountedThing("T2", 1))));
    assertThat(sideBySide(other).runs().get(1).startMin()).isEqualTo(START + MOUNT);
  }

  private static Problem sets(int count) {
    return new SmallPlant()
        .job(work("1").on("P1", "M1", "T1", 100))
        .job(work("2").on("P2", "M2", "T1", 100))
        .job(work("3").earliest(START + 200).on("P1", "M1", "T1", 100))
        .build()
        .with(things(List.of(new CountedThing("T1", count))));
  }

  private static Run second(Arrangements arrangements) {
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M2", 100))
            .build()
            .with(arrangements);
    return sideBySide(problem).runs().get(1);
  }

  private static List<CountedThing> ovens(int count) {
    return List.of(new CountedThing("oven", count));
  }

  private static DeviceNeed oven(String mold) {
    return new DeviceNeed(mold, "oven");
  }
}
