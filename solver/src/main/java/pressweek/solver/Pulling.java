package pressweek.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Take;

/**
 * Assigns lots to runs in the order in which they need their inserts: lots reserved for the line,
 * then for the order, then free lots, each first expired, then first in; then receipts. Held lots,
 * and lots that expire within the horizon, never.
 */
final class Pulling {
  private final Problem problem;
  private final Map<String, List<Source>> sources = new HashMap<>();

  private Pulling(Problem problem) {
    this.problem = problem;
    int end = problem.plant().hours().endMin();
    List<Lot> lots = new ArrayList<>(problem.materials().stock().lots());
    lots.sort(
        Comparator.<Lot>comparingInt(l -> l.expiresMin().orElse(Integer.MAX_VALUE))
            .thenComparingInt(Lot::receivedMin)
            .thenComparing(Lot::id));
    for (Lot lot : lots) {
      if (lot.status() == LotStatus.USABLE && lot.expiresMin().orElse(end) >= end) {
        add(lot.what(), new Source(lot.id(), lot.bin(), 0, lot.reservedFor(), lot.onHand()));
      }
    }
    List<Receipt> receipts = new ArrayList<>(problem.materials().stock().receipts());
    receipts.sort(Comparator.comparingInt(Receipt::usableMin));
    for (Receipt receipt : receipts) {
      add(receipt.what(), new Source("", "", receipt.usableMin(), "", receipt.quantity()));
    }
  }

  /** A lot or a receipt, and what is left of it. */
  private static final class Source {
    private final String lot;
    private final String bin;
    private final int receiptMin;
    private final String reservedFor;
    private int left;

    Source(String lot, String bin, int receiptMin, String reservedFor, int left) {
      this.lot = lot;
      this.bin = bin;
      this.receiptMin = receiptMin;
      this.reservedFor = reservedFor;
      this.left = left;
    }
  }

  private void add(String what, Source source) {
    sources.computeIfAbsent(what, w -> new ArrayList<>()).add(source);
  }

  /** The pulls of runs, by the time at which they are needed. */
  static List<Pull> of(Problem problem, List<Run> runs) {
    Pulling pulling = new Pulling(problem);
    Map<String, Job> jobs = new HashMap<>();
    problem.jobs().forEach(j -> jobs.put(j.id(), j));
    List<Run> order = new ArrayList<>(runs);
    order.sort(Comparator.comparingInt(Run::startMin).thenComparing(Run::id));
    List<Pull> pulls = new ArrayList<>();
    for (Run run : order) {
      Job job = jobs.get(run.job());
      if (job != null) {
        for (Take take : option(job, run).making().takes()) {
          pulling.pull(run, job, take, pulls);
        }
      }
    }
    return pulls;
  }

  private static Option option(Job job, Run run) {
    return job.options().stream()
        .filter(o -> o.press().equals(run.press()) && o.mold().equals(run.mold()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("run " + run.id() + " has no option"));
  }

  private int needBy(Run run) {
    return run.startMin() - problem.plant().crew().insertLeadMin();
  }

  private void pull(Run run, Job job, Take take, List<Pull> pulls) {
    boolean exchanged = run.change().kinds().stream().anyMatch(k -> k != ChangeKind.FOOD_CLEARANCE);
    int need = take.pieces() + (exchanged ? take.startupPieces() : 0);
    int needBy = needBy(run);
    if (!problem.materials().stock().checked()) {
      int all = need + take.reservedPieces();
      if (all > 0) {
        pulls.add(new Pull(run.id(), run.press(), needBy, take.insert(), "", "", 0, all));
      }
      return;
    }
    int reserved = draw(run, take, job.id(), take.reservedPieces(), pulls);
    reserved = draw(run, take, job.line().order(), reserved, pulls);
    int missing = draw(run, take, "", need + reserved, pulls);
    if (missing > 0) {
      throw new IllegalStateException(
          "run " + run.id() + " lacks " + missing + " of " + take.insert());
    }
  }

  /**
   * Draws pieces from the sources reserved for someone ("" for free ones); answers how many are
   * still missing.
   */
  private int draw(Run run, Take take, String who, int pieces, List<Pull> pulls) {
    int needBy = needBy(run);
    int missing = pieces;
    for (Source source : sources.getOrDefault(take.insert(), List.of())) {
      int drawn = Math.min(missing, source.left);
      if (drawn > 0 && source.reservedFor.equals(who) && source.receiptMin <= needBy) {
        source.left -= drawn;
        missing -= drawn;
        pulls.add(
            new Pull(
                run.id(),
                run.press(),
                needBy,
                take.insert(),
                source.lot,
                source.bin,
                source.receiptMin,
                drawn));
      }
    }
    return missing;
  }
}
