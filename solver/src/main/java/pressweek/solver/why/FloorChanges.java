package pressweek.solver.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;

/** What a plant could change about presses, molds, tooling, devices and dryers. */
final class FloorChanges {
  private final Problem problem;

  FloorChanges(Problem problem) {
    this.problem = problem;
  }

  /** Presses and molds that are away: back at once. */
  Optional<PlantChange> back(Downtime.Kind kind, String id) {
    List<Downtime> left =
        problem.floor().downtime().stream()
            .filter(d -> d.kind() != kind || !d.id().equals(id))
            .toList();
    boolean late =
        kind == Downtime.Kind.MOLD
            && problem.floor().molds().stream().anyMatch(m -> m.id().equals(id) && isLate(m));
    if (left.size() == problem.floor().downtime().size() && !late) {
      return Optional.empty();
    }
    Problem back = Edit.downtime(problem, left);
    List<Mold> molds =
        problem.floor().molds().stream().map(m -> m.id().equals(id) ? here(m) : m).toList();
    String noun = kind == Downtime.Kind.PRESS ? "press " : "mold ";
    return Optional.of(
        new PlantChange(noun + id + " back at once", late ? Edit.molds(back, molds) : back));
  }

  private boolean isLate(Mold mold) {
    return mold.change().availableFromMin().orElse(0) > problem.plant().hours().startMin();
  }

  private static Mold here(Mold m) {
    Mold.MoldChange change =
        new Mold.MoldChange(m.change().changeMin(), m.change().dummyPlugs(), OptionalInt.empty());
    return new Mold(
        m.id(), m.use(), m.cavities(), m.body(), m.runsOn(), change, m.cycleS(), m.handLoad());
  }

  /** A second copy of a mold, in the house from the start. */
  Optional<PlantChange> secondMold(String id) {
    Optional<Mold> mold =
        problem.floor().molds().stream().filter(m -> m.id().equals(id)).findFirst();
    return mold.map(
        m -> {
          String copy = id + " (second)";
          List<Mold> molds = new ArrayList<>(problem.floor().molds());
          Mold free = here(m);
          molds.add(
              new Mold(
                  copy,
                  free.use(),
                  free.cavities(),
                  free.body(),
                  free.runsOn(),
                  free.change(),
                  free.cycleS(),
                  free.handLoad()));
          List<Job> jobs = problem.jobs().stream().map(j -> with(j, id, copy)).toList();
          return new PlantChange(
              "a second copy of mold " + id, Edit.molds(problem.withJobs(jobs), molds));
        });
  }

  /**
   * Presses like one that runs a mold, qualified for the mold as well: of the same build and size,
   * and none for which the plant has ruled it out. There it runs as it does on the one.
   */
  List<PlantChange> qualified(String press, String mold) {
    Optional<Press> as =
        problem.floor().presses().stream().filter(p -> p.id().equals(press)).findFirst();
    Set<String> never =
        problem.floor().molds().stream()
            .filter(m -> m.id().equals(mold))
            .flatMap(m -> m.runsOn().never().stream())
            .collect(Collectors.toSet());
    Set<String> may =
        problem.jobs().stream()
            .flatMap(j -> j.options().stream())
            .filter(o -> o.mold().equals(mold))
            .map(Option::press)
            .collect(Collectors.toSet());
    return problem.floor().presses().stream()
        .filter(p -> as.isPresent() && isLike(p, as.get()))
        .map(Press::id)
        .filter(p -> !may.contains(p) && !never.contains(p))
        .map(p -> qualified(mold, press, p))
        .toList();
  }

  /** Whether a press takes all that another one takes, and makes it as fast. */
  private static boolean isLike(Press press, Press as) {
    Press.Build build = press.build();
    Press.Build other = as.build();
    boolean barrel =
        build.barrel() == other.barrel()
            || (build.barrel() == Barrel.WEAR_RESISTANT && other.barrel() == Barrel.STANDARD);
    return barrel
        && build.orientation() == other.orientation()
        && build.table() == other.table()
        && build.lowerHalves() == other.lowerHalves()
        && press.size().equals(as.size());
  }

  private PlantChange qualified(String mold, String as, String press) {
    List<Job> jobs = new ArrayList<>();
    for (Job job : problem.jobs()) {
      List<Option> options = new ArrayList<>(job.options());
      job.options().stream()
          .filter(o -> o.mold().equals(mold) && o.press().equals(as))
          .map(o -> moved(o, press, mold))
          .forEach(options::add);
      jobs.add(with(job, options));
    }
    return new PlantChange(
        "press %s qualified for mold %s, as %s is".formatted(press, mold, as),
        problem.withJobs(jobs));
  }

  private static Option moved(Option o, String press, String mold) {
    return new Option(press, mold, o.tooling(), o.making(), o.pace(), o.standing(), o.notes());
  }

  private static Job with(Job job, String mold, String copy) {
    List<Option> options = new ArrayList<>(job.options());
    for (Option o : job.options()) {
      if (o.mold().equals(mold)) {
        options.add(moved(o, o.press(), copy));
      }
    }
    return with(job, options);
  }

  private static Job with(Job job, List<Option> options) {
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        options);
  }

  /** One more of a tooling set or device that is counted. */
  Optional<PlantChange> oneMore(String thing) {
    Arrangements was = problem.arranged();
    if (was.things().stream().noneMatch(t -> t.id().equals(thing))) {
      return Optional.empty();
    }
    List<CountedThing> things =
        was.things().stream()
            .map(t -> t.id().equals(thing) ? new CountedThing(t.id(), t.count() + 1) : t)
            .toList();
    return Optional.of(
        new PlantChange(
            "one more of " + thing, problem.with(with(was, things, was.services(), was.drying()))));
  }

  /** A mold serviced before the plan starts. */
  Optional<PlantChange> serviced(String mold) {
    Arrangements was = problem.arranged();
    if (was.services().stream().noneMatch(s -> s.mold().equals(mold))) {
      return Optional.empty();
    }
    List<MoldService> services =
        was.services().stream()
            .map(
                s ->
                    s.mold().equals(mold)
                        ? new MoldService(s.mold(), s.shotsBetween(), s.shotsBetween(), s.minutes())
                        : s)
            .toList();
    return Optional.of(
        new PlantChange(
            "the service of mold " + mold + " before the plan starts",
            problem.with(with(was, was.things(), services, was.drying()))));
  }

  /** Another dryer that may feed a press. */
  PlantChange dryer(String press) {
    Arrangements was = problem.arranged();
    List<Drying.Feed> feeds = new ArrayList<>(was.drying().dryers());
    feeds.add(new Drying.Feed("another for " + press, List.of(press)));
    Drying drying = new Drying(feeds, was.drying().materials(), was.drying().cleanMin());
    return new PlantChange(
        "another dryer for " + press,
        problem.with(with(was, was.things(), was.services(), drying)));
  }

  private static Arrangements with(
      Arrangements was, List<CountedThing> things, List<MoldService> services, Drying drying) {
    return new Arrangements(
        things,
        was.devices(),
        services,
        was.trials(),
        was.links(),
        was.surplus(),
        was.opening(),
        new Arrangements.Settled(drying, was.terms()));
  }
}
