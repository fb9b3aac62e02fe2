package pressweek.data.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Draft;
import pressweek.data.guide.Field;

/** Asks in plain words for what is open. */
final class Questions {
  private static final int SHOWN = 12;

  private final Offer offer;
  private final Pairs pairs;
  private final Case item;
  private final Set<String> asked = new LinkedHashSet<>();
  private final List<String> questions = new ArrayList<>();

  Questions(Offer offer, Pairs pairs, Case item) {
    this.offer = offer;
    this.pairs = pairs;
    this.item = item;
  }

  /** The questions that a draft leaves. */
  List<String> of(Draft draft) {
    for (Map.Entry<String, List<String>> open : item.open().entrySet()) {
      if (!open.getValue().isEmpty()) {
        ask(open.getKey(), open.getValue());
      }
    }
    draft.gaps().forEach(this::gap);
    return questions;
  }

  private void gap(Draft.Gap gap) {
    for (Field.Table table : offer.tables()) {
      if (table.name().equals(gap.field())) {
        table(table, gap);
        return;
      }
    }
    String attribute = gap.attributes().isEmpty() ? gap.field() : gap.attributes().get(0);
    if (asked.add(attribute)) {
      questions.add("which " + Labels.of(attribute) + "? " + String.join(", ", gap.choices()));
    }
  }

  private void table(Field.Table table, Draft.Gap gap) {
    List<String> attributes =
        gap.attributes().isEmpty() ? List.of(table.attribute()) : gap.attributes();
    List<String> telling = attributes.stream().filter(name -> !isOwnSymbol(table, name)).toList();
    for (String attribute : telling.isEmpty() ? attributes : telling) {
      List<String> values =
          offer.values(attribute, item.known()).stream()
              .filter(value -> !item.isUnwanted(attribute, value))
              .filter(value -> pairs.admit(item.known(), Map.of(attribute, value)))
              .toList();
      boolean open = values.size() > 1 || !item.known().containsKey(attribute);
      if (open && isFirstOf(table, attribute, telling)) {
        ask(attribute, values);
      }
    }
  }

  /**
   * Of what one symbol says at once, such as a metal with its finish, only the field's own
   * attribute is asked for; but a head's style and size are asked for both.
   */
  private static boolean isFirstOf(Field.Table table, String attribute, List<String> telling) {
    return !telling.contains(table.attribute()) || attribute.equals(table.attribute());
  }

  /** True when the field's attribute is a mere symbol, and other attributes tell what it means. */
  private static boolean isOwnSymbol(Field.Table table, String attribute) {
    return attribute.equals(table.attribute())
        && table.entries().entrySet().stream()
            .allMatch(
                entry ->
                    entry.getValue().sets().size() > 1
                        && entry.getKey().equals(entry.getValue().sets().get(attribute)));
  }

  private void ask(String attribute, List<String> values) {
    if (!asked.add(attribute)) {
      return;
    }
    String unit = Labels.unit(attribute);
    List<String> shown =
        values.stream()
            .limit(SHOWN)
            .map(value -> unit.isEmpty() ? offer.display(attribute, value) : value)
            .toList();
    String more = values.size() > SHOWN ? ", and " + (values.size() - SHOWN) + " more" : "";
    String choices = (String.join(", ", shown) + " " + unit).strip();
    questions.add(("which " + Labels.of(attribute) + "? " + choices + more).strip());
  }
}
