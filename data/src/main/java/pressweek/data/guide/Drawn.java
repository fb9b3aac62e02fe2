package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A code put together from the symbols of a family, with what they mean.
 *
 * @param code the code
 * @param family kind of item
 * @param parts its parts, in the order of the code
 * @param values attributes under the rules
 * @param faults what the rules say against it; empty for the code of an item
 */
public record Drawn(
    String code,
    Family family,
    List<Picked> parts,
    Map<String, String> values,
    List<String> faults) {
  public Drawn {
    parts = List.copyOf(parts);
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    faults = List.copyOf(faults);
  }

  /** True when it is the code of an item. */
  public boolean good() {
    return faults.isEmpty();
  }

  /** The same code as if these were the rules of its family. */
  public Drawn under(List<GuideRule> rules) {
    List<Map<String, String>> says = new ArrayList<>();
    parts.forEach(part -> says.addAll(part.says()));
    RuleBook.Meaning meaning = RuleBook.of(says, rules);
    return new Drawn(
        code,
        family,
        parts,
        meaning.values(),
        meaning.faults().stream().map(RuleBook.Fault::sentence).toList());
  }
}
