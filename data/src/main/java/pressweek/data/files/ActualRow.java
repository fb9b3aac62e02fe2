package pressweek.data.files;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pressweek.data.problem.Setup;

/**
 * A row of {@code actuals.csv}: what a run took. What is empty is not known.
 *
 * @param at where it stands
 * @param run run number, as the plant calls it
 * @param date when it was
 * @param press press
 * @param to mold, resin and colour of the run
 * @param from what was on the press before; all empty when that is not known
 * @param cycleS seconds of a whole cycle
 * @param scrapPct scrap, percent of all parts
 * @param changeMin minutes of the change before it, food clearance apart
 * @param efficiencyPct share of working time that made parts, percent
 * @param stops its running hours and breakdowns
 */
public record ActualRow(
    At at,
    String run,
    Optional<When> date,
    String press,
    Setup to,
    Setup from,
    Pair cycleS,
    Pair scrapPct,
    Pair changeMin,
    OptionalDouble efficiencyPct,
    Stops stops) {

  /** A figure as planned and as it was. */
  public record Pair(OptionalDouble planned, OptionalDouble real) {
    /** Real over planned; empty where one is not known or the planned one is 0. */
    public OptionalDouble ratio() {
      return planned.isPresent() && real.isPresent() && planned.getAsDouble() > 0
          ? OptionalDouble.of(real.getAsDouble() / planned.getAsDouble())
          : OptionalDouble.empty();
    }
  }

  /**
   * Breakdowns of the press in a run.
   *
   * @param runH hours of running
   * @param breakdowns how many there were
   * @param minutes minutes of repair, all together
   */
  public record Stops(OptionalDouble runH, OptionalInt breakdowns, OptionalDouble minutes) {}
}
