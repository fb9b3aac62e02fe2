package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Choice;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideWords.Phrase;
import pressweek.data.guide.Part;
import pressweek.data.guide.Picked;

/** What a guide's attributes and values are called in the guide's own words. */
final class Phrasebook {
  private static final String YES = "yes";

  /** How attributes of another insert in the same part begin. */
  private static final String SECOND = "second_";

  private static final String SECOND_WORD = "second ";

  private final Map<Map<String, String>, String> byMeaning = new HashMap<>();
  private final Map<Map<String, String>, List<String>> others = new HashMap<>();

  Phrasebook(Guide guide) {
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        for (Field.Entry entry : table.entries().values()) {
          if (!entry.display().isEmpty()) {
            byMeaning.putIfAbsent(entry.sets(), entry.display());
          }
          others.computeIfAbsent(entry.sets(), k -> new ArrayList<>()).addAll(entry.words());
        }
      }
    }
    for (Phrase phrase : guide.words().synonyms()) {
      byMeaning.putIfAbsent(phrase.set(), best(phrase));
      others.computeIfAbsent(phrase.set(), k -> new ArrayList<>()).addAll(phrase.words());
    }
    for (Family family : guide.families()) {
      for (Part part : family.parts()) {
        for (Form form : part.forms()) {
          if (form.fields().isEmpty() && form.sets().containsValue(YES)) {
            byMeaning.put(form.sets(), part.name());
          }
        }
      }
    }
  }

  /** The word that names the attribute, too: {@code solid hub} rather than {@code solid}. */
  private static String best(Phrase phrase) {
    return phrase.words().stream()
        .filter(word -> phrase.set().keySet().stream().anyMatch(word::contains))
        .findFirst()
        .orElse(phrase.words().get(0));
  }

  /** A name without what joins its words: {@code insert kind}. */
  static String plain(String name) {
    return name.replace('_', ' ').strip();
  }

  /** What an attribute is called. */
  String attribute(String name) {
    String plain = plain(name);
    boolean measured = name.endsWith("_mm") || name.endsWith("_in");
    return measured ? plain.substring(0, plain.length() - 3) : plain;
  }

  /** What a value of an attribute is called, so that it can stand alone. */
  String value(String attribute, String value) {
    String words = byMeaning.get(Map.of(attribute, value));
    if (words != null) {
      return words;
    }
    String name = attribute(attribute);
    if (attribute.startsWith(SECOND)) {
      return SECOND_WORD + value(attribute.substring(SECOND.length()), value);
    }
    if (value.equals(YES)) {
      return name;
    }
    if (!unit(attribute).isEmpty()) {
      return name + " " + value + unit(attribute);
    }
    boolean bare = value.matches("[a-z]+") && name.indexOf(' ') < 0;
    return bare || value.matches("\\d+") ? value + " " + name : value;
  }

  private static String unit(String attribute) {
    return attribute.endsWith("_mm") ? " mm" : attribute.endsWith("_in") ? " in" : "";
  }

  /** Words without the name of their attribute behind them. */
  private List<String> alone(String attribute, List<String> words) {
    String name = " " + attribute(attribute);
    return words.stream()
        .map(word -> word.endsWith(name) ? word.substring(0, word.length() - name.length()) : word)
        .toList();
  }

  /** Several values of an attribute, of which an item has one. */
  String values(String attribute, List<String> values) {
    if (unit(attribute).isEmpty()) {
      List<String> words = values.stream().map(value -> value(attribute, value)).toList();
      boolean bare = words.stream().anyMatch(word -> !word.endsWith(" " + attribute(attribute)));
      return or(bare && words.size() > 1 ? alone(attribute, words) : words);
    }
    return attribute(attribute) + " " + or(values) + unit(attribute);
  }

  /** What a symbol is called. */
  String symbol(Field field, Choice choice) {
    if (choice.symbol().isEmpty()) {
      return choice.sets().isEmpty() ? "standard" : "no " + attribute(field.attribute());
    }
    return field instanceof Field.Special
        ? field.name() + " " + choice.symbol()
        : meaning(choice.sets());
  }

  /** What a symbol is called under the heading of its own field. */
  String underItsField(Field field, Choice choice) {
    String words = symbol(field, choice);
    return words.startsWith(SECOND_WORD) ? words.substring(SECOND_WORD.length()) : words;
  }

  /** What values are called together. */
  String meaning(Map<String, String> sets) {
    String words = byMeaning.get(sets);
    return words == null ? String.join(", ", singly(sets)) : words;
  }

  private List<String> singly(Map<String, String> sets) {
    List<String> words = new ArrayList<>();
    sets.forEach(
        (name, value) -> words.add(value.isEmpty() ? "no " + attribute(name) : value(name, value)));
    return words;
  }

  /** Other words for the same; none when there are none. */
  List<String> synonyms(Map<String, String> sets) {
    return others.getOrDefault(sets, List.of()).stream().distinct().sorted().toList();
  }

  /** What a part of a code says: what its form says first, then field by field. */
  String part(Picked part) {
    List<String> words = new ArrayList<>();
    List<Field> fields = part.form().fields();
    for (int i = 0; i < fields.size(); i++) {
      words.add(symbol(fields.get(i), part.choices().get(i)));
    }
    return part(part.form(), words);
  }

  /** What a form says, and what its fields say; of a second insert is spoken last. */
  String part(Form form, List<String> fieldWords) {
    List<String> words = new ArrayList<>(fieldWords);
    if (!form.sets().isEmpty()) {
      boolean second = form.sets().keySet().stream().anyMatch(name -> name.startsWith(SECOND));
      words.add(second ? words.size() : 0, meaning(form.sets()));
    }
    return String.join(", ", words);
  }

  /** Texts with commas and a last "or"; a last word that all share is said once. */
  static String or(List<String> texts) {
    List<String> distinct = new ArrayList<>(new LinkedHashSet<>(texts));
    if (distinct.size() < 2) {
      return String.join("", distinct);
    }
    Set<String> lasts = new HashSet<>();
    distinct.forEach(text -> lasts.add(text.substring(text.lastIndexOf(' ') + 1)));
    boolean shared = lasts.size() == 1 && distinct.stream().allMatch(t -> t.matches("\\S+ \\S+"));
    for (int i = 0; shared && i + 1 < distinct.size(); i++) {
      distinct.set(i, distinct.get(i).substring(0, distinct.get(i).lastIndexOf(' ')));
    }
    int last = distinct.size() - 1;
    if (last > 1 && distinct.stream().anyMatch(text -> text.contains(", "))) {
      return String.join("; ", distinct.subList(0, last)) + "; or " + distinct.get(last);
    }
    return String.join(", ", distinct.subList(0, last)) + " or " + distinct.get(last);
  }

  /** A text that begins with a capital. */
  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
