package pressweek.solver.search;

import java.util.SplittableRandom;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * Simulated annealing over sequences. What a move may cost is drawn before it is timed, so that the
 * timing pass gives up as soon as that is exceeded. Not for use by several threads.
 *
 * <p>S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by Simulated Annealing, Science
 * 220 (1983) 671-680, from memory.
 */
public final class Annealing {
  private static final int SAMPLE = 300;

  /** Of four attempts on several presses so many are given up boldly. */
  private static final int BOLD = Integer.getInteger("bold", 2);

  private final TimingPass pass;
  private final SplittableRandom random;
  private final Neighbours neighbours;
  private final WeekTables week;

  private Sequences best;
  private long bestCost;
  private long moves;

  /** An annealing from a start. */
  public Annealing(WeekTables week, Neighbours neighbours, Sequences start, long seed) {
    this.week = week;
    pass = TimingPass.full(week);
    random = new SplittableRandom(seed);
    this.neighbours = neighbours;
    best = start.copy();
    bestCost = pass.value(best);
  }

  /** The best sequences so far. */
  public Sequences best() {
    return best;
  }

  /** What they cost, broken promises priced. */
  public long bestCost() {
    return bestCost;
  }

  /** Moves tried so far. */
  public long moves() {
    return moves;
  }

  /** Takes over sequences that another search has found, when they are better. */
  public void take(Sequences other, long cost) {
    if (cost < bestCost) {
      best = other.copy();
      bestCost = cost;
    }
  }

  /** The mean of what moves from the best cost more, where they cost more and not too much. */
  public double typicalStep() {
    Sequences sequences = best.copy();
    Moves made = new Moves(week, sequences, neighbours, random);
    double[] more = new double[SAMPLE];
    int size = 0;
    for (int i = 0; i < SAMPLE * 3 && size < SAMPLE && made.any(); i++) {
      if (made.make()) {
        long cost = pass.value(sequences);
        made.undo();
        if (cost > bestCost) {
          more[size++] = cost - bestCost;
        }
      }
    }
    java.util.Arrays.sort(more, 0, size);
    return size == 0 ? 0 : more[size / 4];
  }

  /**
   * One round from the best so far; the temperature falls evenly.
   *
   * @param hottest temperature at which it begins, thousandths of a cent
   * @param pace when it ends
   * @param found told of each better plan
   */
  public void round(double hottest, Pace pace, Runnable found) {
    Sequences sequences = best.copy();
    Moves made = new Moves(week, sequences, neighbours, random);
    if (!made.any()) {
      return;
    }
    long cost = pass.keep(sequences);
    double done = pace.done(moves);
    double temperature = hottest;
    while (done < 1) {
      if ((++moves & 31) == 0) {
        done = pace.done(moves);
        double left = Math.max(0, 1 - done);
        temperature = hottest * left * left;
      }
      if (!made.make()) {
        continue;
      }
      long most = cost + (long) (-temperature * Math.log(1 - random.nextDouble()));
      boolean bold = week.pressCount() == 1 || random.nextInt(4) < BOLD;
      long tried = pass.attempt(sequences, most, made.touched(), bold);
      if (tried > most) {
        made.undo();
        continue;
      }
      made.keep();
      cost = pass.keep(sequences, made.touched());
      assert cost == tried;
      if (cost < bestCost) {
        bestCost = cost;
        best = sequences.copy();
        found.run();
      }
    }
  }
}
