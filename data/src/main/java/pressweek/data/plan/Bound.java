package pressweek.data.plan;

import java.util.List;

/**
 * A proved lower bound of avoidable cost: no plan of the same problem can cost less.
 *
 * @param amount thousandths of a cent
 * @param parts what it is made of, in words, with each part's amount
 */
public record Bound(long amount, List<Part> parts) {
  public Bound {
    parts = List.copyOf(parts);
  }

  /** A part of the bound: what it is and its amount, thousandths of a cent. */
  public record Part(String what, long amount) {}
}
