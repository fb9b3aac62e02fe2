package pressweek.data.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Any text is answered, and soon. */
class BoundsTest {
  private static final WordReader READER = SmallGuide.reader(SmallGuide.KNOBS);
  private static final List<String> PIECES =
      List.of(
          "star",
          "knob",
          "M8",
          "x",
          "30",
          "1/4-20",
          "5/16",
          "\"",
          "in",
          "mm",
          "50",
          ",",
          "/",
          "-",
          "#10",
          "no",
          "not",
          "but",
          "or",
          "ST50",
          "PP-BLK",
          "qty",
          "½",
          "ø",
          ".",
          "1,5",
          "w/o",
          "blk",
          "tapred",
          "stainless",
          "316",
          "(",
          "'",
          "ß",
          "🙂",
          "\n",
          "١٢",
          "é",
          "0",
          "1/0");

  @Test
  void aLongTextIsNotRead() {
    assertThat(READER.read("a".repeat(1_001)).readings())
        .singleElement()
        .extracting(Reading::questions)
        .isEqualTo(List.of("a description of 1,001 characters; expected at most 1,000"));
    assertThat(READER.read("star ".repeat(200)).readings().get(0).questions())
        .containsExactly("a description of more than 120 words and signs; expected at most 120");
  }

  @Test
  void nothingIsAQuestion() {
    assertThat(READER.read("").readings().get(0).questions()).isNotEmpty();
    assertThat(READER.read(" \t").readings().get(0).complete()).isFalse();
  }

  @Test
  void sixtyFourKilobytesAreAnsweredAtOnce() {
    String text = "star knob 50 mm M8 ".repeat(3_450);
    long start = System.nanoTime();
    READER.read(text);
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofMillis(100));
  }

  @Test
  void drawnTextIsAnswered() {
    Random random = new Random(20_261_130);
    for (int i = 0; i < 1_000; i++) {
      int[] points = random.ints(random.nextInt(90), 1, 0x2FFFF).toArray();
      check(new String(points, 0, points.length));
    }
  }

  @Test
  void drawnPiecesAreAnswered() {
    Random random = new Random(20_261_201);
    for (int i = 0; i < 2_000; i++) {
      StringBuilder text = new StringBuilder();
      int pieces = random.nextInt(14);
      for (int k = 0; k < pieces; k++) {
        text.append(PIECES.get(random.nextInt(PIECES.size())));
        text.append(random.nextInt(3) == 0 ? "" : " ");
      }
      check(text.toString());
    }
  }

  private static void check(String text) {
    List<Reading> readings = READER.read(text).readings();
    assertThat(readings).isNotEmpty().hasSizeLessThanOrEqualTo(5);
    for (Reading reading : readings) {
      for (Understood understood : reading.understood()) {
        assertThat(understood.start()).isBetween(0, understood.end() - 1);
        assertThat(understood.end()).isLessThanOrEqualTo(text.length());
      }
      if (reading.complete()) {
        assertThat(SmallGuide.of(SmallGuide.KNOBS).decode(reading.code()).good()).isTrue();
      }
    }
  }
}
