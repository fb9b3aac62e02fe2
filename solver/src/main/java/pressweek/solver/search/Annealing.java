package pressweek.solver.search;

import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import pressweek.solver.timing.PressModel;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * Simulated annealing over sequences. What a move may cost is drawn before it is timed, so that the
 * timing pass gives up as soon as that is exceeded. Not for use by several threads.
 *
 * <p>On several presses a rough model ({@link PressModel}) looks at a move first, and only those
 * that it does not think poor are timed.
 *
 * <p>S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by Simulated Annealing, Science
 * 220 (1983) 671-680, from memory.
 */
public final class Annealing {
  /** Moves that are sampled for a typical step, fewer where a pass takes long. */
  private static final int SAMPLE = 600;

  private static final int SAMPLE_JOBS = 100_000;

  /** The most that the sample takes of a round. */
  private static final double SAMPLE_SHARE = 0.05;

  /** Of four attempts on several presses so many are given up boldly. */
  private static final int BOLD = 2;

  /** Of moves that the rough model thinks poor, one in so many is timed all the same. */
  private static final int UNASKED = 100;

  /** Of moves that cost more so many percent cost less than a typical step. */
  private static final int SMALL_PCT = 2;

  /**
   * A typical step is no more than the mean cost of a job up to so many jobs, and less in
   * proportion beyond, since a larger week cannot be searched as hot in the same time; but no less
   * than a share.
   */
  private static final double JOBS_OF_A_MEAN = 60;

  private static final double LEAST_SHARE = 0.03;

  /** After so many moves the time is looked at; in a week of more jobs than LARGE after each. */
  private static final int LOOKS = 32;

  private static final int LARGE = 500;

  /** Where the rough model is enough, a round ends at this share of the heat it began with. */
  private static final double COLDEST = 0.02;

  /** So many moves by the rough model alone count as one: they take no longer. */
  private static final int ROUGH_MOVES = 10;

  private final PressModel model;
  private final TimingPass pass;
  private final SplittableRandom random;
  private final Neighbours neighbours;
  private final WeekTables week;

  private Sequences best;

  /** Where the last rough round ended; null before the first. */
  private @Nullable Sequences current;

  private long bestCost;
  private long moves;

  /** Whether the rough model came to what the timing pass did in all of the last sample. */
  private boolean agrees;

  /**
   * Whether a round by the rough model came out at what the timing pass did not: no more of them.
   */
  private boolean doubted;

