package pressweek.data.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pressweek.data.guide.Field;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideWords;
import pressweek.data.guide.GuideWords.Phrase;
import pressweek.data.guide.Quest;

/** Looks for words that mean two things, and for words and assumptions that lead nowhere. */
final class WordTrial {
  private static final String SECOND = "second_";

  private final Bench bench;
  private final Vocabulary vocabulary;
  private final GuideWords words;

  /** What a word means by a line of the guide. */
  private record Claim(Map<String, String> set, int line, String by) {}

  WordTrial(Bench bench, Vocabulary vocabulary) {
    this.bench = bench;
    this.vocabulary = vocabulary;
    this.words = bench.guide().words();
  }

  void run() {
    claims().forEach(this::word);
    Stream.of(words.synonyms(), words.everyday(), words.assume())
        .flatMap(List::stream)
        .forEach(this::known);
    words
        .measures()
        .forEach(
            measure ->
                vocabulary
                    .unknown(measure.attribute(), "*")
                    .ifPresent(fault -> bench.warning(measure.line(), "measure: " + fault)));
    words.everyday().forEach(phrase -> usable(phrase, "everyday word " + some(phrase)));
    for (int i = 0; i < words.assume().size(); i++) {
      Phrase phrase = words.assume().get(i);
      if (!covered(words.assume().subList(0, i), phrase)) {
        usable(phrase, "the assumption " + shown(phrase.set()));
      }
    }
  }

  /** What is claimed for each word, by its small letters. */
  private Map<String, List<Claim>> claims() {
    Map<String, List<Claim>> claims = new LinkedHashMap<>();
    for (Field field : bench.guide().sheet().fields()) {
      if (field instanceof Field.Table table) {
        table
            .entries()
            .forEach(
                (symbol, entry) ->
                    entry
                        .words()
                        .forEach(
                            word ->
                                claim(
                                    claims,
                                    word,
                                    new Claim(
                                        entry.sets(),
                                        entry.line(),
                                        "symbol \"" + symbol + "\" of \"" + field.name() + '"'))));
      }
    }
    Map<String, List<Phrase>> phrases = new LinkedHashMap<>();
    phrases.put("a synonym", words.synonyms());
    phrases.put("everyday words", words.everyday());
    phrases.forEach(
        (by, all) ->
            all.forEach(
                phrase ->
                    phrase
                        .words()
                        .forEach(
                            word ->
                                claim(claims, word, new Claim(phrase.set(), phrase.line(), by)))));
    return claims;
  }

  private static void claim(Map<String, List<Claim>> claims, String word, Claim claim) {
    String key = word.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    claims.computeIfAbsent(key, k -> new ArrayList<>()).add(claim);
  }

  private void word(String word, List<Claim> claims) {
    for (int i = 1; i < claims.size(); i++) {
      Claim claim = claims.get(i);
      for (Claim earlier : claims.subList(0, i)) {
        if (differ(earlier.set(), claim.set())) {
          bench.warning(
              claim.line(),
              "\"%s\" means %s (%s) and also %s (%s, line %d)"
                  .formatted(
                      word,
                      shown(claim.set()),
                      claim.by(),
                      shown(earlier.set()),
                      earlier.by(),
                      earlier.line()));
          return;
        }
      }
    }
  }

  /**
   * True when two meanings exclude each other. One that says more than the other does not, and what
   * is said of a second insert may have the words of the first.
   */
  private static boolean differ(Map<String, String> one, Map<String, String> other) {
    Map<String, String> a = first(one);
    Map<String, String> b = first(other);
    return !a.entrySet().containsAll(b.entrySet()) && !b.entrySet().containsAll(a.entrySet());
  }

  private static Map<String, String> first(Map<String, String> set) {
    Map<String, String> first = new LinkedHashMap<>();
    set.forEach(
        (name, value) ->
            first.put(name.startsWith(SECOND) ? name.substring(SECOND.length()) : name, value));
    return first;
  }

  private void known(Phrase phrase) {
    phrase
        .set()
        .forEach(
            (name, value) ->
                vocabulary
                    .unknown(name, value)
                    .ifPresent(fault -> bench.warning(phrase.line(), about(phrase) + fault)));
    vocabulary
        .unknown(phrase.when())
        .ifPresent(fault -> bench.warning(phrase.line(), about(phrase) + fault));
  }

  private static String about(Phrase phrase) {
    return phrase.words().isEmpty() ? "assumption: " : some(phrase) + ": ";
  }

  private static String some(Phrase phrase) {
    return '"' + phrase.words().get(0) + '"' + (phrase.words().size() > 1 ? " ..." : "");
  }

  /** True, and told, when earlier assumptions always come first. */
  private boolean covered(List<Phrase> earlier, Phrase phrase) {
    for (Phrase other : earlier) {
      boolean always = other.when().isEmpty() || other.when().equals(phrase.when());
      if (always && other.set().keySet().containsAll(phrase.set().keySet())) {
        bench.warning(
            phrase.line(),
            "the assumption %s is never used: line %d comes first"
                .formatted(shown(phrase.set()), other.line()));
        return true;
      }
    }
    return false;
  }

  /** Tells when no good code has what a phrase asks for together with what it sets. */
  private void usable(Phrase phrase, String what) {
    boolean faulty =
        vocabulary.unknown(phrase.when()).isPresent()
            || phrase.set().entrySet().stream()
                .anyMatch(set -> vocabulary.unknown(set.getKey(), set.getValue()).isPresent());
    List<Clause> when =
        phrase.when().stream().filter(clause -> !clause.values().contains("")).toList();
    if (faulty || phrase.when().isEmpty()) {
      return;
    }
    List<Clause> both = new ArrayList<>(when);
    phrase
        .set()
        .forEach(
            (name, value) -> both.add(new Clause(name, List.of(vocabulary.spelled(name, value)))));
    if (bench.find(bench.guide().families(), Quest.goodWhere(both)).none()) {
      boolean never = bench.find(bench.guide().families(), Quest.goodWhere(when)).none();
      String conditions = String.join(", ", when.stream().map(Clause::toString).toList());
      bench.warning(
          phrase.line(),
          what
              + (never
                  ? " can never be used: no item has " + conditions
                  : " can never be used: no good code says it of " + conditions));
    }
  }

  private static String shown(Map<String, String> set) {
    return set.entrySet().stream()
        .map(entry -> (entry.getKey() + " " + entry.getValue()).strip())
        .collect(Collectors.joining(", "));
  }
}
