package pressweek.data.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.problem.Mold;

/**
 * Reads the column {@code runs_on}: presses with what the plant has recorded about the mold on
 * them.
 */
final class RunsOnReader {
  private static final String COLUMN = "runs_on";

  private final Fields fields;
  private final List<String> proven = new ArrayList<>();
  private final List<String> allowed = new ArrayList<>();
  private final List<String> never = new ArrayList<>();
  private String preferredPress = "";

  private RunsOnReader(Fields fields) {
    this.fields = fields;
  }

  /** The record of presses in a row of {@code molds.csv}. */
  static Mold.RunsOn read(Fields fields) {
    RunsOnReader reader = new RunsOnReader(fields);
    fields.list(COLUMN).forEach(reader::take);
    return new Mold.RunsOn(reader.proven, reader.allowed, reader.never, reader.preferred());
  }

  private Optional<String> preferred() {
    return preferredPress.isEmpty() ? Optional.empty() : Optional.of(preferredPress);
  }

  private void take(String text) {
    int colon = text.lastIndexOf(':');
    String press = colon < 0 ? text : text.substring(0, colon).strip();
    String word =
        colon < 0 ? "allowed" : text.substring(colon + 1).strip().toLowerCase(Locale.ROOT);
    boolean twice = proven.contains(press) || allowed.contains(press) || never.contains(press);
    if (press.isEmpty() || twice) {
      fault("twice", text, "each press once");
      return;
    }
    switch (word) {
      case "proven" -> proven.add(press);
      case "allowed" -> allowed.add(press);
      case "never" -> never.add(press);
      case "preferred" -> prefer(press, text);
      default -> fault("word", text, "press:proven, :allowed, :never or :preferred");
    }
  }

  private void prefer(String press, String text) {
    if (!preferredPress.isEmpty()) {
      fault("preferred", text, "one preferred press");
    }
    proven.add(press);
    preferredPress = press;
  }

  private void fault(String kind, String text, String expected) {
    fields.fault(COLUMN, kind, fields.seen(COLUMN) + " has \"" + text + "\"; expected " + expected);
  }
}
