package pressweek.app.sweep;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Settings;

/**
 * A plan to be made: all that its result depends on.
 *
 * @param problem SHA-256 of the text of its problem, hexadecimal
 * @param steps steps of the search
 * @param seed seed of the search
 */
record SweepTask(String problem, int steps, long seed) {
  private static final String KIND = "plan";

  /** What the task is known by: tasks that are alike have the same. */
  String key() {
    return sha256(
        String.join(
            "\n", PlanFile.SCHEMA, KIND, problem, Integer.toString(steps), Long.toString(seed)));
  }

  Settings settings() {
    return new Settings(0, steps, seed);
  }

  /** The task as the queue keeps it: three words. */
  String text() {
    return problem + " " + steps + " " + seed;
  }

  /** The task of a text. */
  static SweepTask of(String text) {
    String[] words = text.split(" ");
    if (words.length != 3) {
      throw new IllegalArgumentException("no task of a sweep: " + text);
    }
    return new SweepTask(words[0], Integer.parseInt(words[1]), Long.parseLong(words[2]));
  }

  /** SHA-256 of a text in UTF-8, hexadecimal. */
  static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
