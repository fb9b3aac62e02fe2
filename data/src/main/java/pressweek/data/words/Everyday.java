package pressweek.data.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.words.Mention.Turn;

/** Takes names that do not name one thing into a case, as far as nothing else is said. */
final class Everyday {
  private final Offer offer;
  private final Lexicon lexicon;
  private final Evidence evidence;
  private final Case item;
  private final List<Pending> pending = new ArrayList<>();

  Everyday(Offer offer, Lexicon lexicon, Evidence evidence, Case item) {
    this.offer = offer;
    this.lexicon = lexicon;
    this.evidence = evidence;
    this.item = item;
  }

  /**
   * What such a name is to be read as, if a code allows.
   *
   * @param mention mention
   * @param values values by attribute
   * @param when the values which the name allows
   * @param because the reason
   * @param weak true when it may as well say nothing
   */
  record Pending(
      int mention, Map<String, String> values, List<Clause> when, String because, boolean weak) {}

  /** What remains to be taken, in the order of the words. */
  List<Pending> run() {
    for (int i = 0; i < evidence.claims().size(); i++) {
      if (evidence.claims().get(i) instanceof Claim.Usually usually) {
        take(i, usually);
      }
    }
    return pending;
  }

  private void take(int mention, Claim.Usually usually) {
    Map<String, String> usual = new LinkedHashMap<>();
    usually
        .usual()
        .forEach((name, value) -> usual.put(evidence.attribute(mention, name, offer), value));
    Turn turn = evidence.mentions().get(mention).turn();
    if (turn == Turn.NOT) {
      usual.forEach((name, value) -> item.say(new Case.Said(mention, name, value, false, turn)));
      return;
    }
    if (turn == Turn.BUT) {
      replace(usual);
    }
    if (satisfied(mention, usually, usual)) {
      Map<String, String> said = new LinkedHashMap<>();
      usual.keySet().forEach(name -> said.put(name, item.known().getOrDefault(name, "")));
      said.values().removeIf(String::isEmpty);
      said.forEach((name, value) -> item.understand(mention, name, value));
      return;
    }
    List<String> against =
        usual.keySet().stream()
            .filter(name -> item.known().containsKey(name))
            .filter(name -> !usual.getOrDefault(name, "").equals(item.known().get(name)))
            .toList();
    if (against.isEmpty()) {
      pendAlone(mention, usually, usual);
    } else if (!usually.weak()) {
      contradict(mention, usual, against.get(0));
    }
  }

  /** Two everyday names can contradict each other, too. */
  private void pendAlone(int mention, Claim.Usually usually, Map<String, String> usual) {
    for (Pending other : List.copyOf(pending)) {
      for (Map.Entry<String, String> value : other.values().entrySet()) {
        String said = usual.getOrDefault(value.getKey(), value.getValue());
        if (!said.equals(value.getValue())) {
          pending.remove(other);
          other.values().forEach((name, old) -> item.open().putIfAbsent(name, List.of()));
          usual.forEach((name, now) -> item.understand(mention, name, now));
          either(mention, value, said, "\"" + evidence.original(other.mention()) + "\"");
          return;
        }
      }
    }
    pend(mention, usually, usual);
  }

  /** Two values for one attribute: a question, and a conflict unless it says or. */
  private void either(int mention, Map.Entry<String, String> old, String said, String oldWords) {
    if (evidence.mentions().get(mention).turn() != Turn.OR) {
      item.conflict(
          "%s: %s and \"%s\" are both said"
              .formatted(Labels.of(old.getKey()), oldWords, evidence.original(mention)));
    }
    item.leaveOpen(old.getKey(), List.of(old.getValue(), said));
  }

  private void replace(Map<String, String> usual) {
    for (Map.Entry<String, String> value : usual.entrySet()) {
      String old = item.known().get(value.getKey());
      if (old != null && !old.equals(value.getValue())) {
        item.replace(value.getKey());
      }
    }
  }

  private void pend(int mention, Claim.Usually usually, Map<String, String> usual) {
    boolean asked = usual.keySet().stream().anyMatch(item.open()::containsKey);
    usual.forEach((name, value) -> item.understand(mention, name, value));
    if (!asked) {
      List<Clause> when =
          usually.when().stream()
              .map(c -> new Clause(evidence.attribute(mention, c.attribute(), offer), c.values()))
              .toList();
      String because = "\"" + evidence.original(mention) + "\": " + usually.because();
      pending.add(new Pending(mention, usual, when, because, usually.weak()));
    }
  }

  /** True when what is known is one of the things that the name can mean. */
  private boolean satisfied(int mention, Claim.Usually usually, Map<String, String> usual) {
    boolean differs =
        usual.entrySet().stream()
            .anyMatch(
                value -> {
                  String old = item.known().get(value.getKey());
                  return old != null && !old.equals(value.getValue());
                });
    boolean all = usual.keySet().stream().allMatch(item.known()::containsKey);
    if (!differs) {
      return all;
    }
    for (Clause clause : usually.when()) {
      String value = item.known().get(evidence.attribute(mention, clause.attribute(), offer));
      if (value != null && Clauses.holds(clause, value)) {
        return true;
      }
    }
    if (!usually.values().isEmpty()) {
      return true;
    }
    return usual.keySet().stream()
        .anyMatch(name -> names(name, mention) || alsoNames(name, usually.alike()));
  }

  /** True when another name for the same stands in a name of the known value: 316 stainless. */
  private boolean alsoNames(String attribute, List<Set<String>> alike) {
    String value = item.known().get(attribute);
    return value != null
        && alike.stream()
            .anyMatch(
                words -> words.stream().allMatch(word -> lexicon.names(attribute, value, word)));
  }

  /** True when the words stand in some name of the known value, as red does in wine red. */
  private boolean names(String attribute, int mention) {
    String value = item.known().get(attribute);
    if (value == null) {
      return false;
    }
    Mention said = evidence.mentions().get(mention);
    for (int i = said.from(); i < said.to(); i++) {
      Token token = evidence.tokens().at(i);
      if (!token.isSign() && !lexicon.names(attribute, value, Stems.plural(token.text()))) {
        return false;
      }
    }
    return true;
  }

  private void contradict(int mention, Map<String, String> usual, String attribute) {
    String old = item.known().getOrDefault(attribute, "");
    String said = usual.getOrDefault(attribute, "");
    usual.forEach((name, value) -> item.understand(mention, name, value));
    either(mention, Map.entry(attribute, old), said, offer.display(attribute, old));
    List<String> others = List.copyOf(usual.keySet());
    others.stream().filter(offer.attributes()::contains).forEach(this::forget);
  }

  private void forget(String attribute) {
    if (!item.known().containsKey(attribute)) {
      item.open().putIfAbsent(attribute, List.of());
    }
  }
}
