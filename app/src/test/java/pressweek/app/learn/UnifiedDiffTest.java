package pressweek.app.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The form of POSIX {@code diff -u}, with the mark for a missing line end that GNU diff writes. */
final class UnifiedDiffTest {
  private static String diff(String before, String after) {
    return new String(
        UnifiedDiff.of("t.csv", Optional.of(bytes(before)), bytes(after)),
        StandardCharsets.ISO_8859_1);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  @Test
  void oneLineIsExchangedAmongThreeOthersOnEachSide() {
    assertThat(diff("1\n2\n3\n4\n5\n6\n7\n8\n9\n", "1\n2\n3\n4\nfive\n6\n7\n8\n9\n"))
        .isEqualTo(
            "--- a/t.csv\n+++ b/t.csv\n@@ -2,7 +2,7 @@\n 2\n 3\n 4\n-5\n+five\n 6\n 7\n 8\n");
  }

  @Test
  void aMissingLineEndIsMarked() {
    assertThat(diff("a\r\nb", "a\r\nc"))
        .isEqualTo(
            "--- a/t.csv\n+++ b/t.csv\n@@ -1,2 +1,2 @@\n a\r\n-b\n\\ No newline at end of file\n+c\n"
                + "\\ No newline at end of file\n");
    assertThat(diff("a\nb", "a\nb\nc\n"))
        .endsWith(" a\n-b\n\\ No newline at end of file\n+b\n+c\n");
  }

  @Test
  void aNewFileComesFromNothing() {
    assertThat(
            new String(
                UnifiedDiff.of("t.csv", Optional.empty(), bytes("a\nb\n")),
                StandardCharsets.ISO_8859_1))
        .isEqualTo("--- /dev/null\n+++ b/t.csv\n@@ -0,0 +1,2 @@\n+a\n+b\n");
  }

  @Test
  void bytesOfAnyCharacterSetStay() {
    assertThat(diff("\u00fc\nb\n", "\u00fc\nc\n")).contains(" \u00fc\n");
  }

  @Test
  void equalFilesHaveNone() {
    assertThat(diff("a\n", "a\n")).isEmpty();
  }
}
