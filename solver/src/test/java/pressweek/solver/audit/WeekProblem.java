package pressweek.solver.audit;

import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.colour;
import static pressweek.solver.audit.Parts.food;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.lot;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.mold;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.Parts.press;
import static pressweek.solver.audit.Parts.resin;
import static pressweek.solver.audit.Parts.take;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Plant;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Unplaced;

/**
 * A week on three presses: P1 is open to food-grade work and holds M1, which is running; P2 is kept
 * for it and cleared; P3 works by day, never on food-grade work, and holds M3. The plant is closed
 * on Wednesday.
 */
final class WeekProblem {
  private WeekProblem() {}

  static Problem problem() {
    return new Problem(
        plant(),
        floor(),
        materials(),
        jobs(),
        List.of(new Unplaced("H", "1", "item H/1", 50, "on hold: drawing", "release it")),
        List.of());
  }

  static Plant plant() {
    return new Plant(
        "test plant",
        hours(),
        new Crew(true, true, 80, false, 30),
        new Shipping(weekdays(), LocalTime.of(15, 0)),
        rates(),
        changes(),
        60,
        250);
  }

  private static Set<DayOfWeek> weekdays() {
    return EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
  }

  private static Hours hours() {
    Break pause = new Break(LocalTime.of(10, 0), LocalTime.of(10, 30));
    LocalTime six = LocalTime.of(6, 0);
    LocalTime two = LocalTime.of(14, 0);
    LocalTime ten = LocalTime.of(22, 0);
    return new Hours(
        ZoneId.of("Europe/Berlin"),
        at("Mon 06:00"),
        at("Sat 06:00"),
        List.of(
            new Shift("early", weekdays(), six, two, List.of(pause), 1, 2000),
            new Shift("late", weekdays(), two, ten, List.of(), 1, 1500)),
        List.of(
            new Calendar("two", List.of("early", "late")), new Calendar("day", List.of("early"))),
        List.of(LocalDate.of(2026, 12, 2)));
  }

  /**
   * 100.00 a cut-off, 60.00 a day, 45.00 an hour of change (0.75 a minute), 3.00 a kg, 25.00 an
   * hour kept, 400.00 unplaced.
   */
  private static Rates rates() {
    return new Rates("EUR", true, 10_000_000, 6_000_000, 4_500_000, 300_000, 2_500_000, 40_000_000);
  }

  private static ChangeTable changes() {
    return new ChangeTable(
        60,
        40,
        20,
        new ChangeTable.ResinStep(20, 20, 40, 30, 3000),
        new ChangeTable.ColourStep(10, 30, 45, 40, 1500, 4000),
        30,
        10,
        false);
  }

  private static Floor floor() {
    return new Floor(
        List.of(
            press("P1", FoodUse.OPEN, "two", 30, 119.2),
            press("P2", FoodUse.KEPT, "two", 36),
            press("P3", FoodUse.NEVER, "day", 24, 80)),
        List.of(mold("M1"), mold("M2", 90), mold("M3", 45), mold("M4")),
        List.of(
            new PressState("P1", new Setup("M1", "T8", "PP", "BK"), false, "A/1"),
            new PressState("P2", new Setup("M4", "", "ABS", "RD"), true, ""),
            new PressState("P3", new Setup("M3", "", "PP", "WH"), false, "")),
        List.of(
            new Downtime(Downtime.Kind.PRESS, "P3", at("Mon 12:00"), at("Mon 13:00"), "new hose"),
            new Downtime(Downtime.Kind.MOLD, "M1", at("Tue 12:00"), at("Thu 06:00"), "polish")),
        List.of(new Promise("C/1", "P2", at("Mon 07:00"))),
        List.of(
            recorded("P1", new Setup("M4", "", "", ""), 15, OptionalInt.empty()),
            recorded("P2", new Setup("M4", "", "", ""), 50, OptionalInt.of(700)),
            recorded("", new Setup("", "", "", ""), 99, OptionalInt.of(1))));
  }

  /** A recorded change to POM. */
  private static RecordedChange recorded(
      String press, Setup from, int minutes, OptionalInt purgeG) {
    return new RecordedChange(press, from, new Setup("", "", "POM", ""), minutes, purgeG);
  }

  /** PVC must never meet POM. POM has no price, so 3.00 a kg counts. */
  private static Materials materials() {
    return new Materials(
        List.of(
            resin("PP", 230, 200_000),
            resin("PA", 280, 400_000),
            resin("ABS", 240, 250_000),
            resin("POM", 200, 0, "PVC")),
        List.of(colour("BK", 0), colour("RD", 50), colour("WH", 100), colour("GN")),
        List.of(),
        new Stock(
            true,
            List.of(
                lot("I1", "L1", 100, "", at("Sat 06:00")),
                lot("I1", "L2", 80, ""),
                lot("I1", "L3", 60, "B"),
                Edited.set(lot("I1", "L4", 500, ""), "status", LotStatus.HELD),
                lot("I1", "L5", 500, "", at("Mon 05:00")),
                lot("I2", "K1", 200, "")),
            List.of(new Receipt("I1", 300, at("Mon 13:00"), at("Mon 15:00")))));
  }

  private static List<Job> jobs() {
    return Stream.of(ordinary(), foodGrade(), late()).flatMap(List::stream).toList();
  }

  private static List<Job> ordinary() {
    return List.of(
        job("A/1", "PP BK", option("P1 M1 T8", pace(120, 5, 500), making(250))),
        job(
            "A/2",
            "PP RD",
            option("P1 M1 T10", pace(200, 7, 500), making(250, take("I1", 70, 10, 0))),
            option("P3 M1 T10", pace(220, 7, 500), making(250, take("I1", 70, 10, 0)))),
        job("C/1", "POM BK", option("P2 M4", pace(90, 5, 500), making(120))),
        job(
            "C/2",
            "PP WH",
            option("P2 M3", pace(240, 6, 500), making(333, take("I1", 45, 5, 0))),
            option("P3 M3", pace(250, 6, 500), making(333, take("I1", 45, 5, 0)))),
        job(
            "E/1",
            "PP BK",
            option("P3 M1 T8", pace(180, 9, 1000), making(0, take("I2", 150, 5, 0)))));
  }

  private static List<Job> foodGrade() {
    return List.of(
        food(
            job(
                "B/1",
                "PA WH",
                option("P1 M2", pace(300, 12, 500), making(310, take("I1", 40, 6, 60))),
                option("P2 M2", pace(300, 12, 500), making(310, take("I1", 40, 6, 60))))),
        food(
            job(
                "B/2",
                "PA WH",
                option("P1 M2", pace(500, 12, 500), making(310, take("I1", 120, 6, 0))))),
        food(
            job(
                "D/1",
                "PP WH",
                option("P2 M3", pace(400, 6, 500), making(333, take("I1", 100, 8, 0))))));
  }

  private static List<Job> late() {
    return List.of(
        Edited.set(
            job(
                "F/1",
                "PP GN",
                option("P3 M1 T8", pace(100, 4, 1000), making(77, take("I2", 40, 3, 0)))),
            "deadline",
            new Deadline(at("Mon 06:00"), at("Tue 15:00"), 60, 150)),
        job("G/1", "PP BK", option("P1 M1 T8", pace(120, 5, 500), making(250))));
  }
}
