package pressweek.data.problem;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A tiny valid problem for tests, which say only what differs from it: presses P1 (horizontal) and
 * P2 (vertical, rotary with two lower halves), molds M1 and M2, resins PP and ABS, colours BLK, RED
 * and WHT, insert I1, no jobs. It works round the clock from {@link #START} (Monday 2026-11-30
 * 00:00 UTC) for seven days, ships every day at 15:00, and checks neither crew nor insert stock.
 */
public final class SmallPlant {
  /** Monday 2026-11-30 00:00 UTC, minutes since 1970. */
  public static final int START = (int) (java.time.LocalDate.of(2026, 11, 30).toEpochDay() * 1440);

  /** A day, minutes. */
  public static final int DAY = 1440;

  private int endMin = START + 7 * DAY;
  private List<Shift> shifts = List.of(shift("all", "00:00", "00:00"));
  private List<Calendar> calendars = new ArrayList<>();
  private List<java.time.LocalDate> closed = List.of();
  private java.time.ZoneId zone = ZoneOffset.UTC;
  private Crew crew = new Crew(false, false, 80, false, 30);
  private Shipping shipping =
      new Shipping(EnumSet.allOf(DayOfWeek.class), LocalTime.parse("15:00"));
  private Rates rates =
      new Rates("EUR", true, 10_000_000, 6_000_000, 4_500_000, 300_000, 2_500_000, 40_000_000);
  private ChangeTable changes = changeTable();
  private Stock stock = new Stock(false, List.of(), List.of());
  private final Map<String, Press> presses = new LinkedHashMap<>();
  private final Map<String, Mold> molds = new LinkedHashMap<>();
  private final Map<String, Resin> resins = new LinkedHashMap<>();
  private final Map<String, Insert> inserts = new LinkedHashMap<>();
  private final List<Colour> colours = new ArrayList<>();
  private final List<PressState> states = new ArrayList<>();
  private final List<Downtime> downtime = new ArrayList<>();
  private final List<Promise> promises = new ArrayList<>();
  private final List<RecordedChange> recorded = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Unplaced> unplaced = new ArrayList<>();

  /** The plant as the class says. */
  public SmallPlant() {
    press(horizontal("P1")).press(vertical("P2"));
    mold(mold("M1")).mold(mold("M2"));
    resin(resin("PP", 230)).resin(resin("ABS", 240));
    colour("BLK", 10).colour("RED", 45).colour("WHT", 95);
    insert(insert("I1"));
    calendars.add(new Calendar("always", List.of("all")));
  }

  /** The problem as set up so far. */
  public Problem build() {
    Plant plant =
        new Plant(
            "Small plant",
            new Hours(zone, START, endMin, shifts, calendars, closed),
            crew,
            shipping,
            rates,
            changes,
            60,
            250);
    Floor floor =
        new Floor(
            List.copyOf(presses.values()),
            List.copyOf(molds.values()),
            states,
            downtime,
            promises,
            recorded);
    Materials materials =
        new Materials(List.copyOf(resins.values()), colours, List.copyOf(inserts.values()), stock);
    return new Problem(plant, floor, materials, jobs, unplaced, List.of(), Optional.empty());
  }

  /** Ends the horizon this many days after the start. */
  public SmallPlant days(int days) {
    endMin = START + days * DAY;
    return this;
  }

  /** Replaces the shifts; every press works all of them unless calendars are given as well. */
  public SmallPlant shifts(Shift... all) {
    shifts = List.of(all);
    calendars =
        new ArrayList<>(List.of(new Calendar("always", shifts.stream().map(Shift::name).toList())));
    return this;
  }

  /** Adds a calendar. */
  public SmallPlant calendar(String id, String... shiftNames) {
    calendars.add(new Calendar(id, List.of(shiftNames)));
    return this;
  }

  /** Closes days. */
  public SmallPlant closed(java.time.LocalDate... days) {
    closed = List.of(days);
    return this;
  }

  /** Moves the plant to another zone. */
  public SmallPlant zone(java.time.ZoneId id) {
    zone = id;
    return this;
  }

  /** Says what is checked of the crew. */
  public SmallPlant crew(Crew of) {
    crew = of;
    return this;
  }

  /** Says when the truck leaves. */
  public SmallPlant shipping(Shipping of) {
    shipping = of;
    return this;
  }

  /** Says what things cost. */
  public SmallPlant rates(Rates of) {
    rates = of;
    return this;
  }

  /** Says what changes take. */
  public SmallPlant changes(ChangeTable of) {
    changes = of;
    return this;
  }

  /** Adds a press, or replaces the one of the same id. */
  public SmallPlant press(Press press) {
    presses.put(press.id(), press);
    return this;
  }

  /** Adds a mold, or replaces the one of the same id. */
  public SmallPlant mold(Mold mold) {
    molds.put(mold.id(), mold);
    return this;
  }

