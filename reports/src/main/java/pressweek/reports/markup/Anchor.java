package pressweek.reports.markup;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Names of places in a page that links lead to. */
public final class Anchor {
  private Anchor() {}

  /**
   * The place of a run's row in the schedule; ids with unusual characters are written in
   * hexadecimal.
   */
  public static String run(String id) {
    return "run-" + (id.matches("[A-Za-z0-9_.-]+") ? id : hex(id));
  }

  private static String hex(String id) {
    return "x" + HexFormat.of().formatHex(id.getBytes(StandardCharsets.UTF_8));
  }
}
