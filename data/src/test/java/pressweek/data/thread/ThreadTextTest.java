package pressweek.data.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** What text that is no whole thread leaves open, and that any text is answered. */
class ThreadTextTest {
  private static final String SIGNS =
      "0123456789 /#-.,xX*\u00D7\u2013\u2212\u2044\u2116\u00BC\u00BD\u2075\u2081\u2033\"'MFUNCLHAB\t\u00A0";

  private static String found(String text) {
    return Threads.find(text).map(Thread::name).orElse("none");
  }

  private static List<String> candidates(String text) {
    return Threads.candidates(text).stream().map(Thread::name).toList();
  }

  @Test
  void sizeWithoutPitchLeavesTheSeriesOpen() {
    assertThat(candidates("1/4")).containsExactly("1/4-20 UNC", "1/4-28 UNF");
    assertThat(candidates("5/16\"")).containsExactly("5/16-18 UNC", "5/16-24 UNF");
    assertThat(candidates("#10")).containsExactly("#10-24 UNC", "#10-32 UNF");
    assertThat(candidates("no. 6")).containsExactly("#6-32 UNC", "#6-40 UNF");
    assertThat(candidates("0.375")).containsExactly("3/8-16 UNC", "3/8-24 UNF");
    assertThat(candidates("1 inch")).containsExactly("1-8 UNC", "1-12 UNF");
    assertThat(candidates("1/4 UNF")).containsExactly("1/4-28 UNF");
    assertThat(candidates("M8")).containsExactly("M8x1.25");
    assertThat(candidates("MF8")).containsExactly("M8x1", "M8x0.75");
    assertThat(candidates("MF6")).containsExactly("M6x0.75");
    assertThat(candidates("8")).isEmpty();
    assertThat(candidates("1/3")).isEmpty();
  }

  /** Coarse pitches: ISO 261. */
  @Test
  void metricThreadWithoutPitchIsCoarse() {
    assertThat(Threads.same("M8", "M8x1.25")).isTrue();
    assertThat(Threads.same("M6", "M6x1.0")).isTrue();
    assertThat(Threads.same("M10", "M10 x 1.50")).isTrue();
    assertThat(Threads.same("M8", "M8x1")).isFalse();
    assertThat(Threads.key("M8")).isEqualTo("M8X1.25");
  }

  @Test
  void spellingDoesNotMatter() {
    assertThat(Threads.same("5/16-18 UNC", "5/16-18unc")).isTrue();
    assertThat(Threads.same("5/16-18 UNC", ".3125-18")).isTrue();
    assertThat(Threads.same("5/16-18 UNC", "5/16-24 UNF")).isFalse();
  }

  @Test
  void otherTextIsComparedAsItStands() {
    assertThat(Threads.key("M9")).isEqualTo("M9");
    assertThat(Threads.key("M9x1.0")).isEqualTo("M9X1");
    assertThat(Threads.key("M20x10")).isEqualTo("M20X10");
    assertThat(Threads.key("g 1/4")).isEqualTo("G1/4");
    assertThat(Threads.key("")).isEmpty();
    assertThat(Threads.same("G1/4", "g 1/4")).isTrue();
    assertThat(Threads.same("1/4", "1/4-20")).isFalse();
    assertThat(Threads.same("M8-LH", "M8")).isFalse();
    assertThat(Threads.same("", "M8")).isFalse();
  }

  /** The sense of a text is the same by every way of asking. */
  @Test
  void anyTextIsAnswered() {
    Random random = new Random(261);
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(14);
      for (int k = 0; k < length; k++) {
        text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
      }
      String made = text.toString();
      List<Thread> candidates = Threads.candidates(made);
      Threads.find(made)
          .ifPresent(
              thread -> {
                assertThat(candidates).as(made).containsExactly(thread);
                assertThat(Threads.same(made, thread.name())).as(made).isTrue();
              });
      assertThat(Threads.same(made, made)).isTrue();
      assertThatCode(() -> Threads.inFull(made)).doesNotThrowAnyException();
    }
  }

  @Test
  void longTextIsAnsweredAtOnce() {
    List<String> texts =
        List.of(
            "M8x1.25 ".repeat(8192),
            "1".repeat(65_536),
            " ".repeat(65_536),
            "1/4-".repeat(16_384),
            "\uD83D".repeat(65_536),
            "9".repeat(60),
            "M" + "9".repeat(60),
            "M" + "9".repeat(30) + "x" + "9".repeat(30));
    Assertions.assertTimeout(
        Duration.ofSeconds(10),
        () -> {
          for (String text : texts) {
            for (int i = 0; i < 100; i++) {
              assertThat(Threads.find(text)).isEmpty();
              assertThat(Threads.candidates(text)).isEmpty();
              assertThat(Threads.same(text, "M8")).isFalse();
              ThreadSize.read(text);
            }
          }
        });
    assertThat(found(" ".repeat(65_000) + "M8")).isEqualTo("M8x1.25");
  }

  @Test
  void threadNeedsAPitchBelowItsDiameter() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Thread(Series.METRIC_FINE, "M1x1", 1, 1))
        .withMessageContaining("M1x1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Thread(Series.METRIC_FINE, "M1x0", 1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Thread(Series.METRIC_FINE, " ", 8, 1));
  }
}
