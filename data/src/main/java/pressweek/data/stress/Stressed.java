package pressweek.data.stress;

import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Uncertainty;

/**
 * How sure a plan is. All of it are estimates.
 *
 * @param luck what was replayed
 * @param lines a row for each run, the least sure first
 * @param totals what the week comes to
 * @param asPlanned the same when all goes by the plan, for comparison
 * @param gains what would bring most, the plant as a whole first
 * @param slack what more time before each shipping cut-off would bring, the least time first
 * @param rival another plan under the same luck
 */
public record Stressed(
    Luck luck,
    List<LineChance> lines,
    Totals totals,
    AsPlanned asPlanned,
    List<Gain> gains,
    List<SlackGain> slack,
    Optional<Rival> rival) {
  public Stressed {
    lines = List.copyOf(lines);
    gains = List.copyOf(gains);
    slack = List.copyOf(slack);
  }

  /**
   * What was replayed.
   *
   * @param replays how many replays
   * @param tried how many of them for each thing that could go otherwise
   * @param seed seed of the luck
   * @param uncertainty how far things may differ from the plan
   * @param basis where those figures come from, a sentence each
   */
  public record Luck(
      int replays, int tried, long seed, Uncertainty uncertainty, List<String> basis) {
    public Luck {
      basis = List.copyOf(basis);
    }
  }

  /**
   * A replay in which everything goes by the plan.
   *
   * @param onTimeLines lines on time
   * @param lateMin minutes late, summed over the lines
   * @param cost avoidable cost, thousandths of a cent
   * @param leftOut lines that the plan leaves out
   * @param otherRuns runs that end at another minute than the plan says; 0 for a plan whose times
   *     come from its order alone
   */
  public record AsPlanned(int onTimeLines, long lateMin, long cost, int leftOut, int otherRuns) {}
}
