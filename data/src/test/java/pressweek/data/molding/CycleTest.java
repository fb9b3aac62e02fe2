package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.data.molding.Cycle.Hands;

/** The principle is published (pages on shuttle and rotary presses); the figures are ours. */
class CycleTest {
  private static final Hands HANDS = new Hands(6, 20);

  @Test
  void oneLowerHalfWaitsForTheHands() {
    assertThat(Cycle.oneLowerHalfS(28, HANDS)).isEqualTo(54);
  }

  @Test
  void twoLowerHalvesOverlap() {
    assertThat(Cycle.severalLowerHalvesS(28, HANDS, 2)).isEqualTo(30);
  }

  @Test
  void slowHandsSetThePace() {
    assertThat(Cycle.severalLowerHalvesS(20, HANDS, 2)).isEqualTo(28);
    assertThat(Cycle.severalLowerHalvesS(26, HANDS, 2)).isEqualTo(28);
  }
}
