package pressweek.data.problem;

/**
 * What is checked of the crew.
 *
 * @param settersChecked false when the plant did not say how many setters it has
 * @param operatorsChecked false when the plant did not say how many operators it has
 * @param setterSharePct share of a setter's time that can be planned, 1 to 100
 * @param changeMaySpanGap true when a change may be left half done over a closed shift
 * @param insertLeadMin minutes before the start of a run when its inserts must be at the press
 */
public record Crew(
    boolean settersChecked,
    boolean operatorsChecked,
    int setterSharePct,
    boolean changeMaySpanGap,
    int insertLeadMin) {}
