package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Bound;
import pressweek.data.problem.Problem;

/**
 * A proved lower bound of avoidable cost: no plan that keeps the hard rules of {@code
 * docs/rules.md} costs less. It is the sum of
 *
 * <ul>
 *   <li>what each line costs by itself ({@link EarliestEnds}),
 *   <li>by how much lines that share their only mold exceed that ({@link MoldLoads}),
 *   <li>by how much lines that share presses exceed both ({@link PressLoads}),
 *   <li>changes to setups and molds, and purge of materials ({@link LeastChanges}),
 *   <li>the time until the last run ends, where that is charged.
 * </ul>
 *
 * <p>Why they may be added: the first three speak of LATE, KEPT_PRESS and UNPLACED only, each line
 * in one of them: a load takes the place of its lines, and different loads have different lines.
 * The others speak of CHANGE, PURGE, START_UP and CLOSE, but each of them holds only as long as
 * some lines have a place. So each sets aside a share of UNPLACED of its lines, at most a quarter
 * each time, and no share is set aside twice; the first three count with the rest of UNPLACED
 * alone. If the lines of a change are all left out, what was set aside from them pays for the
 * change; if any line is left out, what was set aside from it pays for the close. PRESS_RATE,
 * OVERTIME, SHORT_CAMPAIGN and MOVED are never negative and count nothing here. All is rounded
 * down.
 */
public final class LowerBound {
  /** Shares of a quarter of the least UNPLACED that are tried for the close. */
  private static final int SHARES = 4;

  private final Lines lines;
  private final List<MoldLoads.Loaded> molds;
  private final PressLoads presses;

  private LowerBound(Problem problem) {
    lines = new Lines(problem);
    molds = MoldLoads.of(lines);
    presses = new PressLoads(lines, molds);
  }

  /** The bound of a problem; empty when nothing above 0 is proved. */
  public static Optional<Bound> of(Problem problem) {
    return problem.jobs().isEmpty() ? Optional.empty() : new LowerBound(problem).bound();
  }

  private Optional<Bound> bound() {
    LeastChanges changes = new LeastChanges(lines);
    long[] unplaced = lines.unplaced.clone();
    long entries = setAside(changes.setups, unplaced);
    long mounts = setAside(changes.molds, unplaced);
    long purges = setAside(changes.materials, unplaced);
    Figure best = best(unplaced);
    List<Bound.Part> parts = new ArrayList<>(best.parts(lines, molds));
    parts.add(
        new Bound.Part(
            Figure.words(changes.setups.size(), "setup") + " to come to: change and start-up",
            entries));
    parts.add(
        new Bound.Part(
            Figure.words(changes.molds.size(), "mold") + " to mount, beyond that", mounts));
    parts.add(
        new Bound.Part(
            Figure.words(changes.materials.size(), "material")
                + " in no barrel at the start: purge",
            purges));
    long amount = best.amount() + entries + mounts + purges;
    return amount <= 0
        ? Optional.empty()
        : Optional.of(new Bound(amount, parts.stream().filter(p -> p.amount() > 0).toList()));
  }

  private long setAside(List<LeastChanges.Need> needs, long[] unplaced) {
    return needs.stream().mapToLong(need -> setAside(need, unplaced)).sum();
  }

  /**
   * Sets aside what a change comes to from the charges for its lines having no place, the largest
   * first and at most a quarter of each, and answers how much that is.
   */
  private long setAside(LeastChanges.Need need, long[] unplaced) {
    long left = need.amount();
    int[] order =
        Arrays.stream(need.jobs())
            .boxed()
            .sorted(
                Comparator.<Integer>comparingLong(j -> -lines.unplaced[j]).thenComparingInt(j -> j))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int job : order) {
      long share = Math.min(left, lines.unplaced[job] / 4);
      unplaced[job] -= share;
      left -= share;
    }
    return need.amount() - left;
  }

  /**
   * The best of several shares set aside for the close. All lines placed, the last run ends no
   * earlier than the last of the earliest ends, nor before all presses together can have done the
   * least work.
   */
  private Figure best(long[] unplaced) {
    Figure best = figure(unplaced, 0, 0);
    long most = Arrays.stream(lines.unplaced).min().orElse(0) / 4;
    if (lines.problem.arranged().terms().closeHour() > 0) {
      int last = Math.max(Arrays.stream(lines.end).max().orElse(0), presses.allDone());
      long close = lines.charges.close(last);
      for (int i = 1; i <= SHARES; i++) {
        long share = most * i / SHARES;
        Figure tried = figure(unplaced, share, Math.min(share, close));
        best = tried.amount() > best.amount() ? tried : best;
      }
    }
    return best;
  }

  private Figure figure(long[] unplaced, long share, long close) {
    Singly singly = Singly.of(lines, Arrays.stream(unplaced).map(u -> u - share).toArray());
    long[] excess = molds.stream().mapToLong(m -> m.excess(singly)).toArray();
    return new Figure(singly, excess, presses.best(singly, excess), close);
  }
}
