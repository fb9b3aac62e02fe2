package pressweek.reports.wall;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextFitTest {
  @Test
  void textThatFitsStaysWhole() {
    assertThat(TextFit.fit("4711/1", 10, TextFit.width("4711/1", 10))).isEqualTo("4711/1");
  }

  @Test
  void longTextEndsWithAnEllipsisAndFits() {
    String fitted = TextFit.fit("LV90/M10-B/PP-SGR", 10, 70);
    assertThat(fitted).startsWith("LV90/M").endsWith("\u2026");
    assertThat(TextFit.width(fitted, 10)).isLessThanOrEqualTo(70);
  }

  @Test
  void tooLittleRoomIsNoText() {
    assertThat(TextFit.fit("LV90/M10-B", 10, 30)).isEmpty();
    assertThat(TextFit.fit("4711/1", 10, -5)).isEmpty();
    assertThat(TextFit.fit("", 10, 0)).isEmpty();
  }

  @Test
  void pairOfSurrogatesIsNotCut() {
    String text = "\uD83D\uDE00".repeat(20);
    String fitted = TextFit.fit(text, 10, 125);
    assertThat(Character.isHighSurrogate(fitted.charAt(fitted.length() - 2))).isFalse();
  }
}
