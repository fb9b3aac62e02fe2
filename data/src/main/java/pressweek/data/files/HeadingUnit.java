package pressweek.data.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A heading without the unit that it names.
 *
 * @param words the heading's words, plain, without the unit
 * @param suffix the unit as it ends a column's name, for example {@code _oz}; empty when the
 *     heading names none
 * @param known false when it names a unit that no column may have
 */
record HeadingUnit(String words, Optional<String> suffix, boolean known) {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("kn", "_kn"),
          Map.entry("ton us", "_ton_us"),
          Map.entry("tons us", "_ton_us"),
          Map.entry("us ton", "_ton_us"),
          Map.entry("us tons", "_ton_us"),
          Map.entry("short tons", "_ton_us"),
          Map.entry("metric tons", "_ton_metric"),
          Map.entry("metric ton", "_ton_metric"),
          Map.entry("long tons", "_ton_uk"),
          Map.entry("uk tons", "_ton_uk"),
          Map.entry("g", "_g"),
          Map.entry("gr", "_g"),
          Map.entry("gram", "_g"),
          Map.entry("grams", "_g"),
          Map.entry("gramm", "_g"),
          Map.entry("oz", "_oz"),
          Map.entry("ounces", "_oz"),
          Map.entry("lb", "_lb"),
          Map.entry("lbs", "_lb"),
          Map.entry("pounds", "_lb"),
          Map.entry("kg", "_kg"),
          Map.entry("mm", "_mm"),
          Map.entry("in", "_in"),
          Map.entry("inch", "_in"),
          Map.entry("inches", "_in"),
          Map.entry("\"", "_in"),
          Map.entry("cm2", "_cm2"),
          Map.entry("cm²", "_cm2"),
          Map.entry("sq cm", "_cm2"),
          Map.entry("in2", "_in2"),
          Map.entry("in²", "_in2"),
          Map.entry("sq in", "_in2"),
          Map.entry("c", "_c"),
          Map.entry("°c", "_c"),
          Map.entry("deg c", "_c"),
          Map.entry("f", "_f"),
          Map.entry("°f", "_f"),
          Map.entry("deg f", "_f"));

  private static final List<String> UNKNOWN =
      List.of("cm", "m", "ft", "mg", "n", "mn", "lbf", "dan", "k", "°k");

  /** Splits a plain heading; the unit is its last word or its last two. */
  static HeadingUnit of(String plain) {
    List<String> words = new ArrayList<>(Arrays.asList(plain.split(" ")));
    for (int length = 2; length > 0; length--) {
      if (words.size() > length) {
        List<String> rest = words.subList(0, words.size() - length);
        String last = String.join(" ", words.subList(words.size() - length, words.size()));
        if (WORDS.containsKey(last)) {
          return new HeadingUnit(
              String.join(" ", rest), Optional.of(WORDS.getOrDefault(last, "")), true);
        }
        if (UNKNOWN.contains(last)) {
          return new HeadingUnit(String.join(" ", rest), Optional.empty(), false);
        }
      }
    }
    return new HeadingUnit(plain, Optional.empty(), true);
  }
}
