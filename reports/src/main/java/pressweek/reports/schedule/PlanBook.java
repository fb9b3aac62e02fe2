package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Component;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Take;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;

/** A plan with everything that its parts refer to by id at hand. */
public final class PlanBook {
  private static final int TWO_DAYS = 2 * 24 * 60;

  private final Plan plan;
  private final Map<String, Job> jobs;
  private final Map<String, Run> runs;
  private final Map<String, List<Run>> runsByPress;
  private final Map<String, Insert> inserts;
  private final ShiftBook shifts;

  private PlanBook(Plan plan) {
    this.plan = plan;
    this.jobs = byId(plan.problem().jobs(), Job::id);
    this.runs = byId(plan.runs(), Run::id);
    this.runsByPress = plan.runs().stream().collect(Collectors.groupingBy(Run::press));
    this.inserts = byId(plan.problem().materials().inserts(), Insert::id);
    Span extent = extent(plan);
    this.shifts =
        ShiftBook.of(
            plan.problem().plant().hours(),
            new Span(extent.fromMin() - TWO_DAYS, extent.toMin() + TWO_DAYS));
  }

  /** The book of a plan. */
  public static PlanBook of(Plan plan) {
    return new PlanBook(plan);
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    return all.stream().collect(Collectors.toMap(id, t -> t, (first, second) -> first));
  }

  /** From the plan's start, or what begins before it, to its horizon, or what ends after it. */
  public Span extent() {
    return extent(plan);
  }

  private static Span extent(Plan plan) {
    Hours hours = plan.problem().plant().hours();
    Stream<Integer> starts =
        plan.runs().stream().map(r -> Math.min(r.startMin(), r.change().startMin()));
    Stream<Integer> ends =
        Stream.concat(
            plan.runs().stream().map(Run::endMin), plan.dismounts().stream().map(d -> d.endMin()));
    return new Span(
        starts.reduce(hours.startMin(), Math::min), ends.reduce(hours.endMin(), Math::max));
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** The plant's clock. */
  public PlantClock clock() {
    return PlantClock.of(plan.problem().plant().hours());
  }

  /** The plant's shifts, from two days before the plan to two days after it. */
  public ShiftBook shifts() {
    return shifts;
  }

  /** The plant's presses in its order, those without a run as well. */
  public List<Press> presses() {
    return plan.problem().floor().presses();
  }

  /** The runs of a press in their order. */
  public List<Run> runsOn(Press press) {
    return runsByPress.getOrDefault(press.id(), List.of());
  }

  /** The job of a run. */
  public Job job(Run run) {
    Job job = jobs.get(run.job());
    if (job == null) {
      throw new IllegalArgumentException(
          "run " + run.id() + " makes " + run.job() + ", which is no job of the plan's week");
    }
    return job;
  }

  /** The run with this number. */
  public Optional<Run> run(String id) {
    return Optional.ofNullable(runs.get(id));
  }

  /**
   * How the run is made: the job's option with its press and mold; empty when there is none, which
   * no valid plan has.
   */
  public Optional<Option> option(Run run) {
    return job(run).options().stream()
        .filter(o -> o.press().equals(run.press()) && o.mold().equals(run.mold()))
        .findFirst();
  }

  /** What a thing is that a run takes; an insert where the run is not known to take it. */
  public Component component(Run run, String what) {
    return option(run).stream()
        .flatMap(o -> o.making().takes().stream())
        .filter(t -> t.insert().equals(what))
        .map(Take::component)
        .findFirst()
        .orElse(Component.INSERT);
  }

  /** The insert part with this number. */
  public Optional<Insert> insert(String id) {
    return Optional.ofNullable(inserts.get(id));
  }

  /** A colour as the plant knows it in a resin, else in all resins. */
  public Optional<Colour> colour(String resin, String id) {
    List<Colour> known =
        plan.problem().materials().colours().stream().filter(c -> c.id().equals(id)).toList();
    return known.stream()
        .filter(c -> c.resin().equals(resin))
        .findFirst()
        .or(() -> known.stream().filter(c -> c.resin().isEmpty()).findFirst());
  }

  /** Minutes by which the run's order is ready after it is due; 0 when it is on time. */
  public int lateMin(Run run) {
    return Math.max(0, run.readyMin() - job(run).deadline().dueMin());
  }

  /** Whether the run stays where it is when the week is planned anew. */
  public Stay stay(Run run) {
    boolean running =
        plan.problem().floor().states().stream()
            .anyMatch(s -> s.press().equals(run.press()) && s.job().equals(run.job()));
    boolean promised =
        plan.problem().floor().promises().stream().anyMatch(p -> p.job().equals(run.job()));
    return running ? Stay.RUNNING : promised ? Stay.PROMISED : Stay.FREE;
  }

  /** When a press works: its shifts less its downtime, breaks counted as work. */
  public List<Span> working(Press press) {
    List<Span> open = shifts.ofCalendar(press.calendar()).stream().map(ShiftSpan::span).toList();
    return Span.without(open, downtime(press).stream().map(PlanBook::span).toList());
  }

  /** When a press is away. */
  public List<Downtime> downtime(Press press) {
    return plan.problem().floor().downtime().stream()
        .filter(d -> d.kind() == Downtime.Kind.PRESS && d.id().equals(press.id()))
        .toList();
  }

  /** The span of a downtime. */
  public static Span span(Downtime downtime) {
    return new Span(downtime.fromMin(), downtime.toMin());
  }

  /** Runs of lines that are ready after they are due, the latest first. */
  public List<Run> lateRuns() {
    List<Run> late = new ArrayList<>(plan.runs());
    late.removeIf(r -> lateMin(r) == 0);
    late.sort((a, b) -> Integer.compare(lateMin(b), lateMin(a)));
    return List.copyOf(late);
  }
}
