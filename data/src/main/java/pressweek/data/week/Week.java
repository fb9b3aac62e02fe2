package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.FaultyOrder;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.OrderRow;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PromisedRow;
import pressweek.data.files.RunningRow;
import pressweek.data.guide.GuideReader;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Plant;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** The week's problem, made from a plant's folder. */
public final class Week {
  private final Folder folder;
  private final PlantClock clock;
  private final Shop shop;
  private final Notes notes = new Notes();
  private final Gaps gaps = new Gaps();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Unplaced> unplaced = new ArrayList<>();
  private final ArrangementsBuilder arranging;
  private int planned;

  private Week(Folder folder, GuideReader.Result guide, int nowMin) {
    this.folder = folder;
    this.clock = PlantClock.of(folder.plant(), nowMin);
    this.shop = new Shop(folder, guide.guide(), clock);
    this.arranging = new ArrangementsBuilder(folder, shop);
  }

  /**
   * Makes the week's problem. A fault in the plant's own files means that there is none; a fault in
   * one order line leaves that line unplaced.
   *
   * @param nowMin the present, minutes since 1970 UTC, for a plant that does not say when its plan
   *     starts
   */
  public static WeekResult build(Folder folder, int nowMin) {
    GuideReader.Result guide = guide(folder);
    List<InputError> findings = new ArrayList<>(folder.findings());
    findings.addAll(guide.findings());
    boolean sound = findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    if (!sound) {
      return new WeekResult(Optional.empty(), findings);
    }
    Week week = new Week(folder, guide, nowMin);
    Problem problem = week.problem();
    findings.addAll(week.notes.findings());
    boolean stillSound = findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    return new WeekResult(stillSound ? Optional.of(problem) : Optional.empty(), findings);
  }

  /** The folder's guide; without a guide file there is none, and nothing is wrong with that. */
  public static GuideReader.Result guide(Folder folder) {
    return folder
        .guide()
        .map(GuideReader::read)
        .orElseGet(() -> new GuideReader.Result(Optional.empty(), List.of()));
  }

  private Problem problem() {
    lines();
    new FolderChecks(folder, shop, notes).check(jobs);
    arranging.check(notes);
    Floor floor = new FloorBuilder(folder, clock, notes).build(shop.molds(), jobs);
    List<Setup> barrels = floor.states().stream().map(PressState::setup).toList();
    plantGaps();
    return new Problem(
        plant(),
        floor,
        MaterialsBuilder.build(folder, shop, jobs, barrels),
        jobs,
        unplaced,
        gaps.notChecked(),
        Optional.of(new KittingBuilder(folder, shop).build(jobs)),
        Optional.of(arranging.build(jobs, links, barrels)));
  }

  private void lines() {
    Set<String> promised =
        folder.floor().promised().stream().map(PromisedRow::id).collect(Collectors.toSet());
    for (FaultyOrder order : folder.demand().faulty()) {
      unplaced.add(
          new Unplaced(
              order.order(),
              order.line(),
              order.item(),
              order.pieces(),
              order.at() + ": " + order.message(),
              "correct the line in orders.csv"));
    }
    List<OrderRow> orders = named();
    FinishedStock finished = new FinishedStock(folder.demand().stock(), shop.items()::key);
    Map<String, Netted> netted = finished.net(orders, made(orders), clock);
    JobFinder finder =
        new JobFinder(shop, new LineReader(shop, folder.floor().running(), promised), finished);
    for (OrderRow order : orders) {
      Netted still = netted.getOrDefault(order.id(), new Netted(0, 0, order.quantity()));
      if (still.needed() == 0) {
        notes.warning(
            order.at(),
            "quantity",
            "order %s has its pieces: %d from finished stock, %d made; nothing to make"
                .formatted(order.id(), still.fromStock(), still.made()));
      } else {
        line(order, still, finder.find(order, still));
      }
    }
  }

