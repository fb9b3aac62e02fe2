package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Receipt;

/** The things of a plan that have luck, numbered, with their keys. Shared by all threads. */
final class Week {
  final Plan plan;
  final long seed;
  final List<Run> runs;
  final List<Press> presses;
  final List<Receipt> receipts;
  final List<String> molds = new ArrayList<>();

  /** The mold of a run. */
  final int[] moldOf;

  /** Share of the pieces of a run that its plan allows for scrap. */
  final double[] scrap;

  final int[] due;
  final long[] cycleKey;
  final long[] scrapKey;
  final long[] changeKey;
  final long[] breakdownKey;
  final long[] receiptKey;

  Week(Plan plan, long seed) {
    this.plan = plan;
    this.seed = seed;
    runs = plan.runs();
    presses = plan.problem().floor().presses();
    receipts = plan.problem().materials().stock().receipts();
    int n = runs.size();
    moldOf = new int[n];
    scrap = new double[n];
    due = new int[n];
    cycleKey = new long[n];
    scrapKey = new long[n];
    changeKey = new long[n];
    Map<String, Job> jobs = new HashMap<>();
    plan.problem().jobs().forEach(j -> jobs.put(j.id(), j));
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < n; i++) {
      Run run = runs.get(i);
      Job job = java.util.Objects.requireNonNull(jobs.get(run.job()), run.job());
      if (numbers.putIfAbsent(run.mold(), molds.size()) == null) {
        molds.add(run.mold());
      }
      moldOf[i] = numbers.getOrDefault(run.mold(), -1);
      scrap[i] = scrap(job, run);
      due[i] = job.deadline().dueMin();
      cycleKey[i] = Draws.key(seed, "cycle", run.job());
      scrapKey[i] = Draws.key(seed, "scrap", run.job());
      changeKey[i] = Draws.key(seed, "change", run.job());
    }
    breakdownKey = presses.stream().mapToLong(p -> Draws.key(seed, "breakdown", p.id())).toArray();
    receiptKey = receiptKeys();
  }

  private static double scrap(Job job, Run run) {
    for (Option option : job.options()) {
      if (option.press().equals(run.press()) && option.mold().equals(run.mold())) {
        double pieces = (double) option.making().shots() * option.making().liveCavities();
        return Math.max(0, 1 - job.quantity().good() / pieces);
      }
    }
    return 0;
  }

  /** Receipts of the same thing at the same time are told apart by their order. */
  private long[] receiptKeys() {
    Map<String, Integer> seen = new HashMap<>();
    long[] keys = new long[receipts.size()];
    for (int i = 0; i < keys.length; i++) {
      Receipt receipt = receipts.get(i);
      String id = receipt.what() + " " + receipt.expectedMin();
      int count = seen.merge(id, 1, Integer::sum);
      keys[i] = Draws.key(seed, "receipt", id + " " + count);
    }
    return keys;
  }
}
