package pressweek.reports.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Press;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/** The load of presses by day, and of shifts over all their presses. */
final class Loads {
  private final PlanBook book;
  private final PressHours hours;
  private final Map<String, Use> uses = new TreeMap<>();

  /** What a press does, and until when its time counts. */
  private record Use(List<Span> open, List<Span> setup, List<Span> production) {}

  Loads(PlanBook book, PressHours hours) {
    this.book = book;
    this.hours = hours;
    for (Press press : book.presses()) {
      uses.put(press.id(), use(press));
    }
  }

  /** The planned busy time is that within the plan, and what runs take outside it. */
  private Use use(Press press) {
    List<Span> setup = new ArrayList<>();
    List<Span> production = new ArrayList<>();
    for (Run run : book.runsOn(press)) {
      production.addAll(hours.worked(run));
      Span change = new Span(run.change().startMin(), run.change().endMin());
      setup.addAll(hours.worked(press.id(), change));
    }
    for (Dismount dismount : book.plan().dismounts()) {
      if (dismount.press().equals(press.id())) {
        Span span = new Span(dismount.startMin(), dismount.endMin());
        setup.addAll(hours.worked(press.id(), span));
      }
    }
    Hours plan = book.plan().problem().plant().hours();
    List<Span> open = new ArrayList<>();
    open.addAll(
        PressHours.within(hours.staffed(press.id()), new Span(plan.startMin(), plan.endMin())));
    open.addAll(setup);
    open.addAll(production);
    return new Use(Span.union(open), setup, production);
  }

  /** Presses in the plant's order, each with its whole time. */
  List<Load> byPress() {
    List<Load> loads = new ArrayList<>();
    for (Press press : book.presses()) {
      loads.add(load(press.id(), "", book.extent(), use(press.id())));
    }
    return List.copyOf(loads);
  }

  /** Presses in the plant's order, each by day. */
  List<Load> byPressAndDay() {
    List<Load> loads = new ArrayList<>();
    PlantClock clock = book.clock();
    LocalDate last = clock.at(book.extent().toMin() - 1).toLocalDate();
    for (Press press : book.presses()) {
      LocalDate day = clock.at(book.extent().fromMin()).toLocalDate();
      for (; !day.isAfter(last); day = day.plusDays(1)) {
        int from = PlantClock.minute(day.atStartOfDay(clock.zone()));
        int to = PlantClock.minute(day.plusDays(1).atStartOfDay(clock.zone()));
        loads.add(load(press.id(), day.toString(), new Span(from, to), use(press.id())));
      }
    }
    return List.copyOf(loads);
  }

  /** Shifts by name in the plant's order, over the presses that work them. */
  List<Load> byShift() {
    List<Load> loads = new ArrayList<>();
    for (var shift : book.plan().problem().plant().hours().shifts()) {
      int busy = 0;
      int setup = 0;
      int production = 0;
      for (ShiftSpan span : book.shifts().all()) {
        if (span.shift().equals(shift.name()) && hours.isWorked(span)) {
          for (Press press : book.presses()) {
            if (book.shifts().belongs(span.shift(), press.calendar())) {
              Load load = load(press.id(), "", span.span(), use(press.id()));
              busy += load.busyMin();
              setup += load.setupMin();
              production += load.productionMin();
            }
          }
        }
      }
      loads.add(new Load(shift.name(), "", busy, setup, production));
    }
    return List.copyOf(loads);
  }

  private Use use(String press) {
    return uses.getOrDefault(press, new Use(List.of(), List.of(), List.of()));
  }

  private static Load load(String of, String when, Span whole, Use use) {
    return new Load(
        of,
        when,
        PressHours.minutes(PressHours.within(use.open(), whole)),
        PressHours.minutes(PressHours.within(use.setup(), whole)),
        PressHours.minutes(PressHours.within(use.production(), whole)));
  }
}
