package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

final class StopSignTest {
  @Test
  void whatGoesOnIsStoppedOnceAndWhatIsOverIsNot() {
    StopSign sign = new StopSign();
    AtomicInteger early = new AtomicInteger();
    AtomicInteger amid = new AtomicInteger();
    assertThat(sign.heeding(early::incrementAndGet, () -> "done")).isEqualTo("done");
    sign.heeding(
        amid::incrementAndGet,
        () -> {
          sign.give();
          return "";
        });
    assertThat(early).hasValue(0);
    assertThat(amid).hasValue(1);
    assertThat(sign.isGiven()).isTrue();
  }

  @Test
  void whatBeginsAfterItIsStoppedAtOnce() {
    StopSign sign = new StopSign();
    sign.give();
    AtomicBoolean stopped = new AtomicBoolean();
    assertThat(sign.heeding(() -> stopped.set(true), stopped::get)).isTrue();
  }

  @Test
  void itStandsOnceSomethingElseSaysSo() {
    AtomicBoolean over = new AtomicBoolean();
    StopSign sign = new StopSign(over::get);
    assertThat(sign.isGiven()).isFalse();
    over.set(true);
    assertThat(sign.isGiven()).isTrue();
  }
}
