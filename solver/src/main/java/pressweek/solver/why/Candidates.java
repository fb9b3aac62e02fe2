package pressweek.solver.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Unplaced;

/**
 * What could cure a line, by the causes for which it, and what is before it on its press, waits.
 */
public final class Candidates {
  private final Problem problem;
  private final HourChanges hours;
  private final FloorChanges floor;
  private final StockChanges stock;
  private final Map<String, PlantChange> found = new LinkedHashMap<>();

  private Candidates(Problem problem) {
    this.problem = problem;
    hours = new HourChanges(problem);
    floor = new FloorChanges(problem);
    stock = new StockChanges(problem);
  }

  /**
   * What could help a line of a plan: by its chain of waits where it has a run, else by what it
   * lacks.
   *
   * @param plan the plan
   * @param job a job of its problem
   */
  public static List<PlantChange> of(Plan plan, Job job) {
    Optional<Run> run = plan.runs().stream().filter(r -> r.job().equals(job.id())).findFirst();
    return run.map(r -> of(plan, job, r, WaitChain.of(plan, r)))
        .orElseGet(
            () ->
                of(
                    plan,
                    job,
                    plan.unplaced().stream()
                        .filter(line -> line.id().equals(job.id()))
                        .findFirst()
                        .flatMap(Unplaced::lacks)));
  }

  /** What could cure a line that has a run, by its chain of waits. */
  static List<PlantChange> of(Plan plan, Job job, Run run, List<Stretch> chain) {
    Candidates candidates = new Candidates(plan.problem());
    for (Stretch stretch : chain) {
      candidates.job(stretch.line()).ifPresent(j -> candidates.of(stretch, j, run.press()));
    }
    candidates.press(run.press());
    candidates.add(candidates.floor.secondMold(run.mold()));
    candidates.floor.qualified(run.press(), run.mold()).forEach(candidates::add);
    candidates.otherPresses(job);
    return candidates.all();
  }

  /** What could give a place to a line that has none. */
  static List<PlantChange> of(Plan plan, Job job, Optional<String> lacks) {
    Candidates candidates = new Candidates(plan.problem());
    lacks.ifPresent(
        all ->
            List.of(all.split("\\|"))
                .forEach(c -> candidates.stock.earlier(c, job).forEach(candidates::add)));
    for (Option option : job.options()) {
      candidates.press(option.press());
      candidates.add(candidates.floor.back(Downtime.Kind.MOLD, option.mold()));
      candidates.add(candidates.floor.serviced(option.mold()));
      candidates.add(candidates.floor.secondMold(option.mold()));
      candidates.floor.qualified(option.press(), option.mold()).forEach(candidates::add);
    }
    candidates.otherPresses(job);
    for (Shift shift : plan.problem().plant().hours().shifts()) {
      candidates.people(Cause.SETTER, shift.name());
      candidates.people(Cause.OPERATOR, shift.name());
    }
    if (job.deadline().earliestMin() > plan.problem().plant().hours().startMin()) {
      candidates.add(candidates.stock.startsAtOnce(job));
    }
    return candidates.all();
  }

  private List<PlantChange> all() {
    return List.copyOf(found.values());
  }

  private Optional<Job> job(String line) {
    return problem.jobs().stream().filter(j -> j.id().equals(line)).findFirst();
  }

  private void add(PlantChange change) {
    found.putIfAbsent(change.words(), change);
  }

  private void add(Optional<PlantChange> change) {
    change.ifPresent(this::add);
  }

  private void of(Stretch stretch, Job job, String press) {
    if (stretch.waited().isEmpty()) {
      return;
    }
    Wait wait = stretch.waited().get();
    switch (wait.cause()) {
      case INSERTS ->
          List.of(wait.what().split("\\|")).forEach(c -> stock.earlier(c, job).forEach(this::add));
      case SETTER, OPERATOR, INSPECTOR ->
          hours.shiftsAt(wait.fromMin()).forEach(s -> people(wait.cause(), s));
      case MOLD, PROMISED -> add(floor.secondMold(wait.what()));
      case MOLD_AWAY -> add(floor.back(Downtime.Kind.MOLD, wait.what()));
      case SERVICE -> add(floor.serviced(wait.what()));
      case TOOLING -> add(floor.oneMore(wait.what()));
      case DRYER -> add(floor.dryer(press));
      case EARLIEST -> add(stock.startsAtOnce(job));
      case SHIFT, HORIZON, PRESS -> press(press);
      case LINKED, CHOICE, NEIGHBOUR -> otherPresses(job);
    }
  }

  private void people(Cause cause, String shift) {
    boolean setters = problem.plant().crew().settersChecked();
    boolean operators = problem.plant().crew().operatorsChecked();
    if (cause == Cause.SETTER && setters) {
      add(hours.setter(shift));
    } else if (cause == Cause.OPERATOR && operators) {
      add(hours.operator(shift));
    } else if (cause == Cause.INSPECTOR) {
      add(hours.inspector(shift));
    }
  }

  /** More time on a press: another shift, and the press back where it is away. */
  private void press(String id) {
    add(floor.back(Downtime.Kind.PRESS, id));
    problem.floor().presses().stream()
        .filter(p -> p.id().equals(id))
        .forEach((Press p) -> hours.another(p).forEach(this::add));
  }

  /** Presses that could run the line as well and are away. */
  private void otherPresses(Job job) {
    List<String> presses = new ArrayList<>();
    job.options().stream().map(Option::press).distinct().forEach(presses::add);
    presses.forEach(p -> add(floor.back(Downtime.Kind.PRESS, p)));
  }
}
