package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.molding.Cooling.Criterion;
import pressweek.data.molding.Cooling.Heat;
import pressweek.data.molding.Cooling.Section;
import pressweek.data.molding.Cooling.Shape;

class CoolingTest {
  private static final Section ROD = new Section(Shape.CYLINDER, 5.59);
  private static final Heat ROD_HEAT = new Heat(240, 60, 105);

  private static double seconds(Section section, Criterion criterion, double a, Heat heat) {
    return Cooling.of(section, criterion, a, heat).orElseThrow().seconds();
  }

  /**
   * Imperial College London, ME4 Polymer Processing, solution 5.1 (2008): a rod of 5.59 mm, 0.1
   * mm2/s, from 240 to 105 at a wall of 60 takes 24.6 s by a rounded exponent; 3 %.
   */
  @Test
  void rodOfThePublishedSolution() {
    assertThat(seconds(ROD, Criterion.CENTRE, 0.1, ROD_HEAT)).isCloseTo(24.6, withPercentage(3));
  }

  /** Own arithmetic from the same formula: 25.1 s for its centre, 13.8 s for its mean; 1 %. */
  @Test
  void criterionMakesTheDifference() {
    assertThat(seconds(ROD, Criterion.CENTRE, 0.1, ROD_HEAT)).isCloseTo(25.1, withPercentage(1));
    assertThat(seconds(ROD, Criterion.MEAN, 0.1, ROD_HEAT)).isCloseTo(13.8, withPercentage(1));
  }

  /** Constants follow from heat conduction (Carslaw and Jaeger): 23.14, 0.692, 1.602; 0.1 %. */
  @Test
  void constantsOfTheCylinder() {
    assertThat(Shape.CYLINDER.divisor()).isCloseTo(23.14, withPercentage(0.1));
    assertThat(Shape.CYLINDER.factor(Criterion.MEAN)).isCloseTo(0.692, withPercentage(0.1));
    assertThat(Shape.CYLINDER.factor(Criterion.CENTRE)).isCloseTo(1.602, withPercentage(0.1));
  }

  /**
   * Own arithmetic, the first checked against the series of 200 terms; diffusivities of Crawford,
   * Plastics Engineering, table 1.8, and lower "effective" ones; 1 %.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.09, 230, 40, 90, 11.40, 15.97",
    "3, 0.065, 230, 40, 90, 15.8, 22.1",
    "3, 0.17, 240, 60, 90, 8.5, 10.9",
    "3, 0.08, 240, 60, 90, 18.0, 23.2",
    "4, 0.101, 285, 80, 130, 19.3, 26.5",
    "5, 0.072, 205, 90, 120, 39.9, 55.8",
    "3, 0.147, 300, 90, 130, 9.0, 11.8"
  })
  void walls(
      double mm, double a, double melt, double mold, double eject, double mean, double centre) {
    Section wall = new Section(Shape.PLATE, mm);
    Heat heat = new Heat(melt, mold, eject);
    assertThat(seconds(wall, Criterion.MEAN, a, heat)).isCloseTo(mean, withPercentage(1));
    assertThat(seconds(wall, Criterion.CENTRE, a, heat)).isCloseTo(centre, withPercentage(1));
  }

  /** Own arithmetic: a solid knob as a cylinder of 20 mm in PP; 1 %. */
  @Test
  void solidKnobCoolsForMinutes() {
    Section knob = new Section(Shape.CYLINDER, 20);
    Heat heat = new Heat(230, 40, 90);
    assertThat(seconds(knob, Criterion.MEAN, 0.09, heat)).isCloseTo(186, withPercentage(1));
    assertThat(seconds(knob, Criterion.CENTRE, 0.09, heat)).isCloseTo(347, withPercentage(1));
  }

  @Test
  void answerSaysShapeAndCriterion() {
    Cooling cooling = Cooling.of(ROD, Criterion.MEAN, 0.1, ROD_HEAT).orElseThrow();
    assertThat(cooling.shape()).isEqualTo(Shape.CYLINDER);
    assertThat(cooling.criterion()).isEqualTo(Criterion.MEAN);
  }

  @ParameterizedTest
  @CsvSource({
    "230, 90, 90",
    "230, 90, 80",
    "90, 40, 90",
    "80, 40, 90",
    "40, 230, 90",
    "NaN, 40, 90"
  })
  void temperaturesOutOfOrderHaveNoAnswer(double melt, double mold, double eject) {
    Section wall = new Section(Shape.PLATE, 3);
    assertThat(Cooling.of(wall, Criterion.MEAN, 0.09, new Heat(melt, mold, eject))).isEmpty();
  }

  @Test
  void nothingIsDividedByZero() {
    Heat heat = new Heat(230, 40, 90);
    Section wall = new Section(Shape.PLATE, 3);
    assertThat(Cooling.of(wall, Criterion.MEAN, 0, heat)).isEmpty();
    assertThat(Cooling.of(wall, Criterion.MEAN, Double.NaN, heat)).isEmpty();
    assertThat(Cooling.of(new Section(Shape.PLATE, 0), Criterion.MEAN, 0.09, heat)).isEmpty();
  }

  /** 8/pi2 x (230 - 40) / (220 - 40) is below 1. */
  @Test
  void sectionThatIsColdAlreadyTakesNoTime() {
    Section wall = new Section(Shape.PLATE, 3);
    assertThat(seconds(wall, Criterion.MEAN, 0.09, new Heat(230, 40, 220)))
        .isCloseTo(0, within(0.0));
  }
}
