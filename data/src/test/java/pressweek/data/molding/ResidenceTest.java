package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ResidenceTest {
  /** Published how-to on residence time: 200 g rated x 1.4, 100 g a shot, 15 s; exact. */
  @Test
  void residence() {
    Residence residence = Residence.of(200 * 1.4, 100, 15).orElseThrow();
    assertThat(residence.minutes() * 60).isCloseTo(42, within(1e-9));
    assertThat(residence.shotsInBarrel()).isEqualTo(3);
  }

  /** Own arithmetic: PBT bears 6 min (Kulkarni, Plastics Technology); 280 g / 100 g x 40 s. */
  @Test
  void stopMayTakeWhatTheLimitLeaves() {
    Residence residence = Residence.of(280, 100, 40).orElseThrow();
    assertThat(residence.minutes()).isCloseTo(1.867, within(0.001));
    assertThat(residence.stopRule(6).orElseThrow().sentence())
        .isEqualTo("stopped more than 4 min: purge 3 shots");
    assertThat(residence.stopRule(residence.minutes()).orElseThrow().longestMin()).isZero();
    assertThat(residence.stopRule(1.8)).isEmpty();
    assertThat(new Residence.StopRule(4, 1).sentence())
        .isEqualTo("stopped more than 4 min: purge 1 shot");
  }

  @Test
  void nothingIsDividedByZero() {
    assertThat(Residence.of(280, 0, 15)).isEmpty();
    assertThat(Residence.of(0, 100, 15)).isEmpty();
    assertThat(Residence.of(280, 100, 0)).isEmpty();
  }
}
