package pressweek.data.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideRule.Verb;
import pressweek.data.guide.GuideWords;
import pressweek.data.guide.GuideWords.Phrase;

/** Gathers the vocabulary of a guide: what its words section, its tables and its symbols name. */
final class LexiconBuilder {
  /** Shorter symbols are looked for in capitals only. */
  private static final int ANY_CASE = 3;

  /** Values that name nothing by themselves. */
  private static final Set<String> NO_NAMES =
      Set.of("yes", "no", "true", "false", "none", "standard");

  private final Offer offer;
  private final PlantThreads threads;
  private final Map<String, Entry> plain = new LinkedHashMap<>();
  private final Map<String, Entry> comma = new LinkedHashMap<>();
  private final Map<String, List<Sense>> capitals = new HashMap<>();
  private final Set<String> words = new HashSet<>();
  private final Map<String, Set<String>> named = new HashMap<>();
  private final Map<String, List<Note>> turned = new LinkedHashMap<>();

  /** What is known of a phrase while it is gathered. */
  private static final class Entry {
    private final List<Map<String, String>> names = new ArrayList<>();
    private final List<Map<String, String>> values = new ArrayList<>();
    private final List<Phrase> everyday = new ArrayList<>();
    private final Set<String> measures = new LinkedHashSet<>();
    private boolean ignored;
  }

  private LexiconBuilder(Offer offer, PlantThreads threads) {
    this.offer = offer;
    this.threads = threads;
  }

  /** The vocabulary of a guide. */
  static Lexicon build(Offer offer, PlantThreads threads) {
    LexiconBuilder builder = new LexiconBuilder(offer, threads);
    GuideWords said = offer.guide().words();
    said.synonyms().forEach(builder::synonym);
    builder.tables();
    builder.marks();
    builder.rules();
    said.everyday().forEach(builder::everyday);
    said.measures().stream()
        .filter(measure -> !offer.isSecond(measure.attribute()))
        .forEach(builder::measure);
    said.ignore().forEach(word -> builder.put(word, entry -> entry.ignored = true));
    builder.addTurned();
    return new Lexicon(
        builder.senses(builder.plain),
        builder.senses(builder.comma),
        builder.capitals,
        builder.words,
        builder.named);
  }

  private interface Note {
    void on(Entry entry);
  }

  private void put(String phrase, Note note) {
    List<String> parts = parts(phrase);
    String key = String.join("", parts);
    if (key.isEmpty()) {
      return;
    }
    parts.stream().filter(LexiconBuilder::isWord).forEach(words::add);
    note.on(plain.computeIfAbsent(key, k -> new Entry()));
    if (phrase.indexOf(',') >= 0) {
      note.on(comma.computeIfAbsent(key, k -> new Entry()));
    }
    if (parts.size() > 1 && isWord(parts.get(parts.size() - 1))) {
      turned(parts, note);
    }
  }