  /** An annealing from a start. */
  public Annealing(WeekTables week, Neighbours neighbours, Sequences start, long seed) {
    this.week = week;
    pass = TimingPass.full(week);
    model = new PressModel(week);
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

  /** Moves timed or sorted out so far; many by the rough model alone count as one. */
  public long moves() {
    return moves;
  }

  /**
   * Whether a rough model came to what the timing pass did in all of the last sample, and there is
   * no overtime to open, of which it knows nothing. Then it is searched by, and a round may begin
   * as hot as a job costs in the mean.
   */
  public boolean agrees() {
    return agrees;
  }

  /** What a job costs in the mean. */
  public double meanCost() {
    return bestCost / (double) Math.max(1, week.jobCount());
  }

  /** Takes over sequences that another search has found, when they are better. */
  public void take(Sequences other, long cost) {
    if (cost < bestCost) {
      best = other.copy();
      bestCost = cost;
    }
  }

  /**
   * What a small step up from the best costs: of moves that cost more, nearly the least.
   *
   * @param pace of the round that it is for; the sample ends when it has taken a small part of it
   */
  public double typicalStep(Pace pace) {
    Sequences sequences = best.copy();
    agrees = pass.keep(sequences) == model.keep(sequences);
    agrees &= !doubted && week.overtimeShifts() == 0;
    double most = pace.done(moves) + SAMPLE_SHARE;
    Moves made = new Moves(week, sequences, neighbours, random);
    int sample = Math.max(50, Math.min(SAMPLE, SAMPLE_JOBS / Math.max(1, week.jobCount())));
    double[] more = new double[sample];
    int size = 0;
    for (int i = 0; i < sample * 3 && size < sample && made.any(); i++) {
      if (pace.done(moves) > most) {
        break;
      }
      if (made.make()) {
        long cost = pass.attempt(sequences, Long.MAX_VALUE, made.touched(), false);
        agrees &= !made.isFiltered() || cost == modelled(sequences, made);
        made.undo();
        if (cost > bestCost) {
          more[size++] = cost - bestCost;
        }
      }
    }
    java.util.Arrays.sort(more, 0, size);
    double share = Math.max(LEAST_SHARE, Math.min(1, JOBS_OF_A_MEAN / week.jobCount()));
    return size == 0 ? 0 : Math.min(share * meanCost(), more[size * SMALL_PCT / 100]);
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
    if (agrees) {
      Sequences lowest = roughly(made, sequences, hottest, pace);
      doubted |= offer(lowest, found) != model.keep(lowest);
    } else {
      anneal(made, sequences, hottest, pace, found);
    }
  }

  /**
   * A round by the rough model alone, for a week too large to time many moves. The model takes the
   * waits over that the timing pass finds at the start, and prices the time of setters.
   *
   * <p>In a large week a small change moves who gets the setter first all over the plant, so that
   * most good moves look bad when they are timed; in the mean they are good.
   *
   * @param setterPrice what a minute of a setter is worth, as a multiple of what it costs
   * @param hottest temperature at which it begins, thousandths of a cent
   * @param pace when it ends
   * @param found told when a better plan came out
   * @return what the plan that came out costs by the timing pass
   */
  public long roughRound(double setterPrice, double hottest, Pace pace, Runnable found) {
    Sequences sequences = current == null ? best.copy() : current;
    current = sequences;
    Moves made = new Moves(week, sequences, neighbours, random);
    model.setterPrice(setterPrice);
    roughly(made, sequences, hottest, pace);
    model.setterPrice(0);
    return offer(sequences, found);
  }

  /** Anneals by the rough model; answers the best by it where it agrees with the timing pass. */
  private Sequences roughly(Moves made, Sequences sequences, double hottest, Pace pace) {
    pass.keep(sequences);
    long cost = model.keep(sequences, pass);
    long least = cost;
    Sequences lowest = sequences.copy();
    double done = made.any() ? pace.done(moves) : 1;
    double temperature = hottest;
    int tried = 0;
    while (done < 1) {
      if (++tried == ROUGH_MOVES) {
        tried = 0;
        done = pace.done(++moves);
        temperature = hottest * Math.pow(COLDEST, done);
      }
      if (!made.make()) {
        continue;
      }
      long most = cost + (long) (-temperature * Math.log(1 - random.nextDouble()));
      if (!made.isFiltered() || model.attempt(sequences, most, made.touched(), true) > most) {
        made.undo();
        continue;
      }
      made.keep();
      cost = model.keep(sequences, made.touched());
      if (agrees && cost < least) {
        least = cost;
        lowest = sequences.copy();
      }
    }
    return lowest;
  }

  private long offer(Sequences offered, Runnable found) {
    long cost = pass.value(offered);
    if (cost < bestCost) {
      bestCost = cost;
      best = offered.copy();
      found.run();
    }
    return cost;
  }

  private long modelled(Sequences sequences, Moves made) {
    return model.attempt(sequences, Long.MAX_VALUE, made.touched(), false);
  }

  /** Whether a rough model thinks that a move costs too much; now and then it is not asked. */
  private boolean isPoor(Sequences sequences, Moves made, long most) {
    return model.attempt(sequences, most, made.touched(), true) > most
        && random.nextInt(UNASKED) > 0;
  }

  private void anneal(Moves made, Sequences sequences, double hottest, Pace pace, Runnable found) {
    if (!made.any()) {
      return;
    }
    long cost = pass.keep(sequences);
    boolean filtered = week.pressCount() > 1;
    long rough = filtered ? model.keep(sequences, pass) : 0;
    double done = pace.done(moves);
    double temperature = hottest;
    while (done < 1) {
      if (++moves % (week.jobCount() > LARGE ? 1 : LOOKS) == 0) {
        done = pace.done(moves);
        double left = Math.max(0, 1 - done);
        temperature = hottest * left * left;
      }
      if (!made.make()) {
        continue;
      }
      long most = cost + (long) (-temperature * Math.log(1 - random.nextDouble()));
      if (filtered && made.isFiltered() && isPoor(sequences, made, rough + most - cost)) {
        made.undo();
        continue;
      }
      boolean bold = week.pressCount() == 1 || random.nextInt(4) < BOLD;
      long tried = pass.attempt(sequences, most, made.touched(), bold);
      if (tried > most) {
        made.undo();
        continue;
      }
      made.keep();
      cost = pass.keep(sequences, made.touched());
      rough = filtered ? model.keep(sequences, pass) : 0;
      assert cost == tried;
      if (cost < bestCost) {
        bestCost = cost;
        best = sequences.copy();
        found.run();
      }
    }
  }
}
