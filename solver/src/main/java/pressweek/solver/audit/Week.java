package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;

/**
 * A problem, a plan for it, and what follows from the two before any rule is asked.
 *
 * @param problem the problem as the plant gave it
 * @param plan the plan as it is to be checked
 * @param clock the plant's clock
 * @param ids the problem by ids
 * @param roster the shifts of the time in question
 * @param reckoner what changes must be
 * @param walks what happens on each press, in the plant's order
 */
record Week(
    Problem problem,
    Plan plan,
    Clock clock,
    Ids ids,
    Roster roster,
    ChangeReckoner reckoner,
    List<PressWalk> walks) {
  private static final long DAY_MIN = 24 * 60;

  /**
   * Nothing that a plan says before or after these days is believed: how long the calendar is laid
   * out at most.
   */
  private static final long DAYS_BEFORE = 366;

  private static final long DAYS_AFTER = 2 * 366;

  Week {
    walks = List.copyOf(walks);
  }

  static Week of(Problem problem, Plan plan) {
    Hours hours = problem.plant().hours();
    Clock clock = new Clock(hours.zone());
    Ids ids = new Ids(problem);
    Span days = days(hours, plan);
    List<ShiftTime> all =
        ShiftTime.all(hours, clock, clock.day(days.fromMin()), clock.day(days.toMin()));
    Roster roster = Roster.of(problem, plan, all);
    ChangeReckoner reckoner = new ChangeReckoner(problem, ids);
    Map<String, List<Run>> runs = plan.runs().stream().collect(Collectors.groupingBy(Run::press));
    Map<String, List<Dismount>> dismounts =
        plan.dismounts().stream().collect(Collectors.groupingBy(Dismount::press));
    List<PressWalker> walkers = new ArrayList<>();
    Map<String, Press> presses = new LinkedHashMap<>();
    problem.floor().presses().forEach(press -> presses.putIfAbsent(press.id(), press));
    for (Press press : presses.values()) {
      PressWalker walker = new PressWalker(press, pressTime(problem, press, roster), ids, reckoner);
      walkers.add(
          walker.begin(
              runs.getOrDefault(press.id(), List.of()),
              dismounts.getOrDefault(press.id(), List.of()),
              hours.startMin()));
    }
    List<PressWalk> walks = new ToolingSets(problem, walkers).walk();
    return new Week(problem, plan, clock, ids, roster, reckoner, walks);
  }

  private static PressTime pressTime(Problem problem, Press press, Roster roster) {
    Calendar calendar =
        problem.plant().hours().calendars().stream()
            .filter(row -> row.id().equals(press.calendar()))
            .findFirst()
            .orElse(new Calendar(press.calendar(), List.of()));
    Stream<Span> downtime =
        problem.floor().downtime().stream()
            .filter(time -> time.kind() == Downtime.Kind.PRESS && time.id().equals(press.id()))
            .map(time -> new Span(time.fromMin(), time.toMin()));
    Stream<Span> trials =
        problem.arranged().trials().stream()
            .filter(trial -> trial.press().equals(press.id()))
            .map(trial -> new Span(trial.fromMin(), trial.toMin()));
    return PressTime.of(calendar, roster, Stream.concat(downtime, trials).toList());
  }

  /**
   * The days of the calendar: the horizon and all that the plan says, within reason, and some more
   * on either side.
   */
  private static Span days(Hours hours, Plan plan) {
    long[] times =
        Stream.of(
                plan.runs().stream()
                    .flatMapToInt(
                        run -> IntStream.of(run.change().startMin(), run.startMin(), run.endMin())),
                plan.dismounts().stream()
                    .flatMapToInt(off -> IntStream.of(off.startMin(), off.endMin())),
                plan.head().plantWide().opened().stream()
                    .flatMapToInt(open -> IntStream.of(open.fromMin(), open.toMin())))
            .flatMap(IntStream::boxed)
            .mapToLong(Integer::longValue)
            .map(min -> Math.max(min, hours.startMin() - DAYS_BEFORE * DAY_MIN))
            .map(min -> Math.min(min, lastMin(hours)))
            .toArray();
    long first = hours.startMin();
    long last = hours.endMin();
    for (long time : times) {
      first = Math.min(first, time);
      last = Math.max(last, time);
    }
    return new Span(first - 2 * DAY_MIN, last + 8 * DAY_MIN);
  }

  /** The last minute that is looked at. */
  static long lastMin(Hours hours) {
    return hours.endMin() + DAYS_AFTER * DAY_MIN;
  }

  /** The shifts with people that are worked. */
  List<ShiftTime> shifts() {
    return roster.attended();
  }

  List<Step> steps() {
    return walks.stream().flatMap(walk -> walk.steps().stream()).toList();
  }

  List<Stay> stays() {
    return walks.stream().flatMap(walk -> walk.stays().stream()).toList();
  }
}
