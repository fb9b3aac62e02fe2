package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.solver.rules.Names;

/**
 * Free usable stock of each insert over time, and what has been taken. A piece that has been
 * promised to a run, however late, is gone for all later decisions, so a shortage cannot arise
 * afterwards.
 */
final class InsertStock {
  private final int[][] time;
  private final int[][] level;
  private final int[] taken;
  private final int[] atHand;
  private final boolean checked;

  InsertStock(Problem problem, Names names) {
    checked = problem.materials().stock().checked();
    int n = names.inserts().size();
    time = new int[n][];
    level = new int[n][];
    taken = new int[n];
    atHand = new int[n];
    int i = 0;
    for (String insert : names.inserts()) {
      fill(i++, supplies(problem, insert));
    }
  }

  private record Supply(int time, int pieces) {}

  private static List<Supply> supplies(Problem problem, String insert) {
    int end = problem.plant().hours().endMin();
    List<Supply> supplies = new ArrayList<>();
    for (Lot lot : problem.materials().stock().lots()) {
      boolean free = lot.status() == LotStatus.USABLE && lot.reservedFor().isEmpty();
      if (lot.what().equals(insert) && free && lot.expiresMin().orElse(end) >= end) {
        supplies.add(new Supply(0, lot.onHand()));
      }
    }
    for (Receipt receipt : problem.materials().stock().receipts()) {
      if (receipt.what().equals(insert)) {
        supplies.add(new Supply(receipt.usableMin(), receipt.quantity()));
      }
    }
    supplies.sort(Comparator.comparingInt(Supply::time));
    return supplies;
  }

  private void fill(int insert, List<Supply> supplies) {
    time[insert] = supplies.stream().mapToInt(Supply::time).toArray();
    level[insert] = new int[supplies.size()];
    long sum = 0;
    for (int i = 0; i < supplies.size(); i++) {
      sum = Math.min(Spans.FAR, sum + supplies.get(i).pieces());
      level[insert][i] = (int) sum;
      if (time[insert][i] == 0) {
        atHand[insert] = (int) sum;
      }
    }
  }

  void reset() {
    Arrays.fill(taken, 0);
  }

  /**
   * When so many more pieces of an insert can be taken: 0 for at once, {@link Spans#FAR} for never.
   */
  int ready(int insert, int pieces) {
    if (!checked || pieces == 0) {
      return 0;
    }
    long need = (long) taken[insert] + pieces;
    if (need <= atHand[insert]) {
      return 0;
    }
    int[] levels = level[insert];
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] >= need) {
        return time[insert][i];
      }
    }
    return Spans.FAR;
  }

  void take(int insert, int pieces) {
    taken[insert] = (int) Math.min(Spans.FAR, (long) taken[insert] + pieces);
  }
}
