package pressweek.reports.crew;

import java.util.List;
import java.util.Optional;
import pressweek.reports.hours.ShiftSpan;

/**
 * What a cell, or the whole plant, needs of the crew in a shift.
 *
 * @param shift shift
 * @param cell cell; {@link #WHOLE} for all of them
 * @param operators operators
 * @param setters setters
 * @param shortages where the crew is too small, with the minutes and what needs it
 * @param notComputed what was not worked out, each with the key that would give it
 */
public record CrewRow(
    ShiftSpan shift,
    String cell,
    OperatorNeed operators,
    SetterNeed setters,
    List<String> shortages,
    List<String> notComputed) {
  /** The cell of a row of the whole plant. */
  public static final String WHOLE = "whole plant";

  public CrewRow {
    shortages = List.copyOf(shortages);
    notComputed = List.copyOf(notComputed);
  }

  /**
   * Operators at the time when most are needed.
   *
   * @param thousandths thousandths of a person
   * @param atMin the first minute of it; empty when none is needed
   * @param presses presses that need one then, each with its share of a person
   * @param sharing those of them that need less than a whole one, and so share one
   * @param thereThousandths thousandths in the house; empty in the row of a cell and when not known
   */
  public record OperatorNeed(
      int thousandths,
      Optional<Integer> atMin,
      List<String> presses,
      List<String> sharing,
      Optional<Integer> thereThousandths) {
    private static final int PERSON = 1000;

    public OperatorNeed {
      presses = List.copyOf(presses);
      sharing = List.copyOf(sharing);
    }

    /** Whole people. */
    public int people() {
      return (thousandths + PERSON - 1) / PERSON;
    }
  }

  /**
   * Setters over the whole shift.
   *
   * @param minutes minutes that changes and dismounts take
   * @param availableMin minutes that can be planned; empty in the row of a cell and when not known
   * @param there setters in the house; empty likewise
   */
  public record SetterNeed(int minutes, Optional<Integer> availableMin, Optional<Integer> there) {}
}
