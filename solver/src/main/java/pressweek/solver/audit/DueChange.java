package pressweek.solver.audit;

import java.util.List;
import pressweek.data.plan.ChangeKind;

/**
 * What a change must be by the change table and the recorded changes.
 *
 * @param kinds what is exchanged, in the order of the enum
 * @param minutes working minutes
 * @param purgeG grams purged
 */
record DueChange(List<ChangeKind> kinds, long minutes, long purgeG) {
  static final DueChange NONE = new DueChange(List.of(), 0, 0);

  DueChange {
    kinds = List.copyOf(kinds);
  }

  /** True when more is done than a food clearance, so that there are start-up shots. */
  boolean exchanges() {
    return kinds.stream().anyMatch(kind -> kind != ChangeKind.FOOD_CLEARANCE);
  }
}
