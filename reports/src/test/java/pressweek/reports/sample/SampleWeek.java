package pressweek.reports.sample;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Crew;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Table;

/**
 * The plant of the tests: two shifts from Monday 30 November 2026, presses, materials and inserts.
 */
public final class SampleWeek {
  public static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");
  public static final int START = at("2026-11-30T06:00");
  public static final int END = at("2026-12-07T06:00");

  private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

  private SampleWeek() {}

  /** Minutes since 1970 of a local time of the plant. */
  public static int at(String local) {
    return (int) (LocalDateTime.parse(local).atZone(ZONE).toEpochSecond() / 60);
  }

  public static Hours hours() {
    return new Hours(
        ZONE,
        START,
        END,
        List.of(
            shift("early", "06:00", "14:00", 2),
            shift("late", "14:00", "22:00", 2),
            new Shift(
                "saturday",
                Set.of(DayOfWeek.SATURDAY),
                LocalTime.of(6, 0),
                LocalTime.of(12, 0),
                List.of(),
                1,
                2_000,
                OptionalInt.empty())),
        List.of(
            new Calendar("two-shift", List.of("early", "late")),
            new Calendar("one-shift", List.of("early")),
            new Calendar("long", List.of("early", "late", "saturday"))),
        List.of());
  }

  private static Shift shift(String name, String from, String to, int setters) {
    return new Shift(
        name,
        WEEKDAYS,
        LocalTime.parse(from),
        LocalTime.parse(to),
        List.of(),
        setters,
        6_500,
        OptionalInt.empty());
  }

  public static Plant plant(String name, boolean money) {
    return new Plant(
        name,
        hours(),
        new Crew(true, true, 80, false, 30),
        new Shipping(WEEKDAYS, LocalTime.of(15, 0)),
        new Rates("EUR", money, 10_000_000, 6_000_000, 4_500_000, 300_000, 2_500_000, 40_000_000),
        new ChangeTable(
            60,
            40,
            20,
            new ChangeTable.ResinStep(20, 20, 40, 30, 3_000),
            new ChangeTable.ColourStep(10, 30, 45, 40, 1_500, 4_000),
            30,
            10,
            false),
        60,
        250);
  }

  /**
   * Presses: the first eight of fourteen vertical, the others horizontal, calendars and food use
   * mixed.
   */
  public static List<Press> presses(int count) {
    List<Press> presses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean vertical = i % 14 < 8;
      Table table = !vertical ? Table.FIXED : i % 3 == 0 ? Table.ROTARY : Table.SHUTTLE;
      FoodUse food = i % 7 == 0 ? FoodUse.KEPT : i == 1 ? FoodUse.ONLY : FoodUse.NEVER;
      String calendar = i % 6 == 4 ? "one-shift" : i % 6 == 5 ? "long" : "two-shift";
      presses.add(press((vertical ? "V" : "H") + (i + 1), vertical, table, calendar, food));
    }
    return presses;
  }

  private static Press press(
      String id, boolean vertical, Table table, String calendar, FoodUse food) {
    OptionalDouble none = OptionalDouble.empty();
    return new Press(
        id,
        vertical ? "A" : "B",
        new Press.Build(
            vertical ? Orientation.VERTICAL : Orientation.HORIZONTAL,
            table,
            table == Table.FIXED ? 1 : 2,
            Barrel.STANDARD),
        new Press.Size(OptionalDouble.of(450), none, none, none, none, none, none),
        calendar,
        food,
        1_200_000);
  }

  public static Materials materials(boolean stockChecked) {
    return new Materials(
        List.of(resin("PP"), resin("ABS"), resin("PA66-GF30"), resin("POM", "PVC")),
        colours(),
        inserts(),
        new Stock(stockChecked, List.of(), List.of()));
  }

  private static Resin resin(String id, String... never) {
    OptionalDouble none = OptionalDouble.empty();
    return new Resin(id, "", none, none, none, 0, Barrel.STANDARD, List.of(never));
  }

  private static List<Colour> colours() {
    return List.of(
        colour("BLK", "black", "111214"),
        colour("SGR", "signal red", "A52019"),
        colour("YEL", "rape yellow", "F3DA0B"),
        colour("LGR", "light grey", "C8CCCB"),
        colour("BLU", "sky blue", "2271B3"),
        colour("GRN", "leaf green", "35682D"),
        colour("IVO", "ivory", "E6D2B5"),
        colour("NAT", "natural", ""));
  }

  private static Colour colour(String id, String name, String srgb) {
    return new Colour("", id, name, srgb, OptionalDouble.empty());
  }

  public static List<Insert> inserts() {
    return List.of(
        insert("S0825", "stud", "M8x1.25", 25, "steel", "zinc", "trivalent"),
        insert("S5616", "stud", "5/16-18 UNC", 25.4, "steel", "zinc", "hexavalent"),
        insert("T5618", "through", "5/16-18 UNC", 0, "brass", "", "none"),
        insert("B0600", "blind", "M6", 0, "A2", "plain", "none"),
        insert("B1420", "blind", "1/4-20 UNC", 0, "A2", "plain", ""),
        insert("L1000", "lock", "M10x1.5", 0, "steel", "zinc", "trivalent"),
        insert("X0012", "shaft", "", 12, "A4", "", ""));
  }

  /** An insert; the last texts are its material, finish and passivation. A length of 0 is none. */
  public static Insert insert(
      String id, String kind, String thread, double length, String... made) {
    OptionalDouble mm = length == 0 ? OptionalDouble.empty() : OptionalDouble.of(length);
    return new Insert(id, kind, thread, mm, made[0], made[1], made[2], OptionalDouble.empty());
  }
}
