package pressweek.data.problem;

import java.util.List;

/**
 * The shifts that a press works.
 *
 * @param id name of the calendar
 * @param shifts names of shifts
 */
public record Calendar(String id, List<String> shifts) {
  public Calendar {
    shifts = List.copyOf(shifts);
  }
}
