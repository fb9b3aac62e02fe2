package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CertaintyTest {
  private static final List<Double> BASE = List.of(10.0, 12.0, 11.0);

  @Test
  void rangesThatDoNotTouchAreSure() {
    assertThat(Certainty.of(BASE, List.of(9.9, 8.0, 7.0))).isEqualTo(Certainty.SURE);
    assertThat(Certainty.of(BASE, List.of(12.1, 15.0, 13.0))).isEqualTo(Certainty.SURE);
  }

  @Test
  void rangesThatTouchAreWithinWhatTheSearchVaries() {
    assertThat(Certainty.of(BASE, List.of(10.0, 8.0, 7.0))).isEqualTo(Certainty.WITHIN);
    assertThat(Certainty.of(BASE, List.of(11.0, 11.0, 11.0))).isEqualTo(Certainty.WITHIN);
    assertThat(Certainty.of(BASE, BASE)).isEqualTo(Certainty.WITHIN);
  }

  @Test
  void oneValueEverywhereIsTheSame() {
    List<Double> five = List.of(5.0, 5.0, 5.0);
    assertThat(Certainty.of(five, five)).isEqualTo(Certainty.SAME);
    assertThat(Certainty.of(five, List.of(6.0, 6.0, 6.0))).isEqualTo(Certainty.SURE);
  }

  @Test
  void fewerThanThreeSeedsTellNothing() {
    assertThat(Certainty.of(List.of(1.0, 2.0), List.of(8.0, 9.0))).isEqualTo(Certainty.UNTOLD);
    assertThat(Certainty.of(BASE, List.of())).isEqualTo(Certainty.UNTOLD);
  }

  /** C(6,3)/2, C(8,4)/2, C(10,5)/2. */
  @Test
  void chanceAloneKeepsRangesApartOnceInSoManyTimes() {
    assertThat(Certainty.chances(3)).isEqualTo(10);
    assertThat(Certainty.chances(4)).isEqualTo(35);
    assertThat(Certainty.chances(5)).isEqualTo(126);
    assertThat(Certainty.method(3)).contains("once in 10 times");
    assertThat(Certainty.method(2)).contains("nothing is called sure");
  }

  @Test
  void ofDrawsFromOneUrnATenthIsSure() {
    Random random = new Random(7);
    int sure = 0;
    int draws = 20_000;
    for (int i = 0; i < draws; i++) {
      sure += Certainty.of(three(random), three(random)) == Certainty.SURE ? 1 : 0;
    }
    assertThat(sure / (double) draws).isBetween(0.09, 0.11);
  }

  private static List<Double> three(Random random) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      values.add(random.nextGaussian());
    }
    return values;
  }
}
