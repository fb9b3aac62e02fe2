package pressweek.solver.timing;

import java.util.Arrays;
import java.util.List;

/**
 * Operators in the house, segment by segment between the edges of shifts, against the runs that are
 * on. A run counts in each segment in which its press works at all; a run that has been fixed
 * counts from now on, even before it starts. Both err on the safe side.
 */
final class OperatorLoad {
  private final int[] edge;
  private final int[] inHouse;
  private final boolean[][] works;
  private final int[] onUntil;
  private final int[] onOperators;
  private final boolean checked;

  OperatorLoad(WorkTimes times, boolean checked) {
    this.checked = checked;
    List<WorkTimes.Step> steps = checked ? times.operators() : List.of();
    edge = steps.stream().mapToInt(WorkTimes.Step::from).toArray();
    inHouse = steps.stream().mapToInt(WorkTimes.Step::people).toArray();
    int presses = times.hours.length;
    works = new boolean[presses][edge.length];
    for (int i = 0; i + 1 < edge.length; i++) {
      for (int p = 0; p < presses; p++) {
        works[p][i] = times.hours[p].worksIn(edge[i], edge[i + 1]);
      }
    }
    onUntil = new int[presses];
    onOperators = new int[presses];
  }

  void name(Snapshot.Changing all) {
    all.add(onUntil, onOperators);
  }

  void reset() {
    Arrays.fill(onUntil, 0);
    Arrays.fill(onOperators, 0);
  }

  void take(int press, int end, int operators) {
    onUntil[press] = end;
    onOperators[press] = operators;
  }

  /**
   * The start itself when a run may be on from start to end; otherwise the next time at which that
   * could be otherwise.
   */
  int next(int press, int start, int end, int operators) {
    if (!checked || operators == 0) {
      return start;
    }
    int i = Arrays.binarySearch(edge, start);
    i = i < 0 ? Math.max(0, -i - 2) : i;
    if (allOn(press, start) + operators <= fewest(press, i, end)) {
      return start;
    }
    for (; i + 1 < edge.length && edge[i] < end; i++) {
      if (works[press][i] && load(press, i, Math.max(start, edge[i])) + operators > inHouse[i]) {
        return nextEvent(start);
      }
    }
    return start;
  }

  /** Operators of all runs of other presses that are on after a time, whenever they work. */
  private int allOn(int press, int time) {
    int sum = 0;
    for (int q = 0; q < onUntil.length; q++) {
      sum += onUntil[q] > time && q != press ? onOperators[q] : 0;
    }
    return sum;
  }

  /** The fewest operators in the house while a press works, from a segment to a time. */
  private int fewest(int press, int from, int end) {
    int fewest = Integer.MAX_VALUE;
    for (int i = from; i + 1 < edge.length && edge[i] < end; i++) {
      fewest = works[press][i] ? Math.min(fewest, inHouse[i]) : fewest;
    }
    return fewest;
  }

  private int load(int press, int segment, int time) {
    int sum = 0;
    for (int q = 0; q < onUntil.length; q++) {
      if (onUntil[q] > time && q != press && works[q][segment]) {
        sum += onOperators[q];
      }
    }
    return sum;
  }

  private int nextEvent(int time) {
    int next = Spans.FAR;
    for (int end : onUntil) {
      if (end > time && end < next) {
        next = end;
      }
    }
    int i = Arrays.binarySearch(edge, time + 1);
    i = i < 0 ? -i - 1 : i;
    return i < edge.length ? Math.min(next, edge[i]) : next;
  }
}
