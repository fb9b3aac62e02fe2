package pressweek.data.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables against what the standards print of the same threads elsewhere. */
class ThreadTablesTest {
  private static Thread thread(String name) {
    return Threads.all().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  /** ASME B1.1, tensile stress area, square inches: 0.7854 (d - 0.9743 / n) squared. */
  private static double areaInch2(Thread thread) {
    double d = thread.majorInch() - 0.9743 / thread.threadsPerInch().orElseThrow();
    return 0.7854 * d * d;
  }

  /** ISO 898-1, nominal stress area, mm2: 0.7854 (d - 0.9382 P) squared. */
  private static double areaMm2(Thread thread) {
    double d = thread.majorMm() - 0.9382 * thread.pitchMm();
    return 0.7854 * d * d;
  }

  /**
   * Tensile stress areas of ASME B1.1 as Shigley, Mechanical Engineering Design, prints them (table
   * of unified threads; #10, 1/4, 5/16, 3/8 and 1/2 checked, the rest from memory). An area follows
   * from diameter and threads an inch, so that a wrong figure in either shows.
   */
  @ParameterizedTest
  @CsvSource({
    "#4, 40, 0.00604, 48, 0.00661",
    "#5, 40, 0.00796, 44, 0.00830",
    "#6, 32, 0.00909, 40, 0.01015",
    "#8, 32, 0.0140, 36, 0.01474",
    "#10, 24, 0.0175, 32, 0.0200",
    "#12, 24, 0.0242, 28, 0.0258",
    "1/4, 20, 0.0318, 28, 0.0364",
    "5/16, 18, 0.0524, 24, 0.0580",
    "3/8, 16, 0.0775, 24, 0.0878",
    "7/16, 14, 0.1063, 20, 0.1187",
    "1/2, 13, 0.1419, 20, 0.1599",
    "9/16, 12, 0.182, 18, 0.203",
    "5/8, 11, 0.226, 18, 0.256",
    "3/4, 10, 0.334, 16, 0.373",
    "7/8, 9, 0.462, 14, 0.509",
    "1, 8, 0.606, 12, 0.663"
  })
  void unifiedThreadsHaveThePrintedStressAreas(
      String size, int unc, double uncArea, int unf, double unfArea) {
    Thread coarse = thread(size + "-" + unc + " UNC");
    Thread fine = thread(size + "-" + unf + " UNF");
    assertThat(areaInch2(coarse)).isCloseTo(uncArea, within(0.005 * uncArea));
    assertThat(areaInch2(fine)).isCloseTo(unfArea, within(0.005 * unfArea));
    assertThat(coarse.threadsPerInch()).hasValue(unc);
    assertThat(fine.threadsPerInch()).hasValue(unf);
  }

  /** ASME B1.1: a fraction of an inch is the diameter, a number n is 0.060 in + 0.013 in x n. */
  @Test
  void inchDiametersFollowFromTheirSizes() {
    for (Thread thread : Threads.all()) {
      if (thread.series().isInch()) {
        String size = thread.name().substring(0, thread.name().indexOf('-'));
        String[] parts = size.replace("#", "").split("/");
        double first = Double.parseDouble(parts[0]);
        double inch =
            size.startsWith("#")
                ? 0.060 + 0.013 * first
                : parts.length == 2 ? first / Double.parseDouble(parts[1]) : first;
        assertThat(thread.majorInch()).as(thread.name()).isCloseTo(inch, within(1e-9));
        assertThat(thread.majorMm()).isCloseTo(25.4 * inch, within(1e-9));
      }
    }
  }

  /**
   * Nominal stress areas of ISO 898-1, mm2 (M5, M6, M8, M10, M12 coarse checked, the rest from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({
    "M3x0.5, 5.03",
    "M3.5x0.6, 6.78",
    "M4x0.7, 8.78",
    "M5x0.8, 14.2",
    "M6x1, 20.1",
    "M7x1, 28.9",
    "M8x1.25, 36.6",
    "M10x1.5, 58.0",
    "M12x1.75, 84.3",
    "M14x2, 115",
    "M16x2, 157",
    "M18x2.5, 192",
    "M20x2.5, 245",
    "M8x1, 39.2",
    "M10x1.25, 61.2",
    "M10x1, 64.5",
    "M12x1.5, 88.1",
    "M12x1.25, 92.1",
    "M14x1.5, 125",
    "M16x1.5, 167",
    "M18x2, 204",
    "M18x1.5, 216",
    "M20x2, 258",
    "M20x1.5, 272"
  })
  void metricThreadsHaveThePrintedStressAreas(String name, double area) {
    assertThat(areaMm2(thread(name))).isCloseTo(area, within(0.005 * area));
  }

  /** The fine pitches of ISO 261 for which ISO 898-1 prints no area. */
  @Test
  void metricListIsThatOfIso261() {
    Set<String> fine =
        Threads.all().stream()
            .filter(t -> t.series() == Series.METRIC_FINE && t.majorMm() <= 8)
            .map(Thread::name)
            .collect(Collectors.toSet());
    assertThat(fine)
        .containsExactlyInAnyOrder(
            "M3x0.35", "M3.5x0.35", "M4x0.5", "M5x0.5", "M6x0.75", "M7x0.75", "M8x1", "M8x0.75");
  }

  @Test
  void nothingElseIsListed() {
    List<Thread> all = Threads.all();
    assertThat(all).hasSize(16 * 2 + 24 + 7);
    assertThat(new HashSet<>(all)).hasSameSizeAs(all);
    assertThat(all.get(0).name()).isEqualTo("#4-40 UNC");
    assertThat(all.get(all.size() - 1).name()).isEqualTo("M20x1.5");
  }

  @Test
  void namesOfMetricThreadsSayDiameterAndPitch() {
    for (Thread thread : Threads.all()) {
      if (!thread.series().isInch()) {
        String[] parts = thread.name().substring(1).split("x");
        assertThat(thread.majorMm()).isEqualTo(Double.parseDouble(parts[0]));
        assertThat(thread.pitchMm()).isEqualTo(Double.parseDouble(parts[1]));
        assertThat(thread.threadsPerInch()).isEmpty();
      }
    }
  }

  /** In each size the coarse series has the larger pitch. */
  @Test
  void coarseIsCoarserThanFine() {
    for (Thread thread : Threads.all()) {
      for (Thread other : Threads.all()) {
        boolean pair =
            thread.majorMm() == other.majorMm()
                && thread.series().isInch() == other.series().isInch()
                && thread.series().isCoarse()
                && !other.series().isCoarse();
        assertThat(pair && thread.pitchMm() <= other.pitchMm()).as(other.name()).isFalse();
      }
    }
  }
}
