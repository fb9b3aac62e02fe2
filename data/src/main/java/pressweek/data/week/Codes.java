package pressweek.data.week;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Guide;

/** How the plant writes its item codes. */
final class Codes {
  private final UnaryOperator<String> spelling;
  private final Function<String, Decoded> meaning;
  private final Map<String, String> keys = new HashMap<>();

  /**
   * The codes of a plant.
   *
   * @param guide its guide; empty when a code is only a name
   */
  Codes(Optional<Guide> guide) {
    spelling = guide.map(Codes::spelling).orElse(UnaryOperator.identity());
    meaning = guide.map(Codes::meaning).orElse(Codes::name);
  }

  /** What a code is looked up by: one spelling for all spellings of an item. */
  String key(String code) {
    return keys.computeIfAbsent(code, spelling);
  }

  private static UnaryOperator<String> spelling(Guide guide) {
    return code -> {
      String canonical = guide.encoder().canonical(code);
      return guide.ignoreCase() ? canonical.toUpperCase(Locale.ROOT) : canonical;
    };
  }

  private static Function<String, Decoded> meaning(Guide guide) {
    return guide::decode;
  }

  private static Decoded name(String code) {
    return new Decoded(code, "", List.of(), List.of(), false);
  }

  /** What a code means; a mere name means nothing, and nothing is wrong with it. */
  Decoded decode(String code) {
    return meaning.apply(code);
  }
}
