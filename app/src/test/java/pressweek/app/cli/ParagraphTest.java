package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ParagraphTest {
  @Test
  void textIsBrokenAtSpacesUnderItsHead() {
    String word = "x".repeat(30);
    assertThat(Paragraph.of("why: ", word + " " + word + " " + word))
        .containsExactly("why: " + word + " " + word, "     " + word);
  }

  @Test
  void lineOf80ColumnsStaysWhole() {
    assertThat(Paragraph.of("", "x".repeat(39) + " " + "y".repeat(40))).hasSize(1);
    assertThat(Paragraph.of("", "x".repeat(40) + " " + "y".repeat(40))).hasSize(2);
  }

  @Test
  void wordThatIsTooLongStaysWhole() {
    assertThat(Paragraph.of("  ", "z".repeat(100))).containsExactly("  " + "z".repeat(100));
  }
}
