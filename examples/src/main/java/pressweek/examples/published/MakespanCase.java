package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Scanner;
import pressweek.data.problem.Problem;

/**
 * Unrelated parallel machines with machine- and sequence-dependent setups, makespan: a file of E.
 * Vallada and R. Ruiz, European Journal of Operational Research 211 (2011) 612-622.
 */
final class MakespanCase {
  private final int[][] minutes;
  private final int[][][] setup;

  private MakespanCase(int[][] minutes, int[][][] setup) {
    this.minutes = minutes;
    this.setup = setup;
  }

  /** Reads a file of theirs. */
  static MakespanCase read(Path file) throws IOException {
    try (Scanner in = new Scanner(Files.readString(file))) {
      int jobs = in.nextInt();
      int machines = in.nextInt();
      in.nextLine();
      in.nextLine();
      int[][] minutes = new int[jobs][machines];
      for (int[] row : minutes) {
        for (int m = 0; m < machines; m++) {
          row[in.nextInt()] = in.nextInt();
        }
      }
      in.next("SSD");
      int[][][] setup = new int[machines][jobs][jobs];
      for (int[][] matrix : setup) {
        in.next("M\\d+");
        for (int[] row : matrix) {
          Arrays.setAll(row, k -> in.nextInt());
        }
      }
      return new MakespanCase(minutes, setup);
    } catch (java.util.NoSuchElementException e) {
      throw new IOException(file + ": expected n, m, process times and SSD matrices", e);
    }
  }

  int jobs() {
    return minutes.length;
  }

  int machines() {
    return setup.length;
  }

  /** The same as a week whose close is charged. */
  Problem problem() {
    RoundTheClock week = new RoundTheClock(machines(), false);
    int horizon = 1;
    for (int[] row : minutes) {
      week.job(0, 1, row);
      horizon += Arrays.stream(row).max().orElse(0);
    }
    int longest = 0;
    for (int m = 0; m < machines(); m++) {
      for (int from = 0; from < jobs(); from++) {
        for (int to = 0; to < jobs(); to++) {
          if (from != to) {
            week.change(m, from, to, setup[m][from][to]);
            longest = Math.max(longest, setup[m][from][to]);
          }
        }
      }
    }
    return week.build(horizon + jobs() * longest);
  }
}
