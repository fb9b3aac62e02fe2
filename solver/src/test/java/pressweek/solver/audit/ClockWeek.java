package pressweek.solver.audit;

import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.Parts.press;
import static pressweek.solver.audit.WeekPlan.charge;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Terms;

/**
 * Two presses over a weekend on which clocks change in Berlin, worked out by hand. By day, from
 * 06:00 to 22:00, both work. At night P1 goes on without people, with a pause at 02:30; P2 has
 * overtime on Saturdays from 22:00 to 04:00, with a pause from 01:45 to 02:15. M1 runs without hand
 * loading, all else is loaded by hand.
 */
final class ClockWeek {
  private static final Setup OF_A = WeekPlan.setup("M1 T8 PP BK");

  private ClockWeek() {}

  static int utc(String instant) {
    return (int) (Instant.parse(instant).getEpochSecond() / 60);
  }

  /**
   * 2026-10-25: from 03:00+02:00 it is 02:00+01:00 (01:00Z) again.
   *
   * <p>P1, A/1, 450 min from Saturday 20:00 (18:00Z): 120 to 22:00 (20:00Z), 270 to the first 02:30
   * (00:30Z); the pause lasts to 03:00 (02:00Z); 60 more.
   *
   * <p>P2, B/1, 405 min from 18:00Z: 120, then 225 to 01:45 (23:45Z); the pause lasts to the first
   * 02:15 (00:15Z); 60 more, to the second 02:15. C/1: M2 for M4 in 60 min and 10 for the first
   * article; 35 of its 50 min to 04:00 (03:00Z), 15 from 06:00 (05:00Z). D/1: M3 for M2, 70 min
   * again, and a run of 60.
   *
   * <p>The overtime lasts 7 h. M2 runs for 50 min of the 120 that the plant wants, so 70 are
   * missing at 60.00 an hour. The close is 27 h 25 after the start, at 1.20 an hour.
   */
  static Plan autumn() {
    String night = "2026-10-25T";
    Problem problem = problem("2026-10-24T04:00:00Z", "2026-11-01T05:00:00Z");
    List<Run> runs =
        List.of(
            a("2026-10-24T18:00:00Z", night + "03:00:00Z"),
            b("2026-10-24T18:00:00Z", night + "01:15:00Z"),
            c(night + "01:15:00Z", night + "02:25:00Z", night + "05:15:00Z"),
            d(night + "05:15:00Z", night + "06:25:00Z", night + "07:25:00Z"));
    PlantWide.Opened opened =
        new PlantWide.Opened("extra", utc("2026-10-24T20:00:00Z"), utc(night + "03:00:00Z"));
    return plan(problem, runs, opened, 42_000_000, 3_290_000);
  }

  /**
   * 2027-03-28: from 02:00+01:00 it is 03:00+02:00 (01:00Z).
   *
   * <p>P1, A/1, 450 min from Saturday 20:00 (19:00Z): 120 to 22:00 (21:00Z), 330 without a pause,
   * since 02:30 and 03:00 are both 01:00Z.
   *
   * <p>P2, B/1, 405 min from 19:00Z: 120, then 225 to 01:45 (00:45Z); the pause lasts to 03:00
   * (01:00Z), as 02:15 is skipped; 60 more, to 04:00 (02:00Z), when the overtime ends. C/1: 70 min
   * of change from 06:00 (04:00Z), 50 of run. D/1 as in autumn.
   *
   * <p>The overtime lasts 5 h. The campaign of M2 is the same. The close is 27 h 10 after the
   * start.
   */
  static Plan spring() {
    String night = "2027-03-28T";
    Problem problem = problem("2027-03-27T05:00:00Z", "2027-04-04T04:00:00Z");
    List<Run> runs =
        List.of(
            a("2027-03-27T19:00:00Z", night + "02:30:00Z"),
            b("2027-03-27T19:00:00Z", night + "02:00:00Z"),
            c(night + "04:00:00Z", night + "05:10:00Z", night + "06:00:00Z"),
            d(night + "06:00:00Z", night + "07:10:00Z", night + "08:10:00Z"));
    PlantWide.Opened opened =
        new PlantWide.Opened("extra", utc("2027-03-27T21:00:00Z"), utc(night + "02:00:00Z"));
    return plan(problem, runs, opened, 30_000_000, 3_260_000);
  }

  private static Plan plan(
      Problem problem, List<Run> runs, PlantWide.Opened opened, long overtime, long close) {
    PlantWide whole =
        Arranged.opening(
            List.of(opened),
            charge(Rule.OVERTIME, overtime),
            charge(Rule.SHORT_CAMPAIGN, 7_000_000),
            charge(Rule.CLOSE, close));
    return TinyWeek.with(TinyWeek.plan(problem, runs), whole);
  }

