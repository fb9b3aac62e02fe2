package pressweek.data.files;

import java.util.List;
import pressweek.data.problem.Person;

/**
 * A row of {@code people.csv}: a person and what they may run.
 *
 * @param at where it stands
 * @param person name or badge
 * @param role what they do
 * @param shifts shifts that they work; none stands for all
 * @param mayRun presses and cells that they may run; none stands for all
 */
public record PersonRow(
    At at, String person, Person.Role role, List<String> shifts, List<String> mayRun) {
  public PersonRow {
    shifts = List.copyOf(shifts);
    mayRun = List.copyOf(mayRun);
  }
}
