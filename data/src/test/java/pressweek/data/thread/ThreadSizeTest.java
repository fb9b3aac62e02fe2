package pressweek.data.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadSizeTest {
  private static ThreadSize read(String designation) {
    return ThreadSize.read(designation).orElseThrow();
  }

  /**
   * Gaps between major diameters as a metric-to-inch thread guide of a fastener dealer prints them.
   */
  @ParameterizedTest
  @CsvSource({
    "#10-24 UNC, M5x0.8, 0.007",
    "#10-32 UNF, M5x0.8, 0.007",
    "1/4-20 UNC, M6x1, 0.014",
    "5/16-18 UNC, M8x1.25, 0.0025",
    "3/8-16 UNC, M10x1.5, 0.019",
    "1/2-13 UNC, M12x1.75, 0.028"
  })
  void knownPairsLookAlike(String inch, String metric, double gapInch) {
    ThreadSize one = read(inch);
    ThreadSize other = read(metric);
    double gap = Math.abs(one.majorMm() - other.majorMm()) / 25.4;
    assertThat(gap).isCloseTo(gapInch, within(0.0005));
    assertThat(one.looksLike(other)).isTrue();
    assertThat(other.looksLike(one)).isTrue();
  }

  @Test
  void sixPercentOfTheLargerIsTheLimit() {
    ThreadSize hundred = read("M100x1");
    assertThat(read("M94x1").looksLike(hundred)).isTrue();
    assertThat(hundred.looksLike(read("M94x1"))).isTrue();
    assertThat(read("M93.9x1").looksLike(hundred)).isFalse();
    assertThat(hundred.looksLike(read("M93.9x1"))).isFalse();
    assertThat(read("M8x1.25").looksLike(read("M10x1.5"))).isFalse();
  }

  @Test
  void sameThreadWrittenOtherwiseIsNoLookAlike() {
    assertThat(read("M8").looksLike(read("M8x1.25"))).isFalse();
    assertThat(read("M8x1.25-6g").looksLike(read("M8 x 1.25"))).isFalse();
    assertThat(read("5/16-18 UNC-2A").looksLike(read("5/16\"-18 UNC"))).isFalse();
    assertThat(read("0.312-18").looksLike(read("5/16-18 UNC"))).isFalse();
    assertThat(read("M8x1").looksLike(read("M8"))).isTrue();
  }

  @Test
  void coarseAndFineOfEveryInchSizeLookAlike() {
    for (Thread thread : Threads.all()) {
      if (thread.series() == Series.UNC) {
        String fine = thread.name().replaceFirst("^1-", "1\"-").replaceFirst("-\\d+ UNC", " UNF");
        assertThat(read(thread.name()).looksLike(read(fine))).as(thread.name()).isTrue();
      }
    }
  }

  @Test
  void leftHandIsAnotherThread() {
    assertThat(read("M8-LH").pitchMm()).hasValue(1.25);
    assertThat(read("M8x1.25 LH").looksLike(read("M8"))).isTrue();
    assertThat(read("1/4-20 UNC-2A-LH").looksLike(read("1/4-20"))).isTrue();
  }

  /** BS 84 threads have 55 degrees; 1/4 BSW has 20 threads an inch as 1/4 UNC does. */
  @Test
  void whitworthIsAnotherThread() {
    assertThat(read("1/4-20 BSW").looksLike(read("1/4-20 UNC"))).isTrue();
    assertThat(read("1/4-20 BSW").whitworth()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "M8\u00D71, 8, 1",
    "M8-1.25, 8, 1.25",
    "M10x1-6H, 10, 1",
    "M8-6g, 8, 1.25",
    "M8x30, 8, 1.25",
    "M8x1.25x30, 8, 1.25",
    "M8 zinc, 8, 1.25",
    "No. 10-24 UNC, 4.826, 1.058333",
    "10-32 UNF, 4.826, 0.79375",
    "1-8 UNC, 25.4, 3.175",
    "1 1/8-7 UNC, 28.575, 3.628571",
    "1-1/8-7 UNC, 28.575, 3.628571",
    "0.250-20 UNC, 6.35, 1.27",
    "3/8 UNC, 9.525, 1.5875",
    "3/8-16, 9.525, 1.5875",
    "1-14 UNS, 25.4, 1.814286"
  })
  void usualSpellingsAreRead(String designation, double major, double pitch) {
    assertThat(read(designation).majorMm()).isCloseTo(major, within(1e-6));
    assertThat(read(designation).pitchMm().orElseThrow()).isCloseTo(pitch, within(1e-6));
  }

  @Test
  void pitchThatIsNotKnownStaysOpen() {
    assertThat(read("1 1/8 UNC").pitchMm()).isEmpty();
    assertThat(read("M9.5").pitchMm()).isEmpty();
    assertThat(read("MF8").pitchMm()).isEmpty();
    assertThat(Threads.inFull("1 1/8 UNC")).isEqualTo("1 1/8 UNC");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "8 mm",
        "5/16",
        "5/16\"",
        "10",
        "G1/4",
        "1/4-18 NPT",
        "Tr 12x3",
        "1/0-20 UNC",
        "1/4-0 UNC",
        "x",
        "M",
        "#",
        "10x32",
        "R 1/4"
      })
  void otherTextIsNotRead(String text) {
    assertThat(ThreadSize.read(text)).isEmpty();
    assertThat(Threads.inFull(text)).isEqualTo(text);
  }

  @Test
  void pitchIsAddedWhereItIsNotWrittenInMillimetres() {
    assertThat(Threads.inFull("5/16-18 UNC")).isEqualTo("5/16-18 UNC (pitch 1.411 mm)");
    assertThat(Threads.inFull("M8x1.25")).isEqualTo("M8x1.25");
    assertThat(Threads.inFull("M8")).isEqualTo("M8 (pitch 1.25 mm)");
    assertThat(Threads.inFull("M6")).isEqualTo("M6 (pitch 1 mm)");
  }
}
