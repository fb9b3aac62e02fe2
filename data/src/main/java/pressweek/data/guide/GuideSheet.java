package pressweek.data.guide;

import java.util.List;
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

  /** The rules of a family: its own, then those for all. */
  public List<GuideRule> rules(Family family) {
    return Stream.concat(family.rules().stream(), rules.stream()).toList();
  }
}