  /**
   * The words of a phrase without plural s, and its numbers; a number behind another with a dash.
   */
  private static List<String> parts(String phrase) {
    Tokens tokens = Tokens.of(phrase);
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.at(i);
      if (token.isWord()) {
        parts.add(Stems.plural(token.text()));
      } else if (token.isNumber()) {
        boolean afterNumber = !parts.isEmpty() && !isWord(parts.get(parts.size() - 1));
        parts.add((afterNumber ? "-" : "") + token.text());
      }
    }
    return parts;
  }

  private static boolean isWord(String part) {
    return Character.isLetter(part.charAt(0));
  }

  /** As a list of parts has it: {@code handle, tapered} for {@code tapered handle}. */
  private void turned(List<String> parts, Note note) {
    int last = parts.size() - 1;
    String key = parts.get(last) + String.join("", parts.subList(0, last));
    turned.computeIfAbsent(key, k -> new ArrayList<>()).add(note);
  }

  private void addTurned() {
    Set<String> straight = Set.copyOf(plain.keySet());
    turned.forEach(
        (key, notes) -> {
          notes.forEach(note -> note.on(comma.computeIfAbsent(key, k -> new Entry())));
          if (!straight.contains(key)) {
            notes.forEach(note -> note.on(plain.computeIfAbsent(key, k -> new Entry())));
          }
        });
  }

  private void synonym(Phrase phrase) {
    phrase.words().forEach(word -> names(word, phrase.set()));
  }

  /** A phrase that names values. */
  private void names(String phrase, Map<String, String> set) {
    put(phrase, entry -> name(entry.names, set));
    List<String> parts = parts(phrase);
    set.forEach(
        (attribute, value) ->
            named
                .computeIfAbsent(Lexicon.key(attribute, value), k -> new HashSet<>())
                .addAll(parts));
  }

  private void everyday(Phrase phrase) {
    phrase.words().forEach(word -> put(word, entry -> entry.everyday.add(phrase)));
  }

  private void measure(GuideWords.Measure measure) {
    measure.words().forEach(word -> put(word, entry -> entry.measures.add(measure.attribute())));
  }

  private static void name(List<Map<String, String>> names, Map<String, String> set) {
    if (!names.contains(set)) {
      names.add(set);
    }
  }

  private void tables() {
    for (Field.Table table : offer.tables()) {
      if (!offer.isSecond(table.attribute())) {
        Map<String, Map<String, String>> shared = new LinkedHashMap<>();
        table.entries().forEach((symbol, entry) -> words(table, symbol, entry, shared));
        shared.forEach(
            (word, set) -> {
              if (!set.isEmpty()) {
                names(word, set);
              }
            });
        table.entries().keySet().forEach(symbol -> symbol(table, symbol));
        table.entries().forEach((symbol, entry) -> values(table, symbol, entry));
      }
    }
  }

  /** Words that several entries of a table share say what these have in common. */
  private static void words(
      Field.Table table,
      String symbol,
      Field.Entry entry,
      Map<String, Map<String, String>> shared) {
    Map<String, String> says = Offer.essential(table, symbol);
    for (String word : entry.words()) {
      shared.merge(
          word,
          new LinkedHashMap<>(says),
          (old, more) -> {
            old.entrySet().retainAll(entry.sets().entrySet());
            return old;
          });
    }
  }

  private void symbol(Field.Table table, String symbol) {
    if (!threads.attributes().contains(table.attribute())
        || !Character.isLetter(symbol.charAt(0))) {
      mark(symbol, Offer.essential(table, symbol));
      return;
    }
    // A symbol that reads as a thread is found as one.
    if (symbol.chars().filter(Character::isLetter).count() > 1
        || !symbol.toUpperCase(Locale.ROOT).startsWith("M")) {
      mark(symbol, Offer.essential(table, symbol));
    }
  }

  private void marks() {
    for (Form form : offer.forms()) {
      boolean text = form.pieces().stream().allMatch(piece -> piece instanceof Form.Literal);
      if (text && !form.sets().isEmpty()) {
        mark(form.text(), form.sets());
      }
      form.sets().forEach(this::value);
    }
  }

  /** Values that follow from rules, such as the kind of insert that a style always has. */
  private void rules() {
    Guide guide = offer.guide();
    Stream.concat(
            guide.sheet().rules().stream(),
            guide.families().stream().flatMap(family -> family.rules().stream()))
        .filter(rule -> rule.verb() == Verb.THEN || rule.verb() == Verb.DEFAULT)
        .flatMap(rule -> rule.what().stream())
        .filter(clause -> clause.values().get(0).chars().noneMatch(Character::isDigit))
        .forEach(clause -> value(clause.attribute(), clause.values().get(0)));
  }

  private void mark(String symbol, Map<String, String> says) {
    boolean letters = symbol.chars().allMatch(Character::isLetter);
    boolean some = symbol.chars().anyMatch(Character::isLetter);
    if (says.isEmpty() || symbol.length() < 2 || !some) {
      return;
    }
    boolean capitalsOnly =
        letters
            && (symbol.length() < ANY_CASE
                || OrdinaryWords.isOrdinary(symbol.toLowerCase(Locale.ROOT)));
    if (capitalsOnly) {
      capitals
          .computeIfAbsent(symbol.toUpperCase(Locale.ROOT), k -> new ArrayList<>())
          .add(new Sense(new Claim.Says(says, false), 0));
    } else {
      names(symbol, says);
    }
  }

  /** The values themselves, such as {@code star knob}. */
  private void values(Field.Table table, String symbol, Field.Entry entry) {
    entry
        .sets()
        .forEach(
            (attribute, value) -> {
              if (!(attribute.equals(table.attribute()) && value.equals(symbol))) {
                value(attribute, value);
              }
            });
  }

  private void value(String attribute, String value) {
    long letters = value.chars().filter(Character::isLetter).count();
    boolean grade = letters > 0 && value.chars().anyMatch(Character::isDigit);
    boolean named =
        (letters >= ANY_CASE || grade)
            && !NO_NAMES.contains(value.toLowerCase(Locale.ROOT))
            && !threads.attributes().contains(attribute)
            && !offer.isSecond(attribute);
    if (named) {
      put(value, entry -> name(entry.values, Map.of(attribute, value)));
    }
  }

  private Map<String, List<Sense>> senses(Map<String, Entry> entries) {
    Map<String, List<Sense>> senses = new HashMap<>();
    entries.forEach((key, entry) -> senses.put(key, List.copyOf(senses(entry))));
    return senses;
  }

  private List<Sense> senses(Entry entry) {
    List<Sense> senses = new ArrayList<>();
    entry.names.forEach(set -> senses.add(new Sense(new Claim.Says(set, false), 0)));
    for (Phrase phrase : entry.everyday) {
      senses.add(new Sense(usually(entry, phrase), entry.names.isEmpty() ? 0 : 2));
    }
    for (Map<String, String> value : entry.values) {
      boolean told =
          entry.names.stream().anyMatch(set -> set.entrySet().containsAll(value.entrySet()))
              || entry.everyday.stream()
                  .anyMatch(phrase -> phrase.set().entrySet().containsAll(value.entrySet()));
      if (!told) {
        senses.add(new Sense(new Claim.Says(value, false), senses.isEmpty() ? 0 : 1));
      }
    }
    if (!entry.measures.isEmpty()) {
      senses.add(
          new Sense(new Claim.MeasureWord(Set.copyOf(entry.measures)), senses.isEmpty() ? 0 : 2));
    }
    if (senses.isEmpty()) {
      senses.add(new Sense(new Claim.Nothing(), 0));
    }
    return senses;
  }

  /** An everyday name with what it does name: {@code steel} is steel, whatever its finish. */
  private Claim.Usually usually(Entry entry, Phrase phrase) {
    Map<String, String> named = new LinkedHashMap<>();
    entry.values.stream()
        .filter(value -> phrase.set().entrySet().containsAll(value.entrySet()))
        .forEach(named::putAll);
    Map<String, String> rest = new LinkedHashMap<>(phrase.set());
    rest.keySet().removeAll(named.keySet());
    return new Claim.Usually(
        named, rest, phrase.when(), phrase.because(), alike(phrase), entry.ignored);
  }

  private List<Set<String>> alike(Phrase phrase) {
    List<Set<String>> alike = new ArrayList<>();
    for (String word : phrase.words()) {
      List<String> parts = parts(word);
      Entry entry = plain.get(String.join("", parts));
      if (entry != null && !entry.values.isEmpty()) {
        return List.of();
      }
      alike.add(Set.copyOf(parts));
    }
    return alike;
  }
}
