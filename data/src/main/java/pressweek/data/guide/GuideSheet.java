package pressweek.data.guide;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A guide as its file says it.
 *
 * @param name name of the code
 * @param separator text between the parts of a code; empty when they follow each other without a
 *     break
 * @param ignoreCase true when capital and small letters are the same
 * @param fields what the parts consist of
 * @param families kinds of item
 * @param rules rules for all of them
 * @param words how people name what the codes say
 */
public record GuideSheet(
    String name,
    String separator,
    boolean ignoreCase,
    List<Field> fields,
    List<Family> families,
    List<GuideRule> rules,
    GuideWords words) {
  public GuideSheet {
    fields = List.copyOf(fields);
    families = List.copyOf(families);
    rules = List.copyOf(rules);
  }

  /** Every attribute that codes and rules set, in the guide's order. */
  public Set<String> attributes() {
    Set<String> attributes = new LinkedHashSet<>();
    for (Field field : fields) {
      if (field instanceof Field.Table table) {
        table.entries().values().forEach(entry -> attributes.addAll(entry.sets().keySet()));
      } else {
        attributes.add(field.attribute());
      }
    }
    for (Family family : families) {
      family
          .parts()
          .forEach(part -> part.forms().forEach(form -> attributes.addAll(form.sets().keySet())));
      family.rules().forEach(rule -> addSet(rule, attributes));
    }
    rules.forEach(rule -> addSet(rule, attributes));
    return attributes;
  }

  private static void addSet(GuideRule rule, Set<String> attributes) {
    if (rule.sets()) {
      rule.what().forEach(clause -> attributes.add(clause.attribute()));
    }
  }

  /** The rules of a family: its own, then those for all. */
  public List<GuideRule> rules(Family family) {
    return Stream.concat(family.rules().stream(), rules.stream()).toList();
  }
}
