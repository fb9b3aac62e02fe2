package pressweek.data.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.GuideRule.Clause;

/** What a piece of the words can say. */
sealed interface Claim {
  /**
   * Values that it names.
   *
   * @param values values by attribute
   * @param code true when it is a whole item code
   */
  record Says(Map<String, String> values, boolean code) implements Claim {
    public Says {
      values = ordered(values);
    }
  }

  /**
   * A name that does not name one thing.
   *
   * @param values what it does name
   * @param usual what it is usually meant to be
   * @param when what it holds for
   * @param because the reason that people read
   * @param alike other names for the same, each by its words; none when one of them names a value
   * @param weak true when it may as well say nothing
   */
  record Usually(
      Map<String, String> values,
      Map<String, String> usual,
      List<Clause> when,
      String because,
      List<Set<String>> alike,
      boolean weak)
      implements Claim {
    public Usually {
      values = ordered(values);
      usual = ordered(usual);
      when = List.copyOf(when);
      alike = List.copyOf(alike);
    }
  }

  /** A word that tells which length a number beside it is. */
  record MeasureWord(Set<String> attributes) implements Claim {}

  /** A number whose sense depends on what stands around it. */
  record Raw(Measured number) implements Claim {}

  /** A number that is a length. */
  record Length(String attribute, Measured number) implements Claim {}

  /** A thread. */
  record Threaded(Cut cut) implements Claim {}

  /** A number of pieces. */
  record Count(String pieces) implements Claim {}

  /** A word of courtesy, or one that joins others. */
  record Nothing() implements Claim {}

  /** It says nothing that is known here. */
  record Unknown() implements Claim {}

  private static Map<String, String> ordered(Map<String, String> values) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }
}
