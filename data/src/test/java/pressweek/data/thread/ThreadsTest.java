package pressweek.data.thread;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How threads are written: ASME B1.1, ISO 965-1, and what people make of them. */
class ThreadsTest {
  private static String found(String text) {
    return Threads.find(text).map(Thread::name).orElse("none");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1/4-20",
        "1/4\"-20 UNC",
        "1/4 x 20",
        "1/4\" x 20",
        ".250-20",
        "0.25-20",
        "0.250\"-20 unc",
        "1/4-20 UNC-2A",
        "1/4-20UNC-2B",
        "1/4-20 unc 2a",
        "1/4-20UNC2A",
        "1/4 - 20 UNC",
        "1/4 20",
        "1/4 in-20",
        "1/4 in. - 20",
        "1/4 inch 20 tpi",
        "1/4 UNC",
        "UNC 1/4-20",
        "1/4-20 NC",
        "\u00BC-20",
        "\u00BC\"-20",
        "1\u20444-20",
        "\u00B9\u2044\u2084-20",
        "1/4\u201320",
        "1/4\u221220",
        "1/4\u2033-20 UNC",
        "1/4''-20",
        "1/4\u00A0-\u00A020",
        " 1/4-20 ",
        "1/4 coarse",
        "1/4\u00D720",
        "1/4-20 UN",
        "1/4-20-2A",
        "1/4-20 UNRC-3A",
        "0,25-20"
      })
  void quarterInchCoarseIsFound(String text) {
    assertThat(found(text)).isEqualTo("1/4-20 UNC");
    assertThat(Threads.key(text)).isEqualTo("1/4-20UNC");
  }

  @ParameterizedTest
  @CsvSource({
    "0.3125-18, 5/16-18 UNC",
    "0.312-18, 5/16-18 UNC",
    ".313-18, 5/16-18 UNC",
    "5/16 - 18UNC-2A, 5/16-18 UNC",
    "\u2075\u2044\u2081\u2086-18, 5/16-18 UNC",
    "\u215C-16, 3/8-16 UNC",
    "\u215D-11, 5/8-11 UNC",
    "\u215E-9, 7/8-9 UNC",
    "\u00BD-13, 1/2-13 UNC",
    "\u00BE-16, 3/4-16 UNF",
    "3/8 UNF, 3/8-24 UNF",
    "0.437-14, 7/16-14 UNC",
    ".562-12, 9/16-12 UNC",
    "1-8, 1-8 UNC",
    "1\"-12 UNF, 1-12 UNF",
    "1.000-8, 1-8 UNC",
    "#10-32, #10-32 UNF",
    "10-32, #10-32 UNF",
    "# 10 - 32, #10-32 UNF",
    "10 - 24 UNC, #10-24 UNC",
    ".190-32, #10-32 UNF",
    "No.10-24, #10-24 UNC",
    "no 10-24, #10-24 UNC",
    "No. 10 x 24, #10-24 UNC",
    "NR10-24, #10-24 UNC",
    "\u21166-32, #6-32 UNC",
    "#8 UNC, #8-32 UNC",
    "4-40, #4-40 UNC",
    "6-32 UNC-2B, #6-32 UNC",
    "12-24, #12-24 UNC",
    "#5 44, #5-44 UNF"
  })
  void inchThreadsAreFound(String text, String name) {
    assertThat(found(text)).isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({
    "M8, M8x1.25",
    "m8, M8x1.25",
    "M 8, M8x1.25",
    "M8.0, M8x1.25",
    "M8x1.25, M8x1.25",
    "m8X1.25, M8x1.25",
    "M8 x 1.250, M8x1.25",
    "M8-1.25, M8x1.25",
    "M8 - 1.25, M8x1.25",
    "M8 1.25, M8x1.25",
    "M8\u20131.25, M8x1.25",
    "M8*1.25, M8x1.25",
    "'M8x1,25', M8x1.25",
    "M8x1.25-6g, M8x1.25",
    "M8x1.25 6H, M8x1.25",
    "M8x1.25-5g6g, M8x1.25",
    "M8x1.25-6H/6g, M8x1.25",
    "M8-6g, M8x1.25",
    "M8 coarse, M8x1.25",
    "M8x1.25-RH, M8x1.25",
    "M8\u00D71, M8x1",
    "M8x1.0, M8x1",
    "MF8x1, M8x1",
    "MF 8 x 1 - 6g, M8x1",
    "M10x1.25 fine, M10x1.25",
    "M3.5, M3.5x0.6",
    "M7, M7x1",
    "M20, M20x2.5"
  })
  void metricThreadsAreFound(String text, String name) {
    assertThat(found(text)).isEqualTo(name);
  }

  @Test
  void everyThreadIsFoundByItsName() {
    for (Thread thread : Threads.all()) {
      assertThat(Threads.find(thread.name())).hasValue(thread);
      assertThat(Threads.candidates(thread.name())).containsExactly(thread);
      assertThat(Threads.key(thread.name().toLowerCase(java.util.Locale.ROOT)))
          .isEqualTo(Threads.key(thread.name()));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "x",
        "M",
        "#",
        "8 mm",
        "8",
        "10",
        "10x32",
        "10 x 1.5",
        "1/4",
        "5/16\"",
        "#10",
        "1/4-28 UNC",
        "1/4-20 UNF",
        "UNF 1/4-20 UNC",
        "1/4-24",
        "1-14 UNF",
        "1-14 UNS",
        "1/4-32 UNEF",
        "1/4-20 UNJC",
        "1/4-20 BSW",
        "1/4-18 NPT",
        "1/4 BSP",
        "G1/4",
        "R 1/4",
        "Tr 12x3",
        "MJ8x1.25",
        "M8x30",
        "M8x1.25x30",
        "M8x0.5",
        "M9",
        "MF8",
        "MF6",
        "MF8x1.25",
        "M8x1 coarse",
        "M8-LH",
        "M8x1.25-LH",
        "1/4-20 LH",
        "M8 zinc",
        "M8 and M10",
        "1/4-20x1",
        "1/4 x 1",
        "1/0-20",
        "1/4-0",
        "0/4-20",
        "M0",
        "1/4/20",
        "#10-",
        "M8x",
        "-",
        "/",
        "M8x1.25 2A",
        "1/4-20 6g",
        "1 1/8-7 UNC",
        "0.26-20",
        "1.4305"
      })
  void whatIsNotOneThreadIsNotFound(String text) {
    assertThat(Threads.find(text)).isEmpty();
  }
}
