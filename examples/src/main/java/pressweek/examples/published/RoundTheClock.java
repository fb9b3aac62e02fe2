package pressweek.examples.published;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Floor;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Making;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.Rates;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Standing;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Table;
import pressweek.data.problem.Terms;

/**
 * A plant that works round the clock without crew or stock to look after, so that nothing but runs,
 * recorded changes and due times is left. A unit of time of a published problem is a minute, a job
 * is a colour, a machine is a press with a mold of its own.
 */
final class RoundTheClock {
  /** Monday 2026-11-30 00:00 UTC, minutes since 1970. */
  static final int START = (int) (LocalDate.of(2026, 11, 30).toEpochDay() * 1440);

  /** What a minute costs that is counted, thousandths of a cent. */
  static final long UNIT = 100_000;

  private static final long NEVER_LEFT_OUT = 1_000_000_000_000L;

  private final int machines;
  private final boolean late;
  private final List<RecordedChange> changes = new ArrayList<>();
  private final List<Colour> colours = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();

  /**
   * A plant of so many presses.
   *
   * @param late true when weighted lateness is charged, false when the end of the last run is
   */
  RoundTheClock(int machines, boolean late) {
    this.machines = machines;
    this.late = late;
  }

  /** The change from one job to another on a machine; job -1 is how the machine stands. */
  void change(int machine, int from, int to, int minutes) {
    Setup before = new Setup("", "", "", colour(from));
    Setup after = new Setup("", "", "", colour(to));
    changes.add(new RecordedChange(press(machine), before, after, minutes, OptionalInt.of(0)));
  }

  /** The next job, with its minutes on each machine. */
  void job(int due, int weight, int... minutes) {
    String order = String.valueOf(jobs.size());
    colours.add(new Colour("", colour(jobs.size()), "", "", OptionalDouble.of(50)));
    List<Option> options = new ArrayList<>();
    for (int m = 0; m < machines; m++) {
      options.add(
          new Option(
              press(m),
              "M" + m,
              "",
              new Making(1, 1, 0, 0, List.of()),
              new Pace(minutes[m] * 60_000, minutes[m], 0, 0, "published"),
              Standing.PROVEN,
              List.of()));
    }
    jobs.add(
        new Job(
            new OrderLine(order, "1", "", "ITEM", 1, START + due, List.of(), ""),
            new Item("ITEM", List.of()),
            new Quantity(1, 0, 0, 1),
            new Deadline(START, START + due, 0, 100 * weight),
            "PP",
            colour(jobs.size()),
            false,
            options));
  }

  /** A figure that these problems do not have. */
  private static OptionalDouble unknown() {
    return OptionalDouble.empty();
  }

  private static String press(int machine) {
    return "P" + machine;
  }

  private static String colour(int job) {
    return job < 0 ? "START" : "C" + job;
  }

  /** The problem of all jobs, whose horizon is so many minutes long. */
  Problem build(int horizonMin) {
    List<Press> presses = new ArrayList<>();
    List<Mold> molds = new ArrayList<>();
    List<PressState> states = new ArrayList<>();
    colours.add(new Colour("", colour(-1), "", "", OptionalDouble.of(50)));
    String standing =
        changes.stream().anyMatch(c -> c.from().colour().equals(colour(-1))) ? colour(-1) : "";
    for (int m = 0; m < machines; m++) {
      presses.add(made(press(m)));
      molds.add(mold("M" + m));
      states.add(new PressState(press(m), new Setup("M" + m, "", "PP", standing), false, ""));
    }
    Floor floor = new Floor(presses, molds, states, List.of(), List.of(), changes);
    Resin resin =
        new Resin(
            "PP", "", unknown(), OptionalDouble.of(230), unknown(), 0, Barrel.STANDARD, List.of());
    Materials materials =
        new Materials(List.of(resin), colours, List.of(), new Stock(false, List.of(), List.of()));
    Terms terms = new Terms(0, 0, late ? 0 : 60 * UNIT, 0, List.of());
    return new Problem(
            plant(horizonMin), floor, materials, jobs, List.of(), List.of(), Optional.empty())
        .with(Arrangements.NONE.with(terms));
  }

  private Plant plant(int horizonMin) {
    EnumSet<DayOfWeek> days = EnumSet.allOf(DayOfWeek.class);
    Shift shift =
        new Shift("all", days, LocalTime.MIN, LocalTime.MIN, List.of(), 0, 0, OptionalInt.empty());
    return new Plant(
        "published problem",
        new Hours(
            ZoneOffset.UTC,
            START,
            START + horizonMin,
            List.of(shift),
            List.of(new Calendar("all", List.of("all"))),
            List.of()),
        new Crew(false, false, 100, true, 0),
        new Shipping(days, LocalTime.NOON),
        new Rates("EUR", true, 0, late ? 1440 * UNIT : 0, 0, 0, 0, NEVER_LEFT_OUT),
        new ChangeTable(
            0,
            0,
            0,
            new ChangeTable.ResinStep(0, 0, 0, 0, 0),
            new ChangeTable.ColourStep(0, 0, 0, 0, 0, 0),
            0,
            0,
            false),
        60,
        0);
  }

  private static Press made(String id) {
    return new Press(
        id,
        "",
        new Press.Build(Orientation.HORIZONTAL, Table.FIXED, 1, Barrel.STANDARD),
        new Press.Size(unknown(), unknown(), unknown(), unknown(), unknown(), unknown(), unknown()),
        "all",
        FoodUse.OPEN,
        0);
  }

  private static Mold mold(String id) {
    return new Mold(
        id,
        new Mold.Use(List.of("ITEM"), Optional.empty(), List.of(), List.of(), java.util.Map.of()),
        new Mold.Cavities(1, 1, unknown(), unknown(), unknown(), unknown(), unknown()),
        new Mold.Body(Optional.empty(), unknown(), unknown(), unknown(), unknown(), unknown(), ""),
        new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
        new Mold.MoldChange(OptionalInt.empty(), false, OptionalInt.empty()),
        unknown(),
        false);
  }
}
