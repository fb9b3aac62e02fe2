package pressweek.data.problem;

import java.util.List;

/**
 * Somebody who may be in a shift and what they are qualified for. The planner counts people by the
 * figures of the shifts and does not know them one by one.
 *
 * @param name name or badge
 * @param role what they do
 * @param shifts names of the shifts that they work
 * @param presses presses that they may run, or whose molds they may change
 */
public record Person(String name, Role role, List<String> shifts, List<String> presses) {
  /** What a person does. */
  public enum Role {
    OPERATOR,
    SETTER
  }

  public Person {
    shifts = List.copyOf(shifts);
    presses = List.copyOf(presses);
  }

  /** True when they may serve that press in a shift of that name. */
  public boolean may(String shift, String press) {
    return shifts.contains(shift) && presses.contains(press);
  }
}
