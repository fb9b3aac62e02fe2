package pressweek.data.week;

import java.util.List;
import java.util.Set;
import pressweek.data.files.PressRow;
import pressweek.data.problem.Standing;

/**
 * How a mold goes with a press.
 *
 * @param press the press
 * @param standing why it may run there
 * @param objection why it may not; empty when it may
 * @param notes what a person should know
 * @param gaps what could not be checked
 */
record PressFit(
    PressRow press, Standing standing, String objection, List<String> notes, Set<Gap> gaps) {
  PressFit {
    notes = List.copyOf(notes);
    gaps = Set.copyOf(gaps);
  }

  boolean fits() {
    return objection.isEmpty();
  }
}
