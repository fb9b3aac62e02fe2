package pressweek.data.week;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Guide;

/**
 * How the plant writes its item codes.
 *
 * @param guide its guide; empty when a code is only a name
 */
record Codes(Optional<Guide> guide) {
  /** What a code is looked up by: the guide may say that capitals do not matter. */
  String key(String code) {
    return guide.map(Guide::ignoreCase).orElse(false) ? code.toUpperCase(Locale.ROOT) : code;
  }

  /** What a code means; a mere name means nothing, and nothing is wrong with it. */
  Decoded decode(String code) {
    Decoded name = new Decoded(code, "", List.of(), List.of(), false);
    return guide.map(g -> g.decode(code)).orElse(name);
  }
}
