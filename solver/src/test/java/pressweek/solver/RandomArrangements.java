package pressweek.solver;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Mold;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Option;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;

/**
 * Adds to a drawn plant what plants arrange beside: counted things, services, trials, links,
 * dryers, overtime, shifts without people, inspectors and further terms, each switched on and off
 * by the draw.
 */
final class RandomArrangements {
  private static final int HOUR = 60;

  private final SplittableRandom random;
  private final Problem problem;

  private RandomArrangements(Problem problem, long seed) {
    this.problem = problem;
    random = new SplittableRandom(seed * 31 + 7);
  }

  /** The same plant with things arranged beside. */
  static Problem on(Problem problem, long seed) {
    return new RandomArrangements(problem, seed).draw();
  }

  private boolean maybe(int percent) {
    return random.nextInt(100) < percent;
  }

  private Problem draw() {
    List<CountedThing> things = things();
    List<DeviceNeed> devices = new ArrayList<>();
    if (!things.isEmpty()) {
      problem.floor().molds().stream()
          .filter(mold -> maybe(40))
          .forEach(mold -> devices.add(new DeviceNeed(mold.id(), "oven")));
    }
    boolean overtime = maybe(40);
    boolean night = maybe(40);
    Opening opening =
        new Opening(
            overtime
                ? List.of(new Opening.Overtime("extra", 1_000_000L * random.nextInt(40)))
                : List.of(),
            night ? List.of("night") : List.of());
    Arrangements arranged =
        new Arrangements(
            things,
            devices,
            maybe(40) ? services() : List.of(),
            maybe(30) ? trials() : List.of(),
            maybe(40) ? links() : List.of(),
            List.of(),
            opening,
            new Arrangements.Settled(maybe(40) ? drying() : Drying.NONE, terms()));
    return new Problem(
            plant(overtime, night),
            problem.floor(),
            problem.materials(),
            problem.jobs(),
            problem.unplaced(),
            problem.notChecked(),
            problem.kitting())
        .with(arranged);
  }

  private List<CountedThing> things() {
    if (!maybe(50)) {
      return List.of();
    }
    List<CountedThing> things = new ArrayList<>();
    things.add(new CountedThing("oven", 1 + random.nextInt(2)));
    List<String> sets =
        problem.jobs().stream()
            .flatMap(job -> job.options().stream())
            .map(Option::tooling)
            .filter(set -> !set.isEmpty())
            .distinct()
            .sorted()
            .toList();
    for (String set : sets) {
      if (maybe(60)) {
        things.add(new CountedThing(set, 1 + random.nextInt(2)));
      }
    }
    return things;
  }

  private List<MoldService> services() {
    List<MoldService> services = new ArrayList<>();
    for (Mold mold : problem.floor().molds()) {
      if (maybe(50)) {
        int between = 500 + random.nextInt(2_000);
        services.add(
            new MoldService(
                mold.id(),
                random.nextInt(between + 200) - 100,
                between,
                HOUR * (1 + random.nextInt(12))));
      }
    }
    return services;
  }

  private List<Trial> trials() {
    List<Press> presses = problem.floor().presses();
    List<Mold> molds = problem.floor().molds();
    int from = problem.plant().hours().startMin() + HOUR * (8 + random.nextInt(60));
    return List.of(
        new Trial(
            presses.get(random.nextInt(presses.size())).id(),
            molds.get(random.nextInt(molds.size())).id(),
            from,
            from + HOUR * (1 + random.nextInt(5)),
            random.nextInt(3),
            "trial",
            OptionalInt.empty()));
  }

  private List<Link> links() {
    List<Link> links = new ArrayList<>();
    List<Job> jobs = problem.jobs();
    for (int j = 1; j < jobs.size(); j++) {
      String second = jobs.get(j).id();
      boolean promised =
          problem.floor().promises().stream().map(Promise::job).anyMatch(second::equals);
      if (maybe(15) && !promised) {
        links.add(new Link(second, jobs.get(random.nextInt(j)).id(), HOUR * random.nextInt(12)));
      }
    }
    return links;
  }

  private Drying drying() {
    List<String> presses = problem.floor().presses().stream().map(Press::id).toList();
    List<Drying.Feed> dryers = new ArrayList<>();
    for (int d = 0; d < presses.size() + 1; d++) {
      List<String> fed = presses.stream().filter(p -> maybe(50)).toList();
      dryers.add(new Drying.Feed("D" + d, fed));
    }
    List<Drying.Dried> materials = new ArrayList<>();
    problem.jobs().stream()
        .map(job -> job.resin() + "\n" + job.colour())
        .distinct()
        .forEach(
            key -> {
              String[] names = key.split("\n", -1);
              if (!names[0].isEmpty() && names[0].hashCode() % 2 == 0) {
                String content = names[1].hashCode() % 3 == 0 ? key.replace('\n', ' ') : names[0];
                materials.add(
                    new Drying.Dried(names[0], names[1], content, HOUR * (1 + names[0].length())));
              }
            });
    return new Drying(dryers, materials, 20);
  }

  private Terms terms() {
    List<Terms.Place> earlier = new ArrayList<>();
    if (maybe(40)) {
      for (Job job : problem.jobs()) {
        if (maybe(50)) {
          int start = problem.plant().hours().startMin() + HOUR * random.nextInt(100);
          earlier.add(new Terms.Place(job.id(), job.options().get(0).press(), start));
        }
      }
    }
    return new Terms(
        maybe(40) ? HOUR * random.nextInt(12) : 0,
        2_000_000,
        maybe(30) ? 1_000_000 : 0,
        1_500_000,
        earlier);
  }

  private Plant plant(boolean overtime, boolean night) {
    Plant plant = problem.plant();
    Hours hours = plant.hours();
    boolean inspected = maybe(40);
    List<Shift> shifts = new ArrayList<>();
    for (Shift shift : hours.shifts()) {
      OptionalInt inspectors = inspected ? OptionalInt.of(random.nextInt(3)) : OptionalInt.empty();
      shifts.add(
          new Shift(
              shift.name(),
              shift.days(),
              shift.from(),
              shift.to(),
              shift.breaks(),
              shift.setters(),
              shift.operatorThousandths(),
              inspectors));
    }
    List<String> more = new ArrayList<>();
    if (overtime) {
      more.add("extra");
      shifts.add(
          beside("extra", 1, inspected, EnumSet.of(DayOfWeek.SUNDAY, DayOfWeek.SATURDAY), 14, 20));
    }
    if (night) {
      more.add("night");
      shifts.add(
          beside("night", 0, false, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.THURSDAY), 22, 6));
    }
    List<Calendar> calendars = new ArrayList<>();
    for (Calendar calendar : hours.calendars()) {
      List<String> names = new ArrayList<>(calendar.shifts());
      more.stream().filter(name -> maybe(70)).forEach(names::add);
      calendars.add(new Calendar(calendar.id(), names));
    }
    return new Plant(
        plant.name(),
        new Hours(
            hours.zone(), hours.startMin(), hours.endMin(), shifts, calendars, hours.closed()),
        plant.crew(),
        plant.shipping(),
        plant.rates(),
        plant.changes(),
        plant.moveToleranceMin(),
        plant.barrelDefaultG());
  }

  private static Shift beside(
      String name, int people, boolean inspected, EnumSet<DayOfWeek> days, int from, int to) {
    return new Shift(
        name,
        days,
        LocalTime.of(from, 0),
        LocalTime.of(to, 0),
        List.of(),
        people,
        people * 3_000,
        inspected ? OptionalInt.of(people) : OptionalInt.empty());
  }
}
