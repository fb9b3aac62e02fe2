package pressweek.reports.pulls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WalkingOrderTest {
  private static final List<String> WALK =
      List.of(
          "2", "10", "A", "A-3", "A1", "A2", "A2-9", "A2-10", "A10", "B-01-2", "B-1-10", "C007",
          "");

  @Test
  void numbersInABinCountAsNumbers() {
    List<String> bins = new ArrayList<>(WALK);
    for (int seed = 0; seed < 20; seed++) {
      Collections.shuffle(bins, new Random(seed));
      bins.sort(WalkingOrder.OF_BINS);
      assertThat(bins).isEqualTo(WALK);
    }
  }

  @Test
  void onlyTheSameBinIsEqual() {
    for (String bin : WALK) {
      for (String other : WALK) {
        assertThat(WalkingOrder.OF_BINS.compare(bin, other) == 0).isEqualTo(bin.equals(other));
      }
    }
    assertThat(WalkingOrder.OF_BINS.compare("A1", "a1")).isNotZero();
    assertThat(WalkingOrder.OF_BINS.compare("A01", "A1")).isNotZero();
  }
}
