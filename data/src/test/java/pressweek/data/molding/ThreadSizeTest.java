package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Coarse pitches: ISO 261. */
class ThreadSizeTest {
  @Test
  void metricThreadWithoutPitchIsCoarse() {
    assertThat(ThreadSize.same("M8", "M8x1.25")).isTrue();
    assertThat(ThreadSize.same("M6", "M6x1.0")).isTrue();
    assertThat(ThreadSize.same("M10", "M10 x 1.50")).isTrue();
    assertThat(ThreadSize.same("M8", "M8x1")).isFalse();
  }

  @Test
  void capitalsAndSpacesDoNotMatter() {
    assertThat(ThreadSize.same("5/16-18 UNC", "5/16-18unc")).isTrue();
    assertThat(ThreadSize.same("5/16-18 UNC", "5/16-24 UNF")).isFalse();
  }

  @Test
  void sizeWithoutAKnownPitchStaysAsItIs() {
    assertThat(ThreadSize.key("M7")).isEqualTo("M7");
    assertThat(ThreadSize.key("M20x10")).isEqualTo("M20X10");
    assertThat(ThreadSize.key("")).isEmpty();
  }
}
