package pressweek.reports.pulls;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.reports.sample.SampleWeek;

class InsertWordsTest {
  private static String words(String kind, String thread, double length, String... rest) {
    return InsertWords.of(SampleWeek.insert("X", kind, thread, length, rest[0], rest[1], rest[2]));
  }

  @Test
  void studHasThreadLengthMaterialAndFinish() {
    assertThat(words("stud", "M8x1.25", 25, "steel", "zinc", "trivalent"))
        .isEqualTo("stud, M8x1.25, 25 mm, steel, zinc trivalent");
  }

  @Test
  void kindsOfNutsSayThatTheyAreNuts() {
    assertThat(words("through", "5/16-18 UNC", 0, "", "", ""))
        .isEqualTo("through nut, 5/16-18 UNC (pitch 1.411 mm)");
    assertThat(words("blind", "M6x1", 0, "A2", "plain", "none"))
        .isEqualTo("blind nut, M6x1, A2, plain");
    assertThat(words("lock", "M6x1", 0, "", "", "")).startsWith("lock nut");
    assertThat(words("tall", "M6x1", 0, "", "", "")).startsWith("tall nut");
  }

  @Test
  void kindOfThePlantsOwnStaysAsItIs() {
    assertThat(words("D bushing", "", 12.75, "brass", "", ""))
        .isEqualTo("D bushing, 12.75 mm, brass");
  }

  @Test
  void passivationIsNotSaidTwice() {
    assertThat(words("stud", "M8x1.25", 0, "steel", "zinc, hexavalent yellow", "hexavalent"))
        .isEqualTo("stud, M8x1.25, steel, zinc, hexavalent yellow");
    assertThat(words("stud", "M8x1.25", 0, "steel", "", "trivalent"))
        .isEqualTo("stud, M8x1.25, steel, trivalent");
  }
}
