package pressweek.app.learn;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The difference of two versions of a text file, as {@code patch} and {@code git apply} read it. A
 * line's bytes are taken as they are, whatever their character set, its carriage return among them.
 */
final class UnifiedDiff {
  /** A character a byte. */
  private static final Charset BYTES = StandardCharsets.ISO_8859_1;

  private static final int CONTEXT = 3;
  private static final String NOTHING = "/dev/null";

  /** How the library has a hunk of an empty file begin; by POSIX it is at line 0. */
  private static final String FROM_NONE = "^@@ -1,0 \\+";

  private static final String NO_END = "\n\\ No newline at end of file";

  private UnifiedDiff() {}

  /**
   * The difference.
   *
   * @param name name of the file
   * @param before the file as it is; empty where there is none
   * @param after the file as it would be
   * @return the lines, each with its end; none where the two are equal
   */
  static byte[] of(String name, Optional<byte[]> before, byte[] after) {
    List<String> from = before.map(UnifiedDiff::lines).orElse(List.of());
    List<String> diff =
        UnifiedDiffUtils.generateUnifiedDiff(
            before.isPresent() ? "a/" + name : NOTHING,
            "b/" + name,
            from,
            DiffUtils.diff(from, lines(after)),
            CONTEXT);
    StringBuilder text = new StringBuilder();
    diff.forEach(line -> text.append(line.replaceFirst(FROM_NONE, "@@ -0,0 +")).append('\n'));
    return text.toString().getBytes(BYTES);
  }

  /** The lines without their line feeds; a last one without any is marked as diffs do. */
  private static List<String> lines(byte[] file) {
    String text = new String(file, BYTES);
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    String last = lines.remove(lines.size() - 1);
    if (!last.isEmpty()) {
      lines.add(last + NO_END);
    }
    return lines;
  }
}