  private static Problem problem(String start, String end) {
    Problem problem =
        TinyWeek.problem(
            by(start, end, job("A/1", "PP BK", option("P1 M1 T8", pace(450, 0, 0), making(0)))),
            by(start, end, job("B/1", "ABS RD", option("P2 M4", pace(405, 0, 1000), making(0)))),
            by(start, end, job("C/1", "ABS RD", option("P2 M2", pace(45, 5, 1000), making(0)))),
            by(start, end, job("D/1", "ABS RD", option("P2 M3", pace(60, 0, 1000), making(0)))));
    problem =
        Edited.set(
            problem,
            "floor.presses",
            List.of(press("P1", FoodUse.OPEN, "alone", 0), press("P2", FoodUse.OPEN, "more", 0)));
    problem = Edited.edit(problem, "floor.states", Edited.without(2));
    problem = Edited.set(problem, "floor.molds[M1].handLoad", false);
    problem = Edited.set(problem, "plant.crew", new Crew(true, true, 80, false, 30));
    problem = Edited.set(problem, "plant.hours", hours(start, end));
    Opening opening =
        new Opening(List.of(new Opening.Overtime("extra", 6_000_000)), List.of("ghost"));
    Terms.Place place = new Terms.Place("A/1", "P2", utc(start));
    Terms terms = new Terms(120, 6_000_000, 120_000, 500_000, List.of(place));
    problem = Arranged.set(problem, "opening", opening);
    return Arranged.set(problem, "settled.terms", terms);
  }

  private static Job by(String start, String end, Job job) {
    return Edited.set(job, "deadline", new Deadline(utc(start), utc(end), 0, 100));
  }

  private static Hours hours(String start, String end) {
    Set<DayOfWeek> daily = EnumSet.allOf(DayOfWeek.class);
    return new Hours(
        ZoneId.of("Europe/Berlin"),
        utc(start),
        utc(end),
        List.of(
            shift("day", daily, "06:00-22:00 12:00-12:30", 1),
            shift("ghost", daily, "22:00-06:00 02:30-03:00", 0),
            shift("extra", EnumSet.of(DayOfWeek.SATURDAY), "22:00-04:00 01:45-02:15", 1)),
        List.of(
            new Calendar("alone", List.of("day", "ghost")),
            new Calendar("more", List.of("day", "extra"))),
        List.of());
  }

  private static Shift shift(String name, Set<DayOfWeek> days, String fromToAndBreak, int people) {
    String[] time = fromToAndBreak.split("[- ]");
    return new Shift(
        name,
        days,
        LocalTime.parse(time[0]),
        LocalTime.parse(time[1]),
        List.of(new Break(LocalTime.parse(time[2]), LocalTime.parse(time[3]))),
        people,
        people * 1000,
        OptionalInt.of(people));
  }

  /** The earlier plan had it on P2. */
  private static Run a(String start, String end) {
    Change none = new Change(OF_A, OF_A, List.of(), utc(start), utc(start), 0, 0);
    return WeekPlan.charged(run("R1 A/1 P1 M1 1", none, start, end), charge(Rule.MOVED, 500_000));
  }

  private static Run b(String start, String end) {
    Setup setup = WeekPlan.setup("M4 - ABS RD");
    Change none = new Change(setup, setup, List.of(), utc(start), utc(start), 0, 0);
    return run("R2 B/1 P2 M4 1", none, start, end);
  }

  private static Run c(String change, String start, String end) {
    return run("R3 C/1 P2 M2 2", mold("M4 - ABS RD > M2 - ABS RD", change, start), start, end);
  }

  private static Run d(String change, String start, String end) {
    return run("R4 D/1 P2 M3 3", mold("M2 - ABS RD > M3 - ABS RD", change, start), start, end);
  }

  private static Change mold(String setups, String start, String end) {
    String[] setup = setups.split(" > ");
    return new Change(
        WeekPlan.setup(setup[0]),
        WeekPlan.setup(setup[1]),
        List.of(ChangeKind.MOLD),
        utc(start),
        utc(end),
        70,
        0);
  }

  private static Run run(String ids, Change change, String start, String end) {
    String[] id = ids.split(" ");
    return new Run(
        id[0],
        id[1],
        id[2],
        id[3],
        Integer.parseInt(id[4]),
        change,
        utc(start),
        utc(end),
        utc(end),
        List.of(),
        List.of());
  }
}
