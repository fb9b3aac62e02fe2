package pressweek.data.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Guides unlike the usual one: inches, no separator, one word for two things. */
class OtherGuidesTest {
  private static final WordReader INCHES = SmallGuide.reader(SmallGuide.INCHES);

  private static Reading best(String words) {
    return INCHES.read(words).readings().get(0);
  }

  @Test
  void readsSizesInInches() {
    assertThat(best("wing knob 1-1/2 in, 5/16-18, zinc, grey").code()).isEqualTo("W25ZG");
    assertThat(best("2 1/4\" butterfly, 1/4-20, grey").code()).isEqualTo("W34ZG");
    assertThat(best("round 1.5, M8, grey").code()).isEqualTo("R28ZG");
  }

  @Test
  void millimetresAreConvertedAndThatIsSaid() {
    Reading best = best("wing knob 38 mm, M8, grey");
    assertThat(best.code()).isEqualTo("W28ZG");
    assertThat(best.assumed())
        .contains(new Assumed(Map.of("head_size_in", "1.5"), "head size 38 mm is taken as 1.5 in"));
  }

  @Test
  void aCodeWithoutSeparatorIsFoundAmongWords() {
    assertThat(best("please send W25ZG again").code()).isEqualTo("W25ZG");
  }

  @Test
  void aWordForTwoThingsIsReadBothWays() {
    List<Reading> readings = INCHES.read("wing knob 1.5 in M8 black grey").readings();
    assertThat(readings.get(0).code()).isEqualTo("W28BG");
    assertThat(best("wing knob 1.5 in M8 zinc black").code()).isEqualTo("W28ZB");
  }

  @Test
  void aGuideWithoutWordsIsReadByItsTables() {
    String json = SmallGuide.INCHES.replaceFirst("(?s),\\s*\"words\": \\{\\s*\"measures.*", "}");
    assertThat(SmallGuide.reader(json).read("wing knob 1/4-20 zinc grey").readings().get(0).code())
        .isEqualTo("??4ZG");
  }
}
