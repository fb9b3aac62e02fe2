package pressweek.reports.pulls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadSizeTest {
  private static ThreadSize read(String designation) {
    return ThreadSize.read(designation).orElseThrow();
  }

  private static List<String[]> table(String name) throws IOException {
    try (InputStream in = ThreadSizeTest.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().skip(2).map(l -> l.split(",")).toList();
    }
  }

  @Test
  void metricThreadsAreThoseOfIso261() throws IOException {
    for (String[] row : table("iso_metric.csv")) {
      double major = Double.parseDouble(row[1]);
      double coarse = Double.parseDouble(row[3]);
      assertThat(read(row[0]).majorMm()).isEqualTo(major);
      assertThat(read(row[0]).pitchMm()).as(row[0]).hasValue(coarse);
      assertThat(read(row[0] + "x" + row[3])).isEqualTo(withPitch(major, coarse));
      for (String fine : row[4].split(";")) {
        assertThat(read(row[0] + "x" + fine).pitchMm()).hasValue(Double.parseDouble(fine));
      }
    }
  }

  private static ThreadSize withPitch(double major, double pitch) {
    return new ThreadSize(major, OptionalDouble.of(pitch), true);
  }

  @Test
  void inchThreadsAreThoseOfAsmeB11() throws IOException {
    for (String[] row : table("unified_unc_unf.csv")) {
      double major = Double.parseDouble(row[1]) * 25.4;
      ThreadSize coarse = read(row[0] + "-" + row[2] + " UNC");
      ThreadSize fine = read(row[0] + "-" + row[3] + " UNF-2B");
      assertThat(coarse.majorMm()).as(row[0]).isCloseTo(major, within(1e-6));
      assertThat(fine.majorMm()).as(row[0]).isCloseTo(major, within(1e-6));
      double tpi = Double.parseDouble(row[2]);
      assertThat(coarse.pitchMm().orElseThrow()).isCloseTo(25.4 / tpi, within(1e-9));
      assertThat(coarse.looksLike(fine)).as(row[0]).isTrue();
    }
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
    assertThat(read("M93.9x1").looksLike(hundred)).isFalse();
    assertThat(read("M8x1.25").looksLike(read("M10x1.5"))).isFalse();
  }

  @Test
  void sameThreadWrittenOtherwiseIsNoLookAlike() {
    assertThat(read("M8").looksLike(read("M8x1.25"))).isFalse();
    assertThat(read("M8x1.25-6g").looksLike(read("M8 x 1.25"))).isFalse();
    assertThat(read("5/16-18 UNC-2A").looksLike(read("5/16\"-18 UNC"))).isFalse();
    assertThat(read("M8x1").looksLike(read("M8"))).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "M8\u00D71, 8, 1",
    "M8-1.25, 8, 1.25",
    "M10x1-6H, 10, 1",
    "M8-6g, 8, 1.25",
    "No. 10-24 UNC, 4.826, 1.058333",
    "10-32 UNF, 4.826, 0.79375",
    "1-8 UNC, 25.4, 3.175",
    "1 1/8-7 UNC, 28.575, 3.628571",
    "1-1/8-7 UNC, 28.575, 3.628571",
    "0.250-20 UNC, 6.35, 1.27",
    "3/8-16, 9.525, 1.5875"
  })
  void usualSpellingsAreRead(String designation, double major, double pitch) {
    assertThat(read(designation).majorMm()).isCloseTo(major, within(1e-6));
    assertThat(read(designation).pitchMm().orElseThrow()).isCloseTo(pitch, within(1e-6));
  }

  @Test
  void pitchThatIsNotWrittenStaysUnknown() {
    assertThat(read("3/8 UNC").pitchMm()).isEmpty();
    assertThat(read("M9.5").pitchMm()).isEmpty();
    assertThat(ThreadSize.inFull("3/8 UNC")).isEqualTo("3/8 UNC");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "8 mm", "5/16", "G1/4", "Tr 12x3", "1/0-20 UNC", "1/4-0 UNC", "x"})
  void otherTextIsNotRead(String text) {
    assertThat(ThreadSize.read(text)).isEmpty();
    assertThat(ThreadSize.inFull(text)).isEqualTo(text);
  }

  @Test
  void pitchIsAddedWhereItIsNotWrittenInMillimetres() {
    assertThat(ThreadSize.inFull("5/16-18 UNC")).isEqualTo("5/16-18 UNC (pitch 1.411 mm)");
    assertThat(ThreadSize.inFull("M8x1.25")).isEqualTo("M8x1.25");
    assertThat(ThreadSize.inFull("M8")).isEqualTo("M8 (pitch 1.25 mm)");
    assertThat(ThreadSize.inFull("M6")).isEqualTo("M6 (pitch 1 mm)");
  }
}
