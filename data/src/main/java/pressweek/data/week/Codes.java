package pressweek.data.week;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Guide;

/** How the plant writes its item codes. */
final class Codes {
  private final Optional<Guide> guide;
  private final Map<String, String> keys = new HashMap<>();

  /**
   * The codes of a plant.
   *
   * @param guide its guide; empty when a code is only a name
   */
  Codes(Optional<Guide> guide) {
    this.guide = guide;
  }

  /** What a code is looked up by: one spelling for all spellings of an item. */
  String key(String code) {
    return guide.map(g -> keys.computeIfAbsent(code, text -> key(g, text))).orElse(code);
  }

  private static String key(Guide guide, String code) {
    String canonical = guide.encoder().canonical(code);
    return guide.ignoreCase() ? canonical.toUpperCase(Locale.ROOT) : canonical;
  }

  /** What a code means; a mere name means nothing, and nothing is wrong with it. */
  Decoded decode(String code) {
    Decoded name = new Decoded(code, "", List.of(), List.of(), false);
    return guide.map(g -> g.decode(code)).orElse(name);
  }
}
