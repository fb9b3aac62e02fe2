package pressweek.data.guide;

import java.util.List;

/**
 * The code of an item, or why it has none.
 *
 * @param code the code in the guide's own spelling; empty when there is none
 * @param family kind of item; empty likewise
 * @param faults why there is none; empty when there is one
 */
public record Encoded(String code, String family, List<String> faults) {
  public Encoded {
    faults = List.copyOf(faults);
  }

  /** True when there is a code. */
  public boolean good() {
    return faults.isEmpty();
  }
}
