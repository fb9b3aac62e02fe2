package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class WorkTimesTest {
  private static final double TENTH = 0.0005;

  /** P. Willmott, D. McCarthy: TPM, A Route to World-Class Performance, p. 127. */
  @Test
  void millingMachineOfWillmottAndMcCarthy() {
    double available = 910;
    double down = 127;
    double cycle = 3;
    double completed = 203;
    WorkTimes mill = new WorkTimes(available, 0, available - down, cycle * completed, 0);

    assertThat(mill.availability()).hasValueCloseTo(0.860, within(TENTH));
    assertThat(mill.effectiveness()).hasValueCloseTo(0.778, within(TENTH));
  }

  /** Public OEE calculator page, waycalculator: 480, 420, 1, 400 and 380 give 79.2 %. */
  @Test
  void publicCalculatorPage() {
    WorkTimes shift = new WorkTimes(480, 0, 420, 1 * 400, 1 * 380);

    assertThat(shift.availability()).hasValueCloseTo(0.875, within(TENTH));
    assertThat(shift.effectiveness()).hasValueCloseTo(0.952, within(TENTH));
    assertThat(shift.quality()).hasValueCloseTo(0.950, within(TENTH));
    assertThat(shift.oee()).hasValueCloseTo(0.792, within(TENTH));
    assertThat(shift.oee()).hasValueCloseTo(380.0 / 480, within(1e-12));
  }

  /** ISO 22400-2: OEE is planned run time per item x good quantity / planned busy time. */
  @Test
  void theThreeFactorsCollapse() {
    WorkTimes press = new WorkTimes(960, 75, 640, 510, 480);

    assertThat(press.oee()).hasValueCloseTo(480.0 / 960, within(1e-12));
    assertThat(press.nee()).hasValueCloseTo(715.0 / 960 * 480 / 640, within(1e-12));
    assertThat(press.setupRatio()).hasValueCloseTo(75.0 / 715, within(1e-12));
    assertThat(press.allocation()).hasValueCloseTo(715.0 / 960, within(1e-12));
  }

  @Test
  void severalPressesAddUp() {
    WorkTimes both =
        WorkTimes.sum(List.of(new WorkTimes(100, 10, 50, 40, 30), new WorkTimes(300, 0, 0, 0, 0)));

    assertThat(both).isEqualTo(new WorkTimes(400, 10, 50, 40, 30));
    assertThat(both.availability()).hasValueCloseTo(0.125, within(1e-12));
  }

  @Test
  void nothingHasNoRatio() {
    WorkTimes idle = WorkTimes.sum(List.of());

    assertThat(idle.availability()).isEmpty();
    assertThat(idle.oee()).isEmpty();
    assertThat(idle.setupRatio()).isEmpty();
  }
}
