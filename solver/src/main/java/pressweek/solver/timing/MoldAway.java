package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Trial;
import pressweek.solver.rules.Names;

/**
 * When molds are away: in repair, not yet in the house, or kept for a promised run of another job.
 */
final class MoldAway {
  /**
   * A time in which a mold is kept for a promised run on a press; runs of the same press are none
   * of its business, since they stand in the press's own order.
   */
  record Kept(int mold, int job, int press, int from, int to) {}

  private final int[][] from;
  private final int[][] to;
  private final int[][] keptFor;
  private final int[][] keptOn;

  MoldAway(Problem problem, Names names, List<Kept> kept) {
    Map<String, Mold> molds = new java.util.HashMap<>();
    problem.floor().molds().forEach(m -> molds.put(m.id(), m));
    int n = names.molds().size();
    from = new int[n][];
    to = new int[n][];
    keptFor = new int[n][];
    keptOn = new int[n][];
    for (String id : names.molds()) {
      int m = names.mold(id);
      List<Kept> away = new ArrayList<>();
      Mold mold = molds.get(id);
      if (mold != null && mold.change().availableFromMin().isPresent()) {
        away.add(new Kept(m, -1, -1, 0, mold.change().availableFromMin().getAsInt()));
      }
      for (Downtime down : problem.floor().downtime()) {
        if (down.kind() == Downtime.Kind.MOLD && down.id().equals(id)) {
          away.add(new Kept(m, -1, -1, down.fromMin(), down.toMin()));
        }
      }
      for (Trial trial : problem.arranged().trials()) {
        if (trial.mold().equals(id)) {
          away.add(new Kept(m, -1, -1, trial.fromMin(), trial.toMin()));
        }
      }
      kept.stream().filter(k -> k.mold() == m).forEach(away::add);
      away.sort(Comparator.comparingInt(Kept::from));
      from[m] = away.stream().mapToInt(Kept::from).toArray();
      to[m] = away.stream().mapToInt(Kept::to).toArray();
      keptFor[m] = away.stream().mapToInt(Kept::job).toArray();
      keptOn[m] = away.stream().mapToInt(Kept::press).toArray();
    }
  }

  /**
   * When the mold is back if it is away at any time from start to end for a job on a press; the
   * start itself if it is not.
   */
  int back(int press, int mold, int job, int start, int end) {
    int[] starts = from[mold];
    for (int i = 0; i < starts.length; i++) {
      boolean others = keptFor[mold][i] < 0 || keptFor[mold][i] != job && keptOn[mold][i] != press;
      if (others && starts[i] < end && to[mold][i] > start) {
        return to[mold][i];
      }
    }
    return start;
  }

  /** Whether the mold that is away at a time is so because it is kept for a promised run. */
  boolean kept(int mold, int until) {
    for (int i = 0; i < to[mold].length; i++) {
      if (to[mold][i] == until) {
        return keptFor[mold][i] >= 0;
      }
    }
    return false;
  }
}
