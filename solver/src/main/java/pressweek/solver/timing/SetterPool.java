package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;
import pressweek.solver.timing.ShiftTimes.Piece;
import pressweek.solver.timing.ShiftTimes.Worked;

/**
 * The setters of the plant as servers: setter {@code k} is there whenever more than {@code k} are
 * in the house. A change takes the one who can start it first.
 */
final class SetterPool {
  private final int[][] from;
  private final int[][] to;
  private final int[] free;
  private final int sharePct;
  private final boolean maySpanGap;
  private final boolean checked;

  private int chosen;

  SetterPool(Hours hours, Crew crew) {
    checked = crew.settersChecked();
    sharePct = crew.setterSharePct();
    maySpanGap = crew.changeMaySpanGap();
    List<List<Piece>> there = checked ? presence(hours) : List.of();
    from = new int[there.size()][];
    to = new int[there.size()][];
    for (int k = 0; k < there.size(); k++) {
      from[k] = there.get(k).stream().mapToInt(Piece::from).toArray();
      to[k] = there.get(k).stream().mapToInt(Piece::to).toArray();
    }
    free = new int[there.size()];
  }

  private static List<List<Piece>> presence(Hours hours) {
    List<String> names = hours.shifts().stream().map(Shift::name).toList();
    List<Worked> worked = ShiftTimes.of(hours, names, 28);
    int[] edges =
        worked.stream()
            .flatMapToInt(w -> java.util.stream.IntStream.of(w.from(), w.to()))
            .sorted()
            .distinct()
            .toArray();
    List<List<Piece>> there = new ArrayList<>();
    for (int i = 0; i + 1 < edges.length; i++) {
      int at = edges[i];
      int count = 0;
      for (Worked w : worked) {
        count += w.from() <= at && at < w.to() ? w.shift().setters() : 0;
      }
      for (int k = 0; k < count; k++) {
        if (there.size() <= k) {
          there.add(new ArrayList<>());
        }
        there.get(k).add(new Piece(at, edges[i + 1]));
      }
    }
    return there.stream().map(Pieces::union).toList();
  }

  void reset() {
    Arrays.fill(free, 0);
  }

  /**
   * The first start, not before a time, at which a change of so many minutes can be done on a
   * press; {@link Spans#FAR} for never.
   */
  int start(Spans press, int time, int minutes) {
    chosen = -1;
    if (!checked) {
      return pressStart(press, time, minutes);
    }
    int best = Spans.FAR;
    for (int k = 0; k < free.length && best > time; k++) {
      int start = startWith(k, press, Math.max(time, free[k]), minutes);
      if (start < best) {
        best = start;
        chosen = k;
      }
    }
    return best;
  }

  /**
   * Takes the setter found by the last {@link #start} until the change ends and his share of other
   * work is done.
   */
  void take(int end, int minutes) {
    if (chosen >= 0) {
      free[chosen] = end + (minutes * (100 - sharePct) + sharePct - 1) / sharePct;
    }
  }

  private int pressStart(Spans press, int time, int minutes) {
    int start = press.next(time);
    while (start < Spans.FAR
        && !maySpanGap
        && press.finish(start, minutes) > press.stretchEnd(start)) {
      start = press.next(press.stretchEnd(start));
    }
    return start;
  }

  private int startWith(int k, Spans press, int time, int minutes) {
    int start = time;
    int i = 0;
    while (i < from[k].length) {
      start = pressStart(press, start, minutes);
      if (start >= Spans.FAR) {
        return Spans.FAR;
      }
      while (i < from[k].length && to[k][i] <= start) {
        i++;
      }
      if (i == from[k].length) {
        return Spans.FAR;
      }
      if (start >= from[k][i]) {
        int late = unattended(k, i, press, start, minutes);
        if (late < 0) {
          return start;
        }
        i++;
      }
      start = i < from[k].length ? Math.max(start + 1, from[k][i]) : Spans.FAR;
    }
    return Spans.FAR;
  }

  /**
   * Index of the absence that the change would run into, or -1 when the setter is there for all of
   * its working minutes.
   */
  private int unattended(int k, int first, Spans press, int start, int minutes) {
    int end = press.finish(start, minutes);
    int i = first;
    while (to[k][i] < end) {
      int back = i + 1 < from[k].length ? from[k][i + 1] : Spans.FAR;
      if (!maySpanGap || press.worksIn(to[k][i], Math.min(back, end)) || back >= Spans.FAR) {
        return i;
      }
      i++;
    }
    return -1;
  }
}
