package pressweek.app.sweep;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Settings;

/**
 * A plan to be made: all that its result depends on.
 *
 * @param problem SHA-256 of the text of its problem, hexadecimal
 * @param steps steps of the search
 * @param seed seed of the search
 * @param luck SHA-256 of the text of the uncertainty under which it is replayed; empty for none
 * @param replaying how often it is replayed
 */
record SweepTask(String problem, int steps, long seed, String luck, Replaying replaying) {
  private static final String KIND = "plan";
  private static final int WORDS = 3;
  private static final int WORDS_WITH_REPLAYS = 6;

  /** A task without replays. */
  SweepTask(String problem, int steps, long seed) {
    this(problem, steps, seed, "", Replaying.NONE);
  }

  /**
   * What the task is known by: tasks that are alike have the same. Without replays it is what it
   * was before there were any, so that older results are still found.
   */
  String key() {
    return sha256(PlanFile.SCHEMA + "\n" + KIND + "\n" + String.join("\n", words()));
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    words.addAll(List.of(problem, Integer.toString(steps), Long.toString(seed)));
    if (replaying.isAsked()) {
      words.add(luck);
      words.add(Integer.toString(replaying.count()));
      words.add(Long.toString(replaying.seed()));
    }
    return words;
  }

  Settings settings() {
    return new Settings(0, steps, seed);
  }

  /** The task as the queue keeps it: three words, or six with replays. */
  String text() {
    return String.join(" ", words());
  }

  /** The task of a text. */
  static SweepTask of(String text) {
    String[] words = text.split(" ");
    if (words.length != WORDS && words.length != WORDS_WITH_REPLAYS) {
      throw new IllegalArgumentException("no task of a sweep: " + text);
    }
    int steps = Integer.parseInt(words[1]);
    long seed = Long.parseLong(words[2]);
    return words.length == WORDS
        ? new SweepTask(words[0], steps, seed)
        : new SweepTask(
            words[0],
            steps,
            seed,
            words[3],
            new Replaying(Integer.parseInt(words[4]), Long.parseLong(words[5])));
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
