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
 * @param qualified who may run what
 * @param shortages where the crew is too small, with the minutes and what needs it
 * @param notComputed what was not worked out, each with the key that would give it
 */
public record CrewRow(
    ShiftSpan shift,
    String cell,
    OperatorNeed operators,
    SetterNeed setters,
    Qualified qualified,
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
    public OperatorNeed {
      presses = List.copyOf(presses);
      sharing = List.copyOf(sharing);
    }

    /** Whole people. */
    public int people() {
      return Load.people(thousandths);
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

  /**
   * Who may run what in the shift; both empty when the plant does not list its people.
   *
   * @param mayRun people of the shift, each with the presses that they may serve of those that need
   *     it: operators of runs, setters of changes
   * @param nobodyFor presses whose runs need an operator and that no operator of the shift may run
   */
  public record Qualified(List<String> mayRun, List<String> nobodyFor) {
    public Qualified {
      mayRun = List.copyOf(mayRun);
      nobodyFor = List.copyOf(nobodyFor);
    }
  }
}
