package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.molding.Cycle.Hands;

/** The principle is published (pages on shuttle and rotary presses); the figures are ours. */
class CycleTest {
  private static final Hands HANDS = new Hands(6, 20);

  @Test
  void oneLowerHalfWaitsForTheHands() {
    assertThat(Cycle.wholeS(1, 28, HANDS, 2)).isEqualTo(54);
  }

  @Test
  void twoLowerHalvesOverlap() {
    assertThat(Cycle.wholeS(2, 28, HANDS, 2)).isEqualTo(30);
  }

  @Test
  void slowHandsSetThePace() {
    assertThat(Cycle.wholeS(2, 20, HANDS, 2)).isEqualTo(28);
    assertThat(Cycle.wholeS(2, 26, HANDS, 2)).isEqualTo(28);
  }

  @Test
  void ofThreeStationsTheSlowestSetsThePace() {
    assertThat(Cycle.wholeS(3, 18, HANDS, 2)).isEqualTo(22);
    assertThat(Cycle.wholeS(4, 28, HANDS, 2)).isEqualTo(30);
    assertThat(Cycle.stationsS(List.of(12.0, 15.5, 9.0, 6.0), 1.5)).isEqualTo(17);
  }

  @Test
  void screwRecoveryCountsOnlyWhenItIsLongerThanCooling() {
    assertThat(new Cycle.Strokes(2, 3, 18, 12, 5).moldS()).isEqualTo(28);
    assertThat(new Cycle.Strokes(2, 3, 18, 21, 5).moldS()).isEqualTo(31);
  }

  @Test
  void handsLoadPieceByPieceAndAMachineAllAtOnce() {
    assertThat(Hands.byPiece(6, 4, 5)).isEqualTo(HANDS);
    assertThat(Cycle.wholeS(1, 28, new Hands(0, 4), 0)).isEqualTo(32);
  }

  /** Own arithmetic: 40 s a cycle and 18 s of work are two presses. */
  @Test
  void oneOperatorTendsAsManyPressesAsHisWorkGoesIntoTheCycle() {
    assertThat(Cycle.pressesPerOperator(40, 18)).hasValue(2);
    assertThat(Cycle.pressesPerOperator(0.3, 0.1)).hasValue(3);
    assertThat(Cycle.pressesPerOperator(40, 41)).hasValue(0);
    assertThat(Cycle.pressesPerOperator(40, 0)).isEmpty();
  }

  /** 10 to 15 s a millimetre of wall are common practice, no source. */
  @Test
  void curingIsInProportionToTheWall() {
    assertThat(Cycle.cureS(6, 12).orElseThrow()).isCloseTo(72, within(1e-9));
    assertThat(Cycle.cureS(0, 12)).isEmpty();
    assertThat(Cycle.cureS(6, 0)).isEmpty();
  }
}
