package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class AmountsTest {
  /** 100 good pieces at 20 % scrap are 125 (own arithmetic: losses divide). */
  @Test
  void scrapDivides() {
    assertThat(Amounts.shots(100, 20, 1)).isEqualTo(125);
    assertThat(Amounts.shots(101, 20, 1)).isEqualTo(127);
  }

  /** Own arithmetic: 10 000 good pieces, 3 % scrap, 4 live cavities. */
  @Test
  void shotsOfARun() {
    assertThat(Amounts.shots(10_000, 3, 4)).isEqualTo(2578);
    assertThat(Amounts.shots(1, 0, 4)).isEqualTo(1);
    assertThat(Amounts.shots(4, 0, 4)).isEqualTo(1);
    assertThat(Amounts.shots(5, 0, 4)).isEqualTo(2);
  }

  @Test
  void minutesCountTheEfficiencyAndRoundUpOnce() {
    // 2578 shots of 40 s are 1718.67 min, at 85 % 2021.96
    assertThat(Amounts.minutes(2578, 40_000, 85)).isEqualTo(2022);
    assertThat(Amounts.minutes(3, 20_000, 100)).isEqualTo(1);
    assertThat(Amounts.minutes(3, 20_001, 100)).isEqualTo(2);
    assertThat(Amounts.minutes(0, 20_000, 100)).isZero();
  }

  /**
   * Own arithmetic after the shrinkage rule: 10 000 good at 3 % scrap are 10 310 parts; 10 362
   * inserts at 0.5 % loss.
   */
  @Test
  void insertsCountScrapLossAndSamples() {
    long parts = Amounts.shots(10_000, 3, 1);
    assertThat(parts).isEqualTo(10_310);
    assertThat(Amounts.inserts(parts, 1, 0.5, 0)).isEqualTo(10_362);
    assertThat(Amounts.inserts(parts, 1, 0.5, 5)).isEqualTo(10_367);
    assertThat(Amounts.inserts(100, 2, 0, 5)).isEqualTo(210);
  }

  @Test
  void shotsThatMakeNothingGoodAreRefused() {
    assertThatThrownBy(() -> Amounts.shots(1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Amounts.shots(1, 100, 2))
        .hasMessage(
            "live cavities must be at least 1 and scrap below 100 % but were 2 and 100.0 %");
  }

  @Test
  void largestOrderDoesNotOverflow() {
    long shots = Amounts.shots(10_000_000, 99.9999, 1);
    assertThat(shots).isEqualTo(10_000_000_000_000L);
    assertThat(Amounts.minutes(shots, 60_000, 50)).isEqualTo(20_000_000_000_000L);
  }

  @Test
  void cyclesAndMultiplesRoundUp() {
    assertThat(Amounts.cycleMillis(28.4)).isEqualTo(28_400);
    assertThat(Amounts.cycleMillis(28.4001)).isEqualTo(28_401);
    assertThat(Amounts.multiple(101, 50)).isEqualTo(150);
    assertThat(Amounts.multiple(100, 50)).isEqualTo(100);
  }
}
