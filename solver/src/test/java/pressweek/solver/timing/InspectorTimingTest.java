package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.sideBySide;
import static pressweek.solver.timing.Arranged.work;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;

/** Two changes from 00:00 to 00:46, whose first articles are looked at from 00:36 on. */
final class InspectorTimingTest {
  @Test
  void whereNoShiftSaysHowManyNobodyWaits() {
    assertThat(second(plant(OptionalInt.empty())).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void twoInspectorsDoTwoChecksAtOnce() {
    Run second = second(plant(OptionalInt.of(2)));
    assertThat(second.startMin()).isEqualTo(START + MOUNT);
    assertThat(second.waits()).isEmpty();
  }

  /** The second check may not begin before 00:46, so its change begins 10 minutes later. */
  @Test
  void oneInspectorDoesOneAfterTheOther() {
    Run second = second(plant(OptionalInt.of(1)));
    assertThat(second.change().startMin()).isEqualTo(START + 10);
    assertThat(second.waits()).containsExactly(new Wait(Cause.INSPECTOR, "", START, START + 10));
  }

  @Test
  void aRunThatExchangesNothingIsNotLookedAt() {
    SmallPlant plant = plant(OptionalInt.of(1));
    plant.state(new PressState("P2", new Setup("M2", "", "PP", "BLK"), false, ""));
    assertThat(second(plant).startMin()).isEqualTo(START);
  }

  private static Run second(SmallPlant plant) {
    plant.job(work("1").on("P1", "M1", 100)).job(work("2").on("P2", "M2", 100));
    return sideBySide(plant.build()).runs().get(1);
  }

  private static SmallPlant plant(OptionalInt inspectors) {
    Shift all = SmallPlant.shift("all", "00:00", "00:00");
    return new SmallPlant()
        .shifts(
            new Shift(
                all.name(), all.days(), all.from(), all.to(), List.of(), 2, 4_000, inspectors));
  }
}
