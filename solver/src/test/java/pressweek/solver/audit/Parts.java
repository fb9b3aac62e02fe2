package pressweek.solver.audit;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Making;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Press;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Standing;
import pressweek.data.problem.Table;
import pressweek.data.problem.Take;

/** Presses, molds, jobs and so on with only what a test of the audit cares for. */
final class Parts {
  /** The days of the example week, Monday 2026-11-30 to Saturday. */
  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat");

  private Parts() {}

  /**
   * A minute of the example week in Berlin, in winter an hour ahead of UTC: {@code at("Mon
   * 06:00")}.
   */
  static int at(String dayAndTime) {
    int day = DAYS.indexOf(dayAndTime.substring(0, 3));
    LocalTime time = LocalTime.parse(dayAndTime.substring(4));
    long epochDay = LocalDate.of(2026, 11, 30).plusDays(day).toEpochDay();
    return (int) (epochDay * 1440) + time.getHour() * 60 + time.getMinute() - 60;
  }

  /** A press with a rate in whole units of money an hour. */
  static Press press(String id, FoodUse food, String calendar, int rate, double... shotPsG) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble shot = Arrays.stream(shotPsG).findFirst();
    return new Press(
        id,
        "",
        new Press.Build(Orientation.VERTICAL, Table.FIXED, 1, Barrel.STANDARD),
        new Press.Size(none, shot, none, none, none, none, none),
        calendar,
        food,
        rate * 100_000L);
  }

  static Mold mold(String id, int... changeMin) {
    OptionalDouble none = OptionalDouble.empty();
    return new Mold(
        id,
        new Mold.Use(List.of(), Optional.empty(), List.of(), List.of(), Map.of()),
        new Mold.Cavities(1, 1, none, none, none, none, none),
        new Mold.Body(Optional.empty(), none, none, none, none, none, ""),
        new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
        new Mold.MoldChange(Arrays.stream(changeMin).findFirst(), false, OptionalInt.empty()),
        none,
        true);
  }

  static Resin resin(String id, double meltC, long pricePerKg, String... neverNextTo) {
    OptionalDouble none = OptionalDouble.empty();
    return new Resin(
        id,
        "",
        none,
        OptionalDouble.of(meltC),
        none,
        pricePerKg,
        Barrel.STANDARD,
        List.of(neverNextTo));
  }

  static Colour colour(String id, double... lightness) {
    return new Colour("", id, id, "", Arrays.stream(lightness).findFirst());
  }

  static Lot lot(String what, String id, int onHand, String reservedFor, int... expiresMin) {
    return new Lot(
        what,
        id,
        "bin " + id,
        onHand,
        0,
        Arrays.stream(expiresMin).findFirst(),
        LotStatus.USABLE,
        reservedFor);
  }

  /** A pace of run minutes, start-up minutes and thousandths of an operator. */
  static Pace pace(int runMin, int startupMin, int operatorThousandths) {
    return new Pace(1000, runMin, startupMin, operatorThousandths, "test");
  }

  static Making making(int startupGrams, Take... takes) {
    return new Making(1000, 1, 10, startupGrams, List.of(takes));
  }

  static Take take(String insert, int pieces, int startup, int reserved) {
    return new Take(insert, pieces, startup, reserved);
  }

  /** An option by press, mold and tooling set: {@code option("P1 M1 T10", ...)}. */
  static Option option(String pressMoldTooling, Pace pace, Making making) {
    String[] ids = pressMoldTooling.split(" ", -1);
    String tooling = ids.length > 2 ? ids[2] : "";
    return new Option(ids[0], ids[1], tooling, making, pace, Standing.PROVEN, List.of());
  }

  /**
   * A job of 1000 pieces, due on Friday at 15:00, by id and by resin and colour: {@code job("A/2",
   * "PP RD", ...)}.
   */
  static Job job(String id, String resinColour, Option... options) {
    String[] line = id.split("/", -1);
    String[] barrel = resinColour.split(" ", -1);
    int due = at("Fri 15:00");
    return new Job(
        new OrderLine(line[0], line[1], "", "item " + id, 1000, due, List.of(), ""),
        new Item("item " + id, List.of()),
        new Quantity(1000, 0, 0, 1000),
        new Deadline(at("Mon 06:00"), due, 0, 100),
        barrel[0],
        barrel[1],
        false,
        List.of(options));
  }

  /** The same job as food-grade work. */
  static Job food(Job job) {
    return Edited.set(job, "foodGrade", true);
  }
}
