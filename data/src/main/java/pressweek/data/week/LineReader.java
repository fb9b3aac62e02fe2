package pressweek.data.week;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Needs;
import pressweek.data.files.OrderRow;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PlantRow.HoursRule;
import pressweek.data.files.RunningRow;
import pressweek.data.molding.Amounts;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Quantity;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Makes a job of an order line, or says why it cannot be planned. */
final class LineReader {
  private final Shop shop;
  private final Map<String, RunningRow> running = new HashMap<>();
  private final Set<String> promised;

  /**
   * A job, and what could not be checked of it.
   *
   * @param job the job
   * @param gaps what could not be checked
   */
  record Line(Job job, Set<Gap> gaps) {}

  LineReader(Shop shop, List<RunningRow> runningRows, Set<String> promised) {
    this.shop = shop;
    this.promised = promised;
    runningRows.forEach(row -> running.put(row.order() + "/" + row.line(), row));
  }

  /** The job of an order line that still needs pieces. */
  Attempt<Line> read(OrderRow order, Netted netted) {
    return read(order, quantity(order, netted));
  }

  /** What a whole line still needs, in full cartons. */
  Quantity quantity(OrderRow order, Netted netted) {
    int good = Amounts.multiple(netted.needed(), shop.plant().run().cartonMultiple());
    return new Quantity(order.quantity(), netted.fromStock(), netted.made(), good);
  }

  /** The job of an order line, or of a part of it, that makes so many pieces. */
  Attempt<Line> read(OrderRow order, Quantity quantity) {
    return notHeld(order)
        .then(row -> shop.items().read(row))
        .then(item -> declared(order, item))
        .then(item -> job(order, item, quantity));
  }

  /** The job of the second part of a line, which is molded over a core. */
  Attempt<Line> readOver(OrderRow order, Quantity quantity, double coreStandMm) {
    return notHeld(order)
        .then(row -> shop.items().readOver(row))
        .then(item -> declared(order, item))
        .then(item -> job(order, item.over(coreStandMm), quantity));
  }

  /** The row of what is running; empty when the line or part is not. */
  Optional<RunningRow> running(String id) {
    return Optional.ofNullable(running.get(id));
  }

  /** True when the line or part is running or promised to the floor. */
  boolean bound(String id) {
    return running.containsKey(id) || promised.contains(id);
  }

  /** The line unless it is on hold. */
  static Attempt<OrderRow> notHeld(OrderRow order) {
    return order.hold().isEmpty()
        ? new Done<>(order)
        : new Stopped<>("on hold: " + order.hold(), "lift the hold in orders.csv");
  }

  private Attempt<ReadItem> declared(OrderRow order, ReadItem item) {
    String resin = item.value(Item.RESIN);
    if (!resin.isEmpty() && !shop.resins().isEmpty() && !shop.resins().containsKey(resin)) {
      return new Stopped<>(
          Notes.unknown("resin", resin, "resins.csv", shop.resins().keySet()),
          "add the resin to resins.csv, or correct the order line",
          order.resin().isEmpty() ? "" : "resin");
    }
    Set<String> needs = Needs.of(order.needs(), item.item());
    int neededMin = Math.max(shop.clock().startMin(), shop.clock().due(order.due()));
    return shop.declarations().check(needs, item, shop.resin(resin), neededMin);
  }

  private Attempt<Line> job(OrderRow order, ReadItem item, Quantity quantity) {
    PlantRow plant = shop.plant();
    int good = quantity.good();
    Set<String> needs = Needs.of(order.needs(), item.item());
    boolean asked = needs.stream().anyMatch(plant.food().needs()::contains);
    boolean kept = plant.food().keptWithFood().stream().anyMatch(c -> c.fits(item.item()));
    Optional<RunningRow> row = Optional.ofNullable(running.get(order.id()));
    if (row.isPresent()) {
      boolean clean = row.get().clearedForFood() && takesFood(row.get().press());
      if (asked && !clean) {
        return new Stopped<>(
            row.get().at()
                + " says that it runs on a press that is not cleared for food-grade work",
            "correct cleared_for_food in running.csv, the press's food in presses.csv, or the order's needs");
      }
      return line(work(order, item, good, clean && (asked || kept)), quantity);
    }
    Attempt<Line> line = line(work(order, item, good, asked || kept), quantity);
    boolean keptInVain = line instanceof Stopped<Line> && kept && !asked;
    return keptInVain ? line(work(order, item, good, false), quantity) : line;
  }

  private boolean takesFood(String press) {
    return shop.presses().byId(press).filter(p -> p.food() != FoodUse.NEVER).isPresent();
  }

  private Work work(OrderRow order, ReadItem item, int good, boolean foodGrade) {
    return new Work(
        order,
        item,
        good,
        shop.resin(item.value(Item.RESIN)),
        foodGrade,
        Optional.ofNullable(running.get(order.id())));
  }

  private Attempt<Line> line(Work work, Quantity quantity) {
    return shop.options()
        .find(work)
        .then(
            found -> {
              Job job =
                  new Job(
                      orderLine(work.order()),
                      work.item().item(),
                      quantity,
                      deadline(work),
                      work.item().value(Item.RESIN),
                      work.item().value(Item.COLOUR),
                      work.foodGrade(),
                      found.options());
              Set<Gap> gaps = EnumSet.noneOf(Gap.class);
              gaps.addAll(found.gaps());
              gaps.addAll(shop.materialGaps(work.item()));
              return new Done<>(new Line(job, gaps));
            });
  }

  private OrderLine orderLine(OrderRow order) {
    PlantClock clock = shop.clock();
    return new OrderLine(
        order.order(),
        order.line(),
        order.customer(),
        order.item(),
        order.quantity(),
        clock.due(order.requested().orElse(order.due())),
        order.needs(),
        order.note());
  }

  /** What is running or promised has had its hours before molding. */
  private Deadline deadline(Work work) {
    PlantClock clock = shop.clock();
    OrderRow order = work.order();
    PlantRow.ExtraHours extra = shop.plant().extraHours();
    Item item = work.item().item();
    boolean begun = work.running().isPresent();
    boolean prepared = begun || promised.contains(order.id());
    int before = prepared ? 0 : minutes(extra.before(), item);
    int wished =
        begun ? clock.startMin() : order.earliest().map(clock::minute).orElse(clock.startMin());
    int earliest = Math.max(wished, clock.startMin() + before);
    int after = extra.afterMoldingMin() + minutes(extra.after(), item);
    return new Deadline(earliest, clock.due(order.due()), after, order.weightHundredths());
  }

  private static int minutes(List<HoursRule> rules, Item item) {
    return rules.stream().filter(rule -> rule.when().fits(item)).mapToInt(HoursRule::minutes).sum();
  }
}
