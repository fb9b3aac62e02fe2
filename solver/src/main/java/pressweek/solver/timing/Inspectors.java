package pressweek.solver.timing;

import java.util.Arrays;
import java.util.List;
import pressweek.data.problem.Problem;

/**
 * The inspectors, who are with the last minutes of each change that exchanges something. Checks
 * that overlap a new one count together even where they do not overlap each other: on the safe
 * side.
 */
final class Inspectors {
  private final boolean checked;
  private final int minutes;
  private final int[] edge;
  private final int[] inHouse;
  private final int[] from;
  private final int[] to;

  /** How many checks there are; an array of one, so that a snapshot may keep it. */
  private final int[] size = new int[1];

  Inspectors(Problem problem, WorkTimes times) {
    minutes = problem.plant().changes().firstArticleMin();
    checked =
        minutes > 0
            && problem.plant().hours().shifts().stream().anyMatch(s -> s.inspectors().isPresent());
    from = new int[checked ? problem.jobs().size() : 0];
    to = new int[from.length];
    List<WorkTimes.Step> steps = checked ? times.inspectors() : List.of();
    edge = steps.stream().mapToInt(WorkTimes.Step::from).toArray();
    inHouse = steps.stream().mapToInt(WorkTimes.Step::people).toArray();
  }

  boolean checked() {
    return checked;
  }

  void name(Snapshot.Changing all) {
    all.add(from, to, size);
  }

  void reset() {
    size[0] = 0;
  }

  /** When the check of a change begins that starts at a working minute of a press. */
  private int checkFrom(Spans press, int start, int changeMin) {
    int before = Math.max(0, changeMin - minutes);
    return before == 0 ? start : press.next(press.finish(start, before));
  }

  /** The start of a change after which its check does not begin before a time. */
  int startFor(Spans press, int time, int changeMin) {
    return press.startFor(time, Math.max(0, changeMin - minutes));
  }

  /** Takes an inspector for the end of a change. */
  void take(Spans press, int start, int changeMin, int end) {
    int left = 0;
    for (int i = 0; i < size[0]; i++) {
      if (to[i] > start) {
        from[left] = from[i];
        to[left++] = to[i];
      }
    }
    size[0] = left;
    from[size[0]] = checkFrom(press, start, changeMin);
    to[size[0]++] = end;
  }

  /**
   * The start itself when an inspector is there for the end of a change; otherwise the first time
   * before which its check cannot begin, {@link Spans#FAR} for never.
   */
  int next(Spans press, int start, int changeMin, int end) {
    int begin = checkFrom(press, start, changeMin);
    int taken = 0;
    int free = Spans.FAR;
    for (int i = 0; i < size[0]; i++) {
      if (from[i] < end && to[i] > begin) {
        taken++;
        free = Math.min(free, to[i]);
      }
    }
    int i = Arrays.binarySearch(edge, begin);
    i = i < 0 ? -i - 2 : i;
    for (int k = Math.max(0, i); k < edge.length && edge[k] < end; k++) {
      int segmentFrom = Math.max(begin, edge[k]);
      int segmentTo = k + 1 < edge.length ? Math.min(end, edge[k + 1]) : end;
      if (inHouse[k] <= taken && press.worksIn(segmentFrom, segmentTo)) {
        return Math.min(taken > 0 ? free : Spans.FAR, nextEdge(begin));
      }
    }
    return edge.length == 0 || end > edge[edge.length - 1] ? Spans.FAR : start;
  }

  private int nextEdge(int time) {
    int i = Arrays.binarySearch(edge, time + 1);
    i = i < 0 ? -i - 1 : i;
    return i < edge.length ? edge[i] : Spans.FAR;
  }
}
