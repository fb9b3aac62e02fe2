package pressweek.reports.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Component;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Take;
import pressweek.data.problem.Unplaced;
import pressweek.reports.pulls.InsertWords;
import pressweek.reports.schedule.PlanBook;

/**
 * What runs short: every component for which a run of the plan waits or for want of which a line is
 * unplaced. Runs that wait want it when they begin to wait; lines that are unplaced, by the time at
 * which they would have to start to be on time.
 */
final class Shortages {
  private final PlanBook book;
  private final FreeStock free;

  private Shortages(PlanBook book) {
    this.book = book;
    this.free = new FreeStock(book);
  }

  /** A wish for a component: when, how much, and what is held up by it, if anything. */
  private record Want(int atMin, long pieces, String delays, String stops) {}

  /** All shortages, what runs out first first. */
  static List<Shortage> of(PlanBook book) {
    Shortages shortages = new Shortages(book);
    Map<String, Component> missed = shortages.missed();
    List<Shortage> found = new ArrayList<>();
    missed.forEach((what, component) -> found.add(shortages.shortage(what, component)));
    found.sort(Comparator.comparingInt(Shortage::runsOutMin).thenComparing(Shortage::what));
    return found;
  }

  /** Components that something waits for or lacks. */
  private Map<String, Component> missed() {
    Map<String, Component> missed = new TreeMap<>();
    for (Run run : book.plan().runs()) {
      for (Wait wait : run.waits()) {
        if (wait.cause() == Cause.INSERTS) {
          ids(wait.what()).forEach(id -> missed.put(id, book.component(run, id)));
        }
      }
    }
    for (Unplaced line : book.plan().unplaced()) {
      for (String id : ids(line.lacks().orElse(""))) {
        job(line).flatMap(job -> leastTake(job, id)).ifPresent(t -> missed.put(id, t.component()));
      }
    }
    return missed;
  }

  private static List<String> ids(String list) {
    return list.isEmpty() ? List.of() : List.of(list.split("\\|", -1));
  }

  private Optional<Job> job(Unplaced line) {
    return book.plan().problem().jobs().stream()
        .filter(job -> job.id().equals(line.id()))
        .findFirst();
  }

  private static Optional<Take> leastTake(Job job, String what) {
    return job.options().stream()
        .flatMap(option -> option.making().takes().stream())
        .filter(take -> take.insert().equals(what))
        .min(Comparator.comparingLong(Shortages::pieces));
  }

  private static long pieces(Take take) {
    return (long) take.pieces() + take.startupPieces();
  }

  private List<Want> wants(String what) {
    List<Want> wants = new ArrayList<>();
    for (FreeStock.Use use : free.uses(what)) {
      Optional<Wait> wait =
          use.run().waits().stream()
              .filter(w -> w.cause() == Cause.INSERTS && ids(w.what()).contains(what))
              .findFirst();
      String delays = wait.isPresent() ? use.run().id() : "";
      int at = wait.map(Wait::fromMin).orElse(use.needMin());
      wants.add(new Want(at, use.pieces(), delays, ""));
    }
    for (Unplaced line : book.plan().unplaced()) {
      if (ids(line.lacks().orElse("")).contains(what)) {
        job(line).ifPresent(job -> wants.add(stopped(job, what)));
      }
    }
    wants.sort(Comparator.comparingInt(Want::atMin));
    return wants;
  }

  private Want stopped(Job job, String what) {
    int start = book.plan().problem().plant().hours().startMin();
    int end = book.plan().problem().plant().hours().endMin();
    int run = job.options().stream().mapToInt(o -> o.pace().runMin()).min().orElse(0);
    long latest = (long) job.deadline().dueMin() - job.deadline().afterMin() - run;
    int at = (int) Math.max(start, Math.min(end, latest));
    return new Want(at, leastTake(job, what).map(Shortages::pieces).orElse(0L), "", job.id());
  }

  private Shortage shortage(String what, Component component) {
    List<Want> wants = wants(what);
    Gap gap = gap(what, wants);
    List<Receipt> receipts = free.receipts(what);
    Optional<Receipt> cure =
        receipts.stream()
            .filter(r -> r.usableMin() >= gap.fromMin())
            .filter(r -> free.cameIn(what, r.usableMin()) >= wanted(wants, r.usableMin()))
            .findFirst();
    int last = receipts.isEmpty() ? 0 : receipts.get(receipts.size() - 1).usableMin();
    int end = Math.max(last, book.plan().problem().plant().hours().endMin());
    long toOrder = Math.max(0, wanted(wants, end) - free.cameIn(what, end));
    return new Shortage(
        what,
        component,
        words(what, component),
        gap.fromMin(),
        gap.pieces(),
        new Shortage.Work(
            wants.stream().map(Want::delays).filter(id -> !id.isEmpty()).toList(),
            wants.stream().map(Want::stops).filter(id -> !id.isEmpty()).toList()),
        cure,
        new Shortage.Supply(
            toOrder, free.held(what), alternatives(what, component, gap.fromMin())));
  }

  private record Gap(int fromMin, long pieces) {}

  /**
   * When more is wanted than there is, and the most that is missing. Where stock is there but kept
   * for runs that were planned first, what is missing is counted against all that the week takes.
   */
  private Gap gap(String what, List<Want> wants) {
    int from = Integer.MAX_VALUE;
    long most = 0;
    for (Want want : wants) {
      long missing = wanted(wants, want.atMin()) - free.cameIn(what, want.atMin());
      if (missing > 0) {
        from = Math.min(from, want.atMin());
        most = Math.max(most, missing);
      }
    }
    if (most > 0) {
      return new Gap(from, most);
    }
    Want first =
        wants.stream()
            .filter(w -> !w.delays().isEmpty() || !w.stops().isEmpty())
            .findFirst()
            .orElseThrow();
    long all = wanted(wants, Integer.MAX_VALUE) - free.cameIn(what, first.atMin());
    return new Gap(first.atMin(), Math.max(1, Math.min(first.pieces(), all)));
  }

  private static long wanted(List<Want> wants, int minute) {
    return wants.stream().filter(w -> w.atMin() <= minute).mapToLong(Want::pieces).sum();
  }

  private String words(String what, Component component) {
    return component == Component.INSERT
        ? book.insert(what).map(InsertWords::of).orElse("not in inserts.csv")
        : component.word();
  }

  private List<String> alternatives(String what, Component component, int from) {
    List<String> alternatives = new ArrayList<>();
    if (component == Component.INSERT) {
      List<Insert> all = book.plan().problem().materials().inserts();
      for (Insert other : book.insert(what).map(part -> Alike.to(part, all)).orElse(List.of())) {
        long spare = free.spare(other.id(), from);
        if (spare > 0) {
          alternatives.add(other.id() + " (" + spare + " free)");
        }
      }
    }
    return alternatives;
  }
}
