package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

/**
 * The crew: what is checked of it, and who is in it.
 *
 * @param settersChecked false when the plant did not say how many setters it has
 * @param operatorsChecked false when the plant did not say how many operators it has
 * @param setterSharePct share of a setter's time that can be planned, 1 to 100
 * @param changeMaySpanGap true when a change may be left half done over a closed shift
 * @param insertLeadMin minutes before the start of a run when its inserts must be at the press
 * @param people people by name, who are for the lists only; empty when the plant does not list them
 */
public record Crew(
    boolean settersChecked,
    boolean operatorsChecked,
    int setterSharePct,
    boolean changeMaySpanGap,
    int insertLeadMin,
    Optional<List<Person>> people) {
  public Crew {
    people = people.map(List::copyOf);
  }

  /** A crew whose people are not listed. */
  public Crew(
      boolean settersChecked,
      boolean operatorsChecked,
      int setterSharePct,
      boolean changeMaySpanGap,
      int insertLeadMin) {
    this(
        settersChecked,
        operatorsChecked,
        setterSharePct,
        changeMaySpanGap,
        insertLeadMin,
        Optional.empty());
  }

  /** The crew with these people. */
  public Crew with(Optional<List<Person>> others) {
    return new Crew(
        settersChecked, operatorsChecked, setterSharePct, changeMaySpanGap, insertLeadMin, others);
  }
}
