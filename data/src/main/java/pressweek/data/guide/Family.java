package pressweek.data.guide;

import java.util.List;

/**
 * A kind of item.
 *
 * @param name name in words
 * @param parts parts of its codes, in order
 * @param rules rules that hold for it alone
 * @param line line of the guide
 */
public record Family(String name, List<Part> parts, List<GuideRule> rules, int line) {
  public Family {
    parts = List.copyOf(parts);
    rules = List.copyOf(rules);
  }
}
