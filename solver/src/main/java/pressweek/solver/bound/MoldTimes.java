package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Trial;

/** When molds are away: in repair, in a trial, not yet in the house. */
final class MoldTimes {
  private static final int[] NONE = {};

  private final Map<String, int[]> away = new HashMap<>();

  private record Piece(int from, int to) {}

  MoldTimes(Problem problem) {
    int start = problem.plant().hours().startMin();
    Map<String, List<Piece>> pieces = new HashMap<>();
    for (Mold mold : problem.floor().molds()) {
      mold.change()
          .availableFromMin()
          .ifPresent(at -> add(pieces, mold.id(), new Piece(Math.min(start, at), at)));
    }
    for (Downtime down : problem.floor().downtime()) {
      if (down.kind() == Downtime.Kind.MOLD) {
        add(pieces, down.id(), new Piece(down.fromMin(), down.toMin()));
      }
    }
    for (Trial trial : problem.arranged().trials()) {
      add(pieces, trial.mold(), new Piece(trial.fromMin(), trial.toMin()));
    }
    pieces.forEach(
        (mold, list) ->
            away.put(
                mold,
                list.stream()
                    .sorted(Comparator.comparingInt(Piece::from))
                    .flatMapToInt(p -> java.util.stream.IntStream.of(p.from(), p.to()))
                    .toArray()));
  }

  private static void add(Map<String, List<Piece>> pieces, String mold, Piece piece) {
    if (piece.from() < piece.to()) {
      pieces.computeIfAbsent(mold, m -> new ArrayList<>()).add(piece);
    }
  }

  /** First minutes away and first minutes back, in turn. */
  int[] of(String mold) {
    return away.getOrDefault(mold, NONE);
  }

  /** When the mold is back if it is away at any time from start to end; else the start. */
  int back(String mold, int start, int end) {
    int[] pieces = of(mold);
    for (int i = 0; i < pieces.length; i += 2) {
      if (pieces[i] < end && pieces[i + 1] > start) {
        return pieces[i + 1];
      }
    }
    return start;
  }
}