  /** Good pieces of runs in progress by line; of an item over a core those of its second part. */
  private Map<String, Integer> made(List<OrderRow> orders) {
    Map<String, String> lines = new HashMap<>();
    for (OrderRow order : orders) {
      boolean staged = shop.stages().of(order.item()).isPresent();
      lines.putIfAbsent(order.part(2).id(), order.id());
      if (!staged) {
        lines.putIfAbsent(order.part(1).id(), order.id());
      }
    }
    orders.forEach(order -> lines.put(order.id(), order.id()));
    Map<String, Integer> made = new HashMap<>();
    for (RunningRow row : folder.floor().running()) {
      String line = row.order() + "/" + row.line();
      made.merge(lines.getOrDefault(line, line), row.goodMade(), Integer::sum);
    }
    return made;
  }

  /** The order lines whose item is known by its code; the others are unplaced. */
  private List<OrderRow> named() {
    List<OrderRow> named = new ArrayList<>();
    for (OrderRow order : folder.demand().orders()) {
      Attempt<OrderRow> attempt = shop.names().named(order);
      if (attempt instanceof Done<OrderRow> done) {
        named.add(done.value());
      } else if (attempt instanceof Stopped<OrderRow> stopped) {
        unplaced.add(
            new Unplaced(
                order.order(),
                order.line(),
                order.itemOrWords(),
                order.quantity(),
                stopped.reason(),
                stopped.cure()));
        fault(order, stopped);
      }
    }
    return named;
  }

  private void line(OrderRow order, Netted still, Attempt<Made> attempt) {
    if (attempt instanceof Done<Made> done) {
      Made made = done.value();
      jobs.addAll(made.jobs());
      made.link().ifPresent(links::add);
      Set<Gap> open = EnumSet.noneOf(Gap.class);
      open.addAll(made.gaps());
      made.jobs().forEach(job -> open.addAll(arranging.gaps(job)));
      gaps.line(open);
      planned++;
    } else if (attempt instanceof Stopped<Made> stopped) {
      unplaced.add(
          new Unplaced(
              order.order(),
              order.line(),
              order.item(),
              still.needed(),
              stopped.reason(),
              stopped.cure()));
      fault(order, stopped);
    }
  }

  /** A value that a scenario made has to be right; one of the folder leaves its line unplaced. */
  private void fault(OrderRow order, Stopped<?> stopped) {
    folder
        .made(order.id(), stopped.column())
        .ifPresent(
            at ->
                notes.error(
                    at,
                    stopped.column(),
                    "order %s: %s; %s".formatted(order.id(), stopped.reason(), stopped.cure())));
  }

  /** What the plant's own figures leave unchecked touches every line. */
  private void plantGaps() {
    PlantRow plant = folder.plant();
    Set<Gap> open = EnumSet.noneOf(Gap.class);
    if (!plant.crew().settersChecked()) {
      open.add(Gap.SETTERS);
    }
    if (!plant.crew().operatorsChecked()) {
      open.add(Gap.OPERATORS);
    }
    if (!plant.rates().shown()) {
      open.add(Gap.RATES);
    }
    boolean estimated =
        !plant.gave("efficiency_pct")
            || !plant.gave("run.scrap_pct")
            || !plant.gave("change.mold_min");
    if (estimated) {
      open.add(Gap.ESTIMATES);
    }
    for (int line = 0; line < planned; line++) {
      gaps.line(open);
    }
  }

  private Plant plant() {
    PlantRow plant = folder.plant();
    List<String> allShifts = plant.hours().shifts().stream().map(Shift::name).toList();
    List<Calendar> calendars = new ArrayList<>();
    calendars.add(new Calendar(FloorBuilder.ALL_SHIFTS, allShifts));
    plant
        .hours()
        .calendars()
        .forEach(
            (id, shifts) -> {
              if (!id.equals(FloorBuilder.ALL_SHIFTS)) {
                calendars.add(new Calendar(id, shifts));
              }
            });
    Hours hours =
        new Hours(
            clock.zone(),
            clock.startMin(),
            clock.endMin(),
            plant.hours().shifts(),
            calendars,
            plant.hours().closed());
    return new Plant(
        plant.name(),
        hours,
        plant.crew().with(PeopleBuilder.build(folder)),
        plant.shipping(),
        plant.rates(),
        plant.changes(),
        plant.moveToleranceMin(),
        plant.barrelDefaultG());
  }
}
