package pressweek.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * How long the run of each line is, so that every press can be filled: lines are dealt to the least
 * loaded of their presses, the pickiest first, and the runs of a press are stretched or shrunk to
 * fill its share, a few times over. With runs and 45 minutes of change a line, vertical presses
 * fill 94 % of their hours and horizontal ones 88 %.
 */
final class RunLengths {
  private static final int CHANGE_MIN = 45;
  private static final int VERTICAL_PCT = 94;
  private static final int HORIZONTAL_PCT = 88;
  private static final int SHORTEST_MIN = 20;
  private static final int LONGEST_MIN = 1200;
  private static final int ROUNDS = 6;

  private final PlantSize size;
  private final List<DrawnLine> lines;
  private final List<Integer> pickiestFirst;
  private final long[] minutes;

  private RunLengths(PlantSize size, List<DrawnLine> lines, List<Integer> shares) {
    this.size = size;
    this.lines = lines;
    this.minutes = shares.stream().mapToLong(share -> 3L * share).toArray();
    this.pickiestFirst =
        IntStream.range(0, lines.size())
            .boxed()
            .sorted(Comparator.comparingInt(i -> lines.get(i).presses().size()))
            .toList();
  }

  /**
   * Minutes of each line's run.
   *
   * @param shares how long each run is, of a hundred the mean
   */
  static List<Integer> of(PlantSize size, List<DrawnLine> lines, List<Integer> shares) {
    RunLengths lengths = new RunLengths(size, lines, shares);
    for (int round = 0; round < ROUNDS; round++) {
      lengths.dealt().forEach(lengths::fill);
    }
    return IntStream.range(0, lines.size()).mapToObj(i -> (int) lengths.minutes[i]).toList();
  }

  /** Lines by the press that they were dealt to. */
  private Map<DrawnPress, List<Integer>> dealt() {
    Map<DrawnPress, List<Integer>> dealt = new TreeMap<>(Comparator.comparing(DrawnPress::id));
    Map<DrawnPress, Long> loads = new TreeMap<>(Comparator.comparing(DrawnPress::id));
    for (int i : pickiestFirst) {
      DrawnPress least =
          lines.get(i).presses().stream()
              .min(Comparator.comparingLong(p -> loads.getOrDefault(p, 0L)))
              .orElseThrow();
      loads.merge(least, minutes[i] + CHANGE_MIN, Long::sum);
      dealt.computeIfAbsent(least, p -> new ArrayList<>()).add(i);
    }
    return dealt;
  }

  private void fill(DrawnPress press, List<Integer> runs) {
    int pct = press.vertical() ? VERTICAL_PCT : HORIZONTAL_PCT;
    long room = (long) size.pressMinutes() * pct / 100 - (long) runs.size() * CHANGE_MIN;
    long now = runs.stream().mapToLong(i -> minutes[i]).sum();
    for (int i : runs) {
      minutes[i] = Math.max(SHORTEST_MIN, Math.min(LONGEST_MIN, minutes[i] * room / now));
    }
  }
}
