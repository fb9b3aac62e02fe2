package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.JsonTree;
import pressweek.data.guide.GuideWords.Measure;
import pressweek.data.guide.GuideWords.Phrase;

/** Reads the key {@code words} of a guide. */
final class PhraseReader {
  private static final Set<String> KEYS =
      Set.of("measures", "synonyms", "everyday", "assume", "ignore", "nearest_pct");
  private static final BigDecimal HUNDRED = new BigDecimal("100");

  private final JsonNotes notes;
  private final RuleReader rules;

  PhraseReader(JsonNotes notes, RuleReader rules) {
    this.notes = notes;
    this.rules = rules;
  }

  GuideWords read(JsonTree.Obj root) {
    JsonTree.Obj words = notes.object(root, "words");
    notes.onlyKeys(words, KEYS);
    return new GuideWords(
        measures(words),
        phrases(words, "synonyms", Set.of("words", "set")),
        phrases(words, "everyday", Set.of("words", "set", "when", "because")),
        phrases(words, "assume", Set.of("set", "when", "because")),
        new HashSet<>(notes.textOrList(words, "ignore")),
        nearest(words));
  }

  private BigDecimal nearest(JsonTree.Obj words) {
    BigDecimal pct = notes.number(words, "nearest_pct").orElse(GuideWords.NEAREST_PCT);
    if (pct.signum() < 0 || pct.compareTo(HUNDRED) > 0) {
      notes.error(
          words.line(), "nearest_pct", "nearest_pct is " + pct + "; expected a number 0 to 100");
    }
    return pct;
  }

  private List<Measure> measures(JsonTree.Obj words) {
    List<Measure> measures = new ArrayList<>();
    for (JsonTree value : notes.list(words, "measures")) {
      notes
          .object(value, "measures")
          .ifPresent(
              object -> {
                notes.onlyKeys(object, Set.of("attribute", "words", "after_thread"));
                String attribute = notes.text(object, "attribute");
                if (!attribute.endsWith("_mm") && !attribute.endsWith("_in")) {
                  notes.error(
                      object.line(),
                      "attribute",
                      "measure \""
                          + attribute
                          + "\"; expected an attribute that ends in _mm or _in");
                }
                measures.add(
                    new Measure(
                        attribute,
                        notes.textOrList(object, "words"),
                        notes.flag(object, "after_thread"),
                        object.line()));
              });
    }
    return measures;
  }

  private List<Phrase> phrases(JsonTree.Obj words, String key, Set<String> keys) {
    List<Phrase> phrases = new ArrayList<>();
    for (JsonTree value : notes.list(words, key)) {
      notes
          .object(value, key)
          .ifPresent(
              object -> {
                notes.onlyKeys(object, keys);
                phrases.add(phrase(key, keys, object));
              });
    }
    return phrases;
  }

  private Phrase phrase(String key, Set<String> keys, JsonTree.Obj object) {
    List<String> said = notes.textOrList(object, "words");
    if (keys.contains("words") && said.isEmpty()) {
      notes.error(object.line(), "words", key + " without \"words\"; expected a list of them");
    }
    Map<String, String> set = notes.texts(notes.object(object, "set"));
    if (set.isEmpty()) {
      notes.error(object.line(), "set", key + " without \"set\"; expected attributes");
    }
    return new Phrase(
        said, rules.clauses(object, "when"), set, notes.text(object, "because"), object.line());
  }
}
