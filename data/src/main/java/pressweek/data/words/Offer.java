package pressweek.data.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideRule;
import pressweek.data.guide.Part;

/** What the codes of a plant can say, for looking up. */
final class Offer {
  /**
   * An item can have a second insert; its attributes are those of the first with this before them.
   */
  static final String SECOND = "second_";

  private final Guide guide;
  private final List<Field.Table> tables = new ArrayList<>();
  private final List<Field.Number> numbers = new ArrayList<>();
  private final List<Form> forms = new ArrayList<>();
  private final Set<String> attributes = new LinkedHashSet<>();
  private final Map<String, Beside> besides = new HashMap<>();

  Offer(Guide guide) {
    this.guide = guide;
    for (Family family : guide.families()) {
      for (Part part : family.parts()) {
        part.forms().stream().filter(form -> !forms.contains(form)).forEach(this::add);
      }
      family.rules().forEach(this::besides);
    }
    guide.sheet().rules().forEach(this::besides);
  }

  private void add(Form form) {
    forms.add(form);
    besides(form);
    attributes.addAll(form.sets().keySet());
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Form.Slot slot) {
        if (slot.field() instanceof Field.Table table && !tables.contains(table)) {
          tables.add(table);
          for (Field.Entry entry : table.entries().values()) {
            attributes.addAll(entry.sets().keySet());
            besides(entry.sets(), entry.sets().keySet());
          }
        } else if (slot.field() instanceof Field.Number number && !numbers.contains(number)) {
          numbers.add(number);
          attributes.add(number.attribute());
        }
      }
    }
  }

  Guide guide() {
    return guide;
  }

  List<Field.Table> tables() {
    return tables;
  }

  List<Field.Number> numbers() {
    return numbers;
  }

  List<Form> forms() {
    return forms;
  }

  /** Every attribute that a code can say. */
  Set<String> attributes() {
    return attributes;
  }

  /** True for an attribute of the second insert. */
  boolean isSecond(String attribute) {
    return attribute.startsWith(SECOND)
        && attributes.contains(attribute.substring(SECOND.length()));
  }

  /** True for an attribute that a second insert has, too. */
  boolean isFirst(String attribute) {
    return attributes.contains(attribute) && attributes.contains(SECOND + attribute);
  }

  /**
   * What an entry says without its own symbol, where that alone tells it from the others of its
   * table.
   */
  static Map<String, String> essential(Field.Table table, String symbol) {
    Field.Entry entry = table.entries().get(symbol);
    if (entry == null) {
      return Map.of();
    }
    Map<String, String> rest = new LinkedHashMap<>(entry.sets());
    rest.remove(table.attribute(), symbol);
    boolean told =
        !rest.isEmpty()
            && table.entries().values().stream().filter(other -> agrees(other, rest)).count() == 1;
    return told ? rest : entry.sets();
  }

  private static boolean agrees(Field.Entry entry, Map<String, String> said) {
    return said.entrySet().stream()
        .allMatch(value -> value.getValue().equals(entry.sets().get(value.getKey())));
  }

  /** A value as people read it: the first of its words with the symbol, or itself with its unit. */
  String display(String attribute, String value) {
    for (Field.Table table : tables) {
      Field.Entry entry = table.entries().get(value);
      if (table.attribute().equals(attribute)
          && entry != null
          && !entry.words().isEmpty()
          && value.equals(entry.sets().get(attribute))) {
        String word = entry.words().get(0);
        return word.equals(value) ? value : word + " (" + value + ")";
      }
    }
    return Labels.value(attribute, value);
  }

  /** True when a value is the mere symbol of an entry that says other things, too. */
  boolean isOwnSymbol(String attribute, String value) {
    for (Field.Table table : tables) {
      Field.Entry entry = table.entries().get(value);
      if (table.attribute().equals(attribute) && entry != null && entry.sets().size() > 1) {
        return value.equals(entry.sets().get(attribute));
      }
    }
    return false;
  }

  /** True when one entry of a table says both. */
  boolean inOneTable(String a, String b) {
    return tables.stream()
        .anyMatch(
            table ->
                table.entries().values().stream()
                    .anyMatch(e -> e.sets().containsKey(a) && e.sets().containsKey(b)));
  }

  /** What an attribute can be by the tables, beside what is known; each value once. */
  Set<String> values(String attribute, Map<String, String> known) {
    Set<String> values = new LinkedHashSet<>();
    for (Field.Table table : tables) {
      for (Field.Entry entry : table.entries().values()) {
        String value = entry.sets().get(attribute);
        if (value != null && !value.isEmpty() && agree(entry.sets(), attribute, known)) {
          values.add(value);
        }
      }
    }
    return values;
  }

  /** True when what is known says nothing else than an entry, but for one attribute. */
  static boolean agree(Map<String, String> sets, String but, Map<String, String> known) {
    for (Map.Entry<String, String> said : sets.entrySet()) {
      String other = known.get(said.getKey());
      if (other != null && !said.getKey().equals(but) && !other.equals(said.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** True when one symbol or one part of a code says an attribute beside one of these values. */
  boolean together(String attribute, Map<String, String> says) {
    Beside beside = besides.getOrDefault(attribute, new Beside());
    for (Map.Entry<String, String> said : says.entrySet()) {
      if (beside.attributes.contains(said.getKey()) || beside.values.contains(said)) {
        return true;
      }
    }
    return false;
  }

  /** What is said together with an attribute. */
  private static final class Beside {
    private final Set<String> attributes = new HashSet<>();
    private final Set<Map.Entry<String, String>> values = new HashSet<>();
  }

  private void besides(Map<String, String> sets, Set<String> said) {
    for (String attribute : said) {
      Beside beside = besides.computeIfAbsent(attribute, a -> new Beside());
      sets.forEach((name, value) -> beside.values.add(Map.entry(name, value)));
    }
  }

  /** What a rule speaks of together, unless it is to forbid it. */
  private void besides(GuideRule rule) {
    if (rule.verb() == GuideRule.Verb.NEVER) {
      return;
    }
    List<GuideRule.Clause> clauses = new ArrayList<>(rule.when());
    clauses.addAll(rule.what());
    for (GuideRule.Clause clause : clauses) {
      for (String value : clause.values()) {
        Set<String> others = new HashSet<>();
        clauses.forEach(other -> others.add(other.attribute()));
        others.remove(clause.attribute());
        besides(Map.of(clause.attribute(), value), others);
      }
    }
  }

  private void besides(Form form) {
    Set<String> said = new HashSet<>();
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Form.Slot slot) {
        said.add(slot.field().attribute());
      }
    }
    besides(form.sets(), said);
    said.forEach(name -> besides.computeIfAbsent(name, a -> new Beside()).attributes.addAll(said));
  }
}
