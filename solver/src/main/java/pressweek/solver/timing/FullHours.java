package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Option;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Take;

/**
 * The most that the calendars and the stock of a problem allow, whatever a plan decides: every
 * overtime shift is open, its breaks and those of shifts without people are worked through, and all
 * stock is there for each run alone. No plan has more working time on a press, and none can start a
 * run earlier. Times are minutes since 1970 UTC.
 */
public final class FullHours {
  /** Days after the horizon for which the hours of every press are known. */
  private static final int DAYS_AFTER = 27;

  private static final int DAY = 1440;

  private final Spans[] attended;
  private final Spans[] running;
  private final Map<Spans, int[]> times = new HashMap<>();
  private final StockTable stock;
  private final int insertLead;
  private final int start;
  private final int until;

  /** The hours and the stock of a problem. */
  public FullHours(Problem problem) {
    start = problem.plant().hours().startMin();
    until = problem.plant().hours().endMin() + DAYS_AFTER * DAY;
    stock = new StockTable(problem);
    insertLead = problem.plant().crew().insertLeadMin();
    Set<String> without = Set.copyOf(problem.arranged().opening().unattended());
    Set<String> overtime =
        problem.arranged().opening().overtime().stream()
            .map(Opening.Overtime::shift)
            .collect(Collectors.toSet());
    List<Shift> shifts = problem.plant().hours().shifts();
    Problem people =
        with(
            problem,
            shifts.stream()
                .filter(s -> !without.contains(s.name()))
                .map(s -> overtime.contains(s.name()) ? unbroken(s) : s)
                .toList());
    Problem nobody =
        with(
            problem,
            shifts.stream()
                .filter(s -> without.contains(s.name()))
                .map(FullHours::unbroken)
                .toList());
    attended = spans(people);
    running = without.isEmpty() ? attended : together(attended, spans(nobody));
  }

  private static Shift unbroken(Shift s) {
    return new Shift(
        s.name(),
        s.days(),
        s.from(),
        s.to(),
        List.of(),
        s.setters(),
        s.operatorThousandths(),
        s.inspectors());
  }

  /** The problem with these shifts only, none of them overtime or without people. */
  private static Problem with(Problem problem, List<Shift> shifts) {
    Plant p = problem.plant();
    Hours h = p.hours();
    Plant plant =
        new Plant(
            p.name(),
            new Hours(h.zone(), h.startMin(), h.endMin(), shifts, h.calendars(), h.closed()),
            p.crew(),
            p.shipping(),
            p.rates(),
            p.changes(),
            p.moveToleranceMin(),
            p.barrelDefaultG());
    Arrangements a = problem.arranged();
    Arrangements plain =
        new Arrangements(
            a.things(),
            a.devices(),
            a.services(),
            a.trials(),
            a.links(),
            a.surplus(),
            Opening.NONE,
            a.settled());
    return new Problem(
            plant,
            problem.floor(),
            problem.materials(),
            List.of(),
            List.of(),
            List.of(),
            problem.kitting())
        .with(plain);
  }

  /** Hours by press; presses of the same calendar that are never away share them. */
  private static Spans[] spans(Problem problem) {
    OpenShifts shifts = new OpenShifts(problem);
    Set<String> away = new HashSet<>();
    problem.floor().downtime().forEach(d -> away.add(d.id()));
    problem.arranged().trials().forEach(t -> away.add(t.press()));
    Map<String, Spans> shared = new HashMap<>();
    List<Spans> all = new ArrayList<>();
    for (Press press : problem.floor().presses()) {
      PressTime time = new PressTime(problem, press, shifts, 0);
      all.add(
          away.contains(press.id())
              ? time.attended(0)
              : shared.computeIfAbsent(press.calendar(), c -> time.attended(0)));
    }
    return all.toArray(Spans[]::new);
  }

  private static Spans[] together(Spans[] some, Spans[] others) {
    Map<List<Spans>, Spans> both = new HashMap<>();
    return IntStream.range(0, some.length)
        .mapToObj(p -> both.computeIfAbsent(List.of(some[p], others[p]), FullHours::together))
        .toArray(Spans[]::new);
  }

  private static Spans together(List<Spans> all) {
    List<ShiftTimes.Piece> pieces =
        all.stream()
            .flatMap(
                s ->
                    IntStream.range(0, s.size())
                        .mapToObj(i -> new ShiftTimes.Piece(s.from(i), s.to(i))))
            .toList();
    return new Spans(
        Pieces.union(pieces).stream().map(w -> new Spans.Span(w.from(), w.to(), w.to())).toList());
  }

  /** The first minute of the plan. */
  public int start() {
    return start;
  }

  /** What is after this minute is not known; a time that comes out later is given as this one. */
  public int until() {
    return until;
  }

  /**
   * First minutes and ends of the working time of a press, in turn; people in the house or not.
   * Presses with the same hours give the same array, which nobody changes.
   */
  public int[] times(int press, boolean handLoad) {
    Spans spans = handLoad ? attended[press] : running[press];
    return times.computeIfAbsent(
        spans,
        all ->
            IntStream.range(0, all.size())
                .flatMap(i -> IntStream.of(all.from(i), all.to(i)))
                .toArray());
  }

  /** The first minute at or after a time at which a run may start on a press. */
  public int next(int press, int time) {
    return Math.min(until, attended[press].next(time));
  }

  /** When a run of so many minutes that starts at a working minute is over. */
  public int finish(int press, boolean handLoad, int from, int minutes) {
    return Math.min(until, (handLoad ? attended : running)[press].finish(from, minutes));
  }

  /**
   * The first start of a run by an option at which its components are there, were it the only run
   * of the week; empty when they never are. A component with a lot that expires within the horizon
   * is not asked.
   */
  public OptionalInt componentsThere(Option option) {
    int there = start;
    for (Take take : option.making().takes()) {
      int component = stock.number(take);
      if (component >= 0 && !stock.expires(component) && take.pieces() > stock.atHand[component]) {
        int[] level = stock.level[component];
        int i = 0;
        while (i < level.length && level[i] < take.pieces()) {
          i++;
        }
        if (i == level.length) {
          return OptionalInt.empty();
        }
        there = Math.max(there, stock.time[component][i] + insertLead);
      }
    }
    return OptionalInt.of(there);
  }

  /** Whether a press may be used for a job at all, as far as food-grade work goes. */
  public static boolean allowed(Press press, Job job) {
    return JobTable.allowed(press, job);
  }
}
