package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Needs;
import pressweek.data.files.OrderRow;
import pressweek.data.files.RunningRow;
import pressweek.data.files.StageRow;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Option;
import pressweek.data.problem.Quantity;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/**
 * Makes two jobs of a line whose item is molded over a core: the core first, as many as the second
 * run takes at most, then the item. The core's lateness is not charged, since the item's is.
 */
final class CoreLines {
  private final Shop shop;
  private final LineReader lines;
  private final FinishedStock finished;

  CoreLines(Shop shop, LineReader lines, FinishedStock finished) {
    this.shop = shop;
    this.lines = lines;
    this.finished = finished;
  }

  /** The two jobs; the second alone when its cores are there or it is running already. */
  Attempt<Made> find(OrderRow order, Netted netted, StageRow stage) {
    OrderRow over = order.over();
    shop.reservations().parts(order.id(), List.of(order.part(1).id(), over.id()));
    return LineReader.notHeld(order)
        .then(row -> core(row, stage))
        .then(
            core -> {
              Quantity quantity = lines.quantity(order, netted);
              double standMm = standMm(core);
              return lines
                  .readOver(over, quantity, standMm)
                  .then(second -> both(core, second, stage));
            });
  }

  /** The core as an order line that demands what the item does. */
  private Attempt<OrderRow> core(OrderRow order, StageRow stage) {
    return shop.items()
        .readOver(order)
        .then(
            item ->
                new Done<>(
                    order.core(stage.core(), List.copyOf(Needs.of(order.needs(), item.item())))));
  }

  private double standMm(OrderRow core) {
    return shop.items().read(core) instanceof Done<ReadItem> done ? done.value().standMm() : 0;
  }

  private Attempt<Made> both(OrderRow core, LineReader.Line second, StageRow stage) {
    int taken = second.job().options().stream().mapToInt(this::cores).max().orElse(0);
    Optional<RunningRow> running = lines.running(core.id());
    boolean overRuns = lines.running(second.job().id()).isPresent();
    int made = running.map(RunningRow::goodMade).orElse(0);
    int open = Math.max(0, taken - made);
    int fromStock = finished.cores(core, open);
    boolean there = open == fromStock || (overRuns && running.isEmpty());
    if (there) {
      return new Done<>(Made.of(second));
    }
    Quantity quantity = new Quantity(taken, fromStock, made, open - fromStock);
    Attempt<LineReader.Line> first = lines.read(core, quantity);
    if (first instanceof Stopped<LineReader.Line> stopped) {
      return new Stopped<>(
          "core " + core.item() + ": " + stopped.reason(), stopped.cure(), stopped.column());
    }
    LineReader.Line line = ((Done<LineReader.Line>) first).value();
    List<Job> jobs = new ArrayList<>();
    jobs.add(before(line.job(), second.job(), stage.restMin()));
    jobs.add(second.job());
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    gaps.addAll(line.gaps());
    gaps.addAll(second.gaps());
    Link link = new Link(second.job().id(), line.job().id(), stage.restMin());
    return new Done<>(new Made(jobs, Optional.of(link), gaps));
  }

  /** Cores that a run takes: all that it molds, and its start-up unless that runs with plugs. */
  private int cores(Option option) {
    int shots = option.making().shots();
    boolean plugs =
        shop.moldFinder().byId(option.mold()).map(m -> m.change().dummyPlugs()).orElse(false);
    int startup = plugs ? 0 : option.making().startupShots();
    return (shots + startup) * option.making().liveCavities();
  }

  /** The core is due when the item must begin at the latest, as far as its quickest run says. */
  private static Job before(Job core, Job item, int restMin) {
    int runMin = item.options().stream().mapToInt(o -> o.pace().runMin()).min().orElse(0);
    Deadline own = core.deadline();
    int dueMin = item.deadline().dueMin() - item.deadline().afterMin() - runMin - restMin;
    return new Job(
        core.line(),
        core.item(),
        core.quantity(),
        new Deadline(own.earliestMin(), dueMin, 0, 0),
        core.resin(),
        core.colour(),
        core.foodGrade(),
        core.options());
  }
}
