package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Problem;

/**
 * One machine, weighted tardiness, sequence-dependent setups: a file of the benchmark library of V.
 * A. Cicirello, Weighted Tardiness Scheduling with Sequence-Dependent Setups (Carnegie Mellon
 * University, 2003; doi:10.7910/DVN/VHA0VQ).
 */
final class TardinessCase {
  private final List<Integer> minutes = new ArrayList<>();
  private final List<Integer> weights = new ArrayList<>();
  private final List<Integer> dues = new ArrayList<>();
  private final List<int[]> setups = new ArrayList<>();

  private TardinessCase() {}

  /** Reads a file of the library. */
  static TardinessCase read(Path file) throws IOException {
    TardinessCase read = new TardinessCase();
    List<Integer> into = new ArrayList<>();
    boolean inSetups = false;
    for (String line : Files.readAllLines(file)) {
      String text = line.trim();
      switch (text) {
        case "Process Times:" -> into = read.minutes;
        case "Weights:" -> into = read.weights;
        case "Duedates:" -> into = read.dues;
        case "Setup Times:" -> inSetups = true;
        default -> {
          if (inSetups && text.matches("-?\\d+\\s+\\d+\\s+\\d+")) {
            String[] cells = text.split("\\s+", -1);
            read.setups.add(
                new int[] {
                  Integer.parseInt(cells[0]), Integer.parseInt(cells[1]), Integer.parseInt(cells[2])
                });
          } else if (text.matches("\\d+")) {
            into.add(Integer.parseInt(text));
          }
        }
      }
    }
    if (read.minutes.isEmpty()
        || read.minutes.size() != read.weights.size()
        || read.minutes.size() != read.dues.size()) {
      throw new IOException(file + ": expected as many weights and due dates as process times");
    }
    return read;
  }

  /** The same as a week on one press. */
  Problem problem() {
    RoundTheClock week = new RoundTheClock(1, true);
    for (int job = 0; job < minutes.size(); job++) {
      week.job(dues.get(job), weights.get(job), minutes.get(job));
    }
    int longest = 0;
    for (int[] setup : setups) {
      week.change(0, setup[0], setup[1], setup[2]);
      longest = Math.max(longest, setup[2]);
    }
    int work = minutes.stream().mapToInt(Integer::intValue).sum();
    return week.build(work + minutes.size() * longest + 1);
  }
}
