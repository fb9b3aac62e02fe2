package pressweek.examples.outside;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;

/**
 * A press in a model of {@link FreeStarts}: a round trip through the options that run on it, from
 * how it stands and back. Each step from one to the next has its change; it is another one when the
 * mold is taken off by a dismount between them.
 */
final class FreePress {
  private final FreeModel week;
  private final CpModel model;
  private final Press press;
  private final List<Stop> stops = new ArrayList<>();

  /**
   * How the press stands, or a run of an option on it.
   *
   * @param job the job; empty for the press as it stands
   * @param option the option; empty likewise
   * @param setup what is in the press then
   * @param here whether the job runs here by this option
   * @param off whether its mold is taken off by a dismount next
   * @param offStart start of that dismount
   * @param gone when its mold is gone, or when the next run with it takes it over
   */
  private record Stop(
      Optional<FreeJob> job,
      Optional<Option> option,
      Setup setup,
      Literal here,
      BoolVar off,
      IntVar offStart,
      IntVar gone) {}

  private FreePress(FreeModel week, Press press) {
    this.week = week;
    this.press = press;
    model = week.model;
  }

  /** Adds a press with all options that run on it. */
  static void add(FreeModel week, Press press, List<FreeJob> jobs) {
    FreePress added = new FreePress(week, press);
    added.stops.add(added.asItStands());
    for (FreeJob job : jobs) {
      for (Option option : job.job.options()) {
        if (option.press().equals(press.id())) {
          added.stops.add(added.run(job, option));
        }
      }
    }
    added.stops.forEach(added::holdMold);
    added.addTrip();
    added.workOnce();
  }

  private Stop asItStands() {
    Setup setup =
        week.problem.floor().states().stream()
            .filter(state -> state.press().equals(press.id()))
            .map(PressState::setup)
            .findFirst()
            .orElse(new Setup("", "", "", ""));
    return stop(Optional.empty(), Optional.empty(), setup, model.trueLiteral());
  }

  private Stop run(FreeJob job, Option option) {
    BoolVar here = model.newBoolVar(job.job.id() + " on " + press.id());
    if (job.here.put(press.id(), here) != null) {
      throw new IllegalArgumentException("two molds for a job on one press");
    }
    job.runs(here, option.pace().runMin());
    week.cost.addTerm(here, pressRate(job.job, option));
    Setup setup = FreeModel.setup(job.job, option);
    return stop(Optional.of(job), Optional.of(option), setup, here);
  }

  private Stop stop(Optional<FreeJob> job, Optional<Option> option, Setup setup, Literal here) {
    BoolVar off = model.newBoolVar("off");
    return new Stop(job, option, setup, here, off, week.time("off start"), week.time("gone"));
  }

  /** PRESS_RATE. */
  private long pressRate(Job job, Option option) {
    long least = job.options().stream().mapToLong(this::running).min().orElseThrow();
    return running(option) - least;
  }

  private long running(Option option) {
    return week.problem.floor().presses().stream()
            .filter(other -> other.id().equals(option.press()))
            .mapToLong(Press::ratePerHour)
            .sum()
        * option.pace().runMin()
        / 60;
  }

  /** The time in which a mold is on the press, and the dismount that may end it. */
  private void holdMold(Stop stop) {
    String mold = stop.setup().mold();
    if (mold.isEmpty()) {
      model.addEquality(stop.off(), 0);
      return;
    }
    int minutes = week.changes.dismountMin(mold);
    LinearArgument from =
        stop.job().<LinearArgument>map(job -> job.start).orElse(LinearExpr.constant(0));
    week.holds(mold, from, stop.gone(), stop.here());
    model.addImplication(stop.off(), stop.here());
    week.dismounts.add(stop.off());
    if (stop.job().isPresent()) {
      model.addGreaterOrEqual(stop.offStart(), stop.job().get().end).onlyEnforceIf(stop.off());
    }
    LinearExpr end = LinearExpr.affine(stop.offStart(), 1, minutes);
    model.addEquality(stop.gone(), end).onlyEnforceIf(stop.off());
    week.cost.addTerm(stop.off(), week.charged(minutes));
    if (minutes > 0) {
      LinearExpr other = LinearExpr.constant(week.otherWork(minutes));
      week.takesSetter(stop.offStart(), end, other, stop.off());
    }
  }

  /** PRESS_ONCE, which the trip keeps already, said once more, since that helps the proof. */
  private void workOnce() {
    List<IntervalVar> work = new ArrayList<>();
    for (Stop stop : stops) {
      stop.job()
          .ifPresent(
              job -> {
                IntVar size = week.time("work");
                work.add(
                    model.newOptionalIntervalVar(job.start, size, job.end, stop.here(), "work"));
              });
    }
    model.addNoOverlap(work);
  }

  private void addTrip() {
    CircuitConstraint trip = model.addCircuit();
    for (int a = 0; a < stops.size(); a++) {
      for (int b = 0; b < stops.size(); b++) {
        if (a == b && a > 0) {
          trip.addArc(a, a, stops.get(a).here().not());
          continue;
        }
        BoolVar arc = model.newBoolVar("arc");
        trip.addArc(a, b, arc);
        if (b == 0) {
          model
              .addEquality(stops.get(a).gone(), week.horizon)
              .onlyEnforceIf(new Literal[] {arc, stops.get(a).off().not()});
        } else {
          addStep(stops.get(a), stops.get(b), arc);
        }
      }
    }
  }

  /** The step from a stop to the next, with the mold in place or taken off between them. */
  private void addStep(Stop a, Stop b, BoolVar arc) {
    BoolVar mounted = model.newBoolVar("mounted");
    BoolVar bare = model.newBoolVar("bare");
    model.addEquality(arc, LinearExpr.sum(new Literal[] {mounted, bare}));
    model.addImplication(mounted, a.off().not());
    model.addImplication(bare, a.off());
    FreeJob next = b.job().orElseThrow();
    String mold = a.setup().mold();
    if (!mold.isEmpty()) {
      int minutes = week.changes.dismountMin(mold);
      int gone = mold.equals(b.setup().mold()) ? 0 : minutes;
      model.addEquality(a.gone(), LinearExpr.affine(next.start, 1, gone)).onlyEnforceIf(mounted);
      model
          .addGreaterOrEqual(next.start, LinearExpr.affine(a.offStart(), 1, minutes))
          .onlyEnforceIf(bare);
    }
    a.job().ifPresent(job -> model.addGreaterOrEqual(next.start, job.end).onlyEnforceIf(mounted));
    addChange(a.setup(), b, mounted);
    addChange(new Setup("", "", a.setup().resin(), a.setup().colour()), b, bare);
  }

  /** Minutes, purge and start-up of the change before a run, if the literal holds. */
  private void addChange(Setup from, Stop to, BoolVar when) {
    FreeJob job = to.job().orElseThrow();
    Option option = to.option().orElseThrow();
    int minutes = week.changes.minutes(from, to.setup());
    if (minutes > 0) {
      job.changes(when, minutes, week.otherWork(minutes));
    }
    long price = resinPrice(job.job.resin());
    long cost = week.charged(minutes);
    cost += price * week.changes.purgeG(press.id(), from, to.setup()) / 1000;
    if (week.changes.exchanges(from, to.setup())) {
      job.runs(when, option.pace().startupMin());
      cost += price * option.making().startupGrams() / 1000;
    }
    week.cost.addTerm(when, cost);
  }

  private long resinPrice(String resin) {
    return week.problem.materials().resins().stream()
        .filter(r -> r.id().equals(resin))
        .findFirst()
        .orElseThrow()
        .pricePerKg();
  }
}