  /** Adds a resin, or replaces the one of the same id. */
  public SmallPlant resin(Resin resin) {
    resins.put(resin.id(), resin);
    return this;
  }

  /** Adds a colour in all resins with its lightness. */
  public SmallPlant colour(String id, double lightness) {
    return colour(new Colour("", id, id, "", OptionalDouble.of(lightness)));
  }

  /** Adds a colour. */
  public SmallPlant colour(Colour colour) {
    colours.add(colour);
    return this;
  }

  /** Adds an insert, or replaces the one of the same id. */
  public SmallPlant insert(Insert insert) {
    inserts.put(insert.id(), insert);
    return this;
  }

  /** Checks insert stock, with these lots and receipts. */
  public SmallPlant stock(List<Lot> lots, List<Receipt> receipts) {
    stock = new Stock(true, lots, receipts);
    return this;
  }

  /** Says how a press stands. */
  public SmallPlant state(PressState state) {
    states.add(state);
    return this;
  }

  /** Takes a press or a mold away. */
  public SmallPlant away(Downtime away) {
    downtime.add(away);
    return this;
  }

  /** Promises a run to the floor. */
  public SmallPlant promise(Promise promise) {
    promises.add(promise);
    return this;
  }

  /** Records a change. */
  public SmallPlant recorded(RecordedChange change) {
    recorded.add(change);
    return this;
  }

  /** Adds a job. */
  public SmallPlant job(JobBuilder job) {
    jobs.add(job.build());
    return this;
  }

  /** Adds a line that fell out before planning. */
  public SmallPlant unplaced(Unplaced line) {
    unplaced.add(line);
    return this;
  }

  /** A shift on all days of the week, without breaks, with 2 setters and 4 operators. */
  public static Shift shift(String name, String from, String to) {
    return shift(name, from, to, 2);
  }

  /** The same with so many setters. */
  public static Shift shift(String name, String from, String to, int setters) {
    return new Shift(
        name,
        EnumSet.allOf(DayOfWeek.class),
        LocalTime.parse(from),
        LocalTime.parse(to),
        List.of(),
        setters,
        4_000,
        OptionalInt.empty());
  }

  /** A horizontal press of 900 kN with a 200 g barrel, open to food-grade work. */
  public static Press horizontal(String id) {
    return new Press(
        id,
        "",
        new Press.Build(Orientation.HORIZONTAL, Table.FIXED, 1, Barrel.STANDARD),
        size(900, 200),
        "always",
        FoodUse.OPEN,
        1_000_000);
  }

  /** A vertical rotary press of 600 kN with a 120 g barrel, open to food-grade work. */
  public static Press vertical(String id) {
    return new Press(
        id,
        "",
        new Press.Build(Orientation.VERTICAL, Table.ROTARY, 2, Barrel.STANDARD),
        size(600, 120),
        "always",
        FoodUse.OPEN,
        1_000_000);
  }

  private static Press.Size size(double clampKn, double shotPsG) {
    OptionalDouble none = OptionalDouble.empty();
    return new Press.Size(
        OptionalDouble.of(clampKn), OptionalDouble.of(shotPsG), none, none, none, none, none);
  }

  /** A mold with four cavities that makes the head of its own id and takes 60 minutes to change. */
  public static Mold mold(String id) {
    OptionalDouble none = OptionalDouble.empty();
    return new Mold(
        id,
        new Mold.Use(List.of(id), Optional.empty(), List.of(), List.of(), Map.of()),
        new Mold.Cavities(4, 4, none, none, none, none, none),
        new Mold.Body(Optional.empty(), none, none, none, none, none, ""),
        new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
        new Mold.MoldChange(OptionalInt.of(60), false, OptionalInt.empty()),
        OptionalDouble.of(30),
        false);
  }

  /** A resin that melts at this temperature and costs 2.00 a kilogram. */
  public static Resin resin(String id, double meltC) {
    OptionalDouble none = OptionalDouble.empty();
    return new Resin(
        id, "", none, OptionalDouble.of(meltC), none, 200_000, Barrel.STANDARD, List.of());
  }

  /** A blind M8 nut of A2 stainless. */
  public static Insert insert(String id) {
    return new Insert(
        id, "blind", "M8x1.25", OptionalDouble.empty(), "A2", "", "", OptionalDouble.empty());
  }

  /**
   * The change table of the tests: mold 60 (40 % dismount), tooling 20, resin 20/20/40 with 30
   * degrees and 3 barrels, colour 10 darker, 30 + 45 per 100 lighter, 40 unknown, 1.5 and 4
   * barrels, food 30, first article 10, colour work after mold work.
   */
  public static ChangeTable changeTable() {
    return new ChangeTable(
        60,
        40,
        20,
        new ChangeTable.ResinStep(20, 20, 40, 30, 3_000),
        new ChangeTable.ColourStep(10, 30, 45, 40, 1_500, 4_000),
        30,
        10,
        false);
  }
}
