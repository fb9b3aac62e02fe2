package pressweek.data.problem;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A dryer.
 *
 * @param id dryer
 * @param hopperL what its hopper holds, litres; empty when not known
 * @param presses presses that it feeds
 */
public record Dryer(String id, OptionalDouble hopperL, List<String> presses) {
  public Dryer {
    presses = List.copyOf(presses);
  }
}
