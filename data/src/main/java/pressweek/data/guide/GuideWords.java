package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How people name what the codes say: for the reader of words, never for codes.
 *
 * @param measures attributes that are lengths
 * @param synonyms plain names
 * @param everyday names that do not name one thing; what they are read as is said
 * @param assume what is assumed where nothing is said, in order; what is assumed is said
 * @param ignore words without a meaning
 * @param nearestPct how far a length may be from one that the plant makes and still be taken for
 *     it, percent
 */
public record GuideWords(
    List<Measure> measures,
    List<Phrase> synonyms,
    List<Phrase> everyday,
    List<Phrase> assume,
    Set<String> ignore,
    BigDecimal nearestPct) {
  /** Near enough for a plant whose guide does not say: 2 in for 50 mm, but not 3/4 in for 20 mm. */
  static final BigDecimal NEAREST_PCT = new BigDecimal("3");

  public GuideWords {
    measures = List.copyOf(measures);
    synonyms = List.copyOf(synonyms);
    everyday = List.copyOf(everyday);
    assume = List.copyOf(assume);
    ignore = Set.copyOf(ignore);
  }

  /**
   * An attribute that is a length.
   *
   * @param attribute attribute; its name ends in {@code _mm} or {@code _in}
   * @param words words beside a number which say that it is this one
   * @param afterThread true for the number behind a thread
   * @param line line of the guide
   */
  public record Measure(String attribute, List<String> words, boolean afterThread, int line) {
    public Measure {
      words = List.copyOf(words);
    }
  }

  /**
   * Words and what they mean; without words, what is assumed.
   *
   * @param words ways to say it
   * @param when what must hold of the item; empty for always
   * @param set values by attribute
   * @param because the reason that people read; may be empty
   * @param line line of the guide
   */
  public record Phrase(
      List<String> words,
      List<GuideRule.Clause> when,
      Map<String, String> set,
      String because,
      int line) {
    public Phrase {
      words = List.copyOf(words);
      when = List.copyOf(when);
      set = Collections.unmodifiableMap(new LinkedHashMap<>(set));
    }
  }
}
