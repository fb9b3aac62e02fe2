package pressweek.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Making;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Option;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;

/**
 * Gives a drawn plant tips, cartons, labels, resin and masterbatch, some of them without any lot,
 * with lots that are scarce, held, reserved or expire in the week, and orders that ask for
 * declarations.
 */
final class RandomStock {
  private static final int WEEK = 7 * 1440;

  private final SplittableRandom random;
  private final Map<String, Component> kinds = new LinkedHashMap<>();
  private final Map<String, Long> needs = new HashMap<>();
  private final List<Lot> lots;
  private final List<Receipt> receipts;

  private RandomStock(Problem problem, long seed) {
    random = new SplittableRandom(seed);
    lots = new ArrayList<>(problem.materials().stock().lots());
    receipts = new ArrayList<>(problem.materials().stock().receipts());
  }

  /** The problem with components. */
  static Problem add(Problem problem, long seed) {
    return new RandomStock(problem, seed).all(problem);
  }

  private Problem all(Problem problem) {
    List<Job> jobs = problem.jobs().stream().map(this::job).toList();
    kinds.forEach(this::stock);
    Materials old = problem.materials();
    Stock stock = new Stock(old.stock().checked(), lots, receipts);
    return new Problem(
        problem.plant(),
        problem.floor(),
        new Materials(old.resins(), old.colours(), old.inserts(), stock),
        jobs,
        problem.unplaced(),
        problem.notChecked());
  }

  private boolean maybe(int percent) {
    return random.nextInt(100) < percent;
  }

  private Job job(Job job) {
    List<Take> more = new ArrayList<>();
    take(more, job, Component.TIP, 30);
    take(more, job, Component.CARTON, 70);
    take(more, job, Component.LABEL, 40);
    take(more, job, Component.RESIN, 40);
    take(more, job, Component.MASTERBATCH, 40);
    List<Option> options = new ArrayList<>();
    for (Option option : job.options()) {
      Making old = option.making();
      List<Take> takes = new ArrayList<>(old.takes());
      takes.addAll(more);
      Making making =
          new Making(
              old.shots(), old.liveCavities(), old.startupShots(), old.startupGrams(), takes);
      options.add(
          new Option(
              option.press(),
              option.mold(),
              option.tooling(),
              making,
              option.pace(),
              option.standing(),
              option.notes()));
    }
    return new Job(
        line(job.line()),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        options);
  }

  private OrderLine line(OrderLine line) {
    return new OrderLine(
        line.order(),
        line.line(),
        line.customer(),
        line.item(),
        line.quantity(),
        line.requestedMin(),
        maybe(30) ? List.of("rohs") : List.of(),
        line.note());
  }

  private void take(List<Take> takes, Job job, Component kind, int percent) {
    if (!maybe(percent)) {
      return;
    }
    String what = kind + "-" + random.nextInt(3);
    int pieces = 20 + random.nextInt(kind.weighed() ? 20_000 : 800);
    boolean atStart = kind != Component.CARTON && kind != Component.LABEL;
    int reserved = maybe(10) ? pieces / (1 + random.nextInt(2)) : 0;
    int startup = 0;
    if (reserved > 0) {
      String owner = maybe(50) ? job.id() : job.line().order();
      startup = atStart && maybe(50) ? 1 + random.nextInt(20) : 0;
      lots.add(lot(what, "R" + lots.size(), reserved + startup, WEEK + 5, LotStatus.USABLE, owner));
    }
    takes.add(
        new Take(kind, what, pieces - reserved, atStart ? random.nextInt(30) : 0, reserved)
            .withReservedStartup(startup));
    kinds.putIfAbsent(what, kind);
    needs.merge(what, (long) pieces, Long::sum);
  }

  /** Lots and deliveries for a quarter of the need up to twice as much; of some there are none. */
  private void stock(String what, Component kind) {
    if (maybe(15)) {
      return;
    }
    int need = (int) (needs.getOrDefault(what, 0L) * (25 + random.nextInt(175)) / 100);
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      int expires = maybe(40) ? random.nextInt(WEEK) : 10 * WEEK;
      LotStatus status = maybe(10) ? LotStatus.HELD : LotStatus.USABLE;
      lots.add(lot(what, "L" + lots.size(), need / count, expires, status, ""));
    }
    if (maybe(50)) {
      int at = RandomPlant.START + random.nextInt(WEEK / 2);
      receipts.add(new Receipt(what, need / 2, at, at + random.nextInt(600)));
    }
  }

  private Lot lot(
      String what, String id, int pieces, int expires, LotStatus status, String reservedFor) {
    return new Lot(
        what,
        id,
        "bin " + random.nextInt(20),
        pieces,
        RandomPlant.START - random.nextInt(50_000),
        OptionalInt.of(RandomPlant.START + expires),
        status,
        reservedFor);
  }
}
