package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pressweek.data.molding.MoldFit.Sides;

class MoldFitTest {
  private static Sides sides(double first, double second) {
    return new Sides(OptionalDouble.of(first), OptionalDouble.of(second));
  }

  @Test
  void moldGoesBetweenTheTieBarsEitherWayRound() {
    assertThat(MoldFit.betweenTieBars(sides(400, 300), sides(400, 300))).isTrue();
    assertThat(MoldFit.betweenTieBars(sides(300, 400), sides(400, 300))).isTrue();
    assertThat(MoldFit.betweenTieBars(sides(400.5, 300), sides(400, 300))).isFalse();
    assertThat(MoldFit.betweenTieBars(sides(350, 350), sides(400, 300))).isFalse();
  }

  @Test
  void unknownSidesAreNotChecked() {
    Sides unknown = new Sides(OptionalDouble.empty(), OptionalDouble.of(1));
    assertThat(MoldFit.betweenTieBars(unknown, sides(1, 1))).isTrue();
    assertThat(MoldFit.betweenTieBars(sides(9, 9), unknown)).isTrue();
    assertThat(MoldFit.height(OptionalDouble.empty(), sides(1, 2))).isTrue();
  }

  @Test
  void heightLiesBetweenTheLeastAndTheMost() {
    Sides press = sides(200, 400);
    assertThat(MoldFit.height(OptionalDouble.of(200), press)).isTrue();
    assertThat(MoldFit.height(OptionalDouble.of(400), press)).isTrue();
    assertThat(MoldFit.height(OptionalDouble.of(199), press)).isFalse();
    assertThat(MoldFit.height(OptionalDouble.of(401), press)).isFalse();
    Sides mostOnly = new Sides(OptionalDouble.empty(), OptionalDouble.of(400));
    assertThat(MoldFit.height(OptionalDouble.of(1), mostOnly)).isTrue();
    assertThat(MoldFit.height(OptionalDouble.of(401), mostOnly)).isFalse();
  }

  /** Common practice, no source. */
  @Test
  void openingHoldsHeadsStudAndHand() {
    assertThat(MoldFit.openingMm(120, 40, 75)).isEqualTo(235);
  }
}
