package pressweek.solver.audit;

import static pressweek.data.plan.ChangeKind.COLOUR;
import static pressweek.data.plan.ChangeKind.FOOD_CLEARANCE;
import static pressweek.data.plan.ChangeKind.MOLD;
import static pressweek.data.plan.ChangeKind.RESIN;
import static pressweek.data.plan.ChangeKind.TOOLING;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import java.util.Map;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;

/**
 * A good plan for {@link WeekProblem}, worked out by hand. A mold without minutes of its own takes
 * 60: 24 off, 36 on. M2 takes 90: 36 off, 54 on. M3 takes 45: 18 off, 27 on. After a change of n
 * minutes the one setter rests for n/4, rounded up.
 */
final class WeekPlan {
  private WeekPlan() {}

  static Plan plan() {
    return new Plan(
        new Head(
            "2026-W49/1", "", at("Mon 06:00"), Map.of(), new Settings(0, 1, 1), List.of(), false),
        WeekProblem.problem(),
        List.of(r1(), r2(), r3(), r4(), r5(), r6(), r7(), r8(), r9()),
        // 18 min: 16 until the break at 10:00, 2 after 10:30. Setter until 10:37. 18 x 0.75 =
        // 13.50.
        List.of(new Dismount("P3", "M3", at("Mon 09:44"), at("Mon 10:32"), 18, 1_350_000)),
        pulls(),
        List.of(
            WeekProblem.problem().unplaced().get(0),
            new Unplaced("G", "1", "item G/1", 1000, "no room", "another shift")),
        // Ready on Sat 06:00, due Fri 15:00: 900 min late, one cut-off (Fri 15:00).
        // 100.00 + 60.00 x 900 / 1440 = 137.50, with 400.00 for being unplaced.
        List.of(new Charge(Rule.UNPLACED, 53_750_000, "no place")),
        figures());
  }

  /** Running: no change, starts with the plan. */
  private static Run r1() {
    return run("R1 A/1 P1 M1 1", none("Mon 06:00", setup("M1 T8 PP BK")), "Mon 06:00", "Mon 08:00");
  }

  /**
   * Tooling 20; black 0 to red 50: 30 + ceil(45 x 50 / 100) = 53; first article 10: 83 min. Purge 4
   * x 120 g. Setter until 09:44. Run 200 + 7: 37 min until the break at 10:00, 170 from 10:30.
   */
  private static Run r2() {
    Change change =
        change("M1 T8 PP BK > M1 T10 PP RD", "Mon 08:00 - Mon 09:23", 83, 480, TOOLING, COLOUR);
    Run run = run("R2 A/2 P1 M1 2", change, "Mon 09:23", "Mon 13:20");
    // 83 x 0.75; 2.00 x 0.480; 2.00 x 0.250; 30.00 x 200/60 on P1 less 24.00 x 220/60 on P3.
    return charged(
        run,
        charge(Rule.CHANGE, 6_225_000),
        charge(Rule.PURGE, 96_000),
        charge(Rule.START_UP, 50_000),
        charge(Rule.PRESS_RATE, 1_200_000));
  }

  /**
   * Mold 24 + 54; PP 230 to PA 280 is 50 hotter: 20, red 50 to white 100: 53, the larger counts;
   * first article 10; clearance 30: 171 min. Purge 4 x 120 g (3 for the resin is less). M1 is off
   * after 24 min, at 13:51. Setter until 17:01. Run 300 + 12.
   */
  private static Run r3() {
    Change change =
        change(
            "M1 T10 PP RD > M2 - PA WH",
            "Mon 13:27 - Mon 16:18",
            171,
            480,
            MOLD,
            RESIN,
            COLOUR,
            FOOD_CLEARANCE);
    Run run = run("R3 B/1 P1 M2 3", change, "Mon 16:18", "Mon 21:30");
    run = waits(run, wait(Cause.SETTER, "", "Mon 13:20", "Mon 13:27"));
    // 171 x 0.75; 4.00 x 0.480; 4.00 x 0.310; P1 is the cheaper press.
    return charged(
        run,
        charge(Rule.CHANGE, 12_825_000),
        charge(Rule.PURGE, 192_000),
        charge(Rule.START_UP, 124_000));
  }

  /** The campaign goes on. 500 min: 30 on Monday, 240 on Tuesday until the break, 230 after it. */
  private static Run r4() {
    return run("R4 B/2 P1 M2 4", none("Mon 21:30", setup("M2 - PA WH")), "Mon 21:30", "Tue 14:20");
  }

  /**
   * Promised from 07:00. Recorded change to POM: 50 min, 700 g. Setter until 07:13. Run 90 + 5.
   * Ends the clearance of P2.
   */
  private static Run r5() {
    Change change =
        change("M4 - ABS RD > M4 - POM BK", "Mon 06:10 - Mon 07:00", 50, 700, RESIN, COLOUR);
    Run run = run("R5 C/1 P2 M4 1", change, "Mon 07:00", "Mon 08:35");
    run = waits(run, wait(Cause.PROMISED, "C/1", "Mon 06:00", "Mon 06:10"));
    // 50 x 0.75; 3.00 x 0.700; 3.00 x 0.120; 25.00 x 90/60.
    return charged(
        run,
        charge(Rule.CHANGE, 3_750_000),
        charge(Rule.PURGE, 210_000),
        charge(Rule.START_UP, 36_000),
        charge(Rule.KEPT_PRESS, 3_750_000));
  }

  /**
   * Mold 24 + 27; POM 200 to PP 230 is not more than 30 hotter: 20, black 0 to white 100: 30 + 45 =
   * 75, the larger counts; first article 10: 136 min. Purge 4 x 250 g. M3 is off P3 at 10:32.
   * Setter until 13:27. Run 240 + 6.
   */
  private static Run r6() {
    Change change =
        change("M4 - POM BK > M3 - PP WH", "Mon 10:37 - Mon 12:53", 136, 1000, MOLD, RESIN, COLOUR);
    Run run = run("R6 C/2 P2 M3 2", change, "Mon 12:53", "Mon 16:59");
    run =
        waits(
            run,
            wait(Cause.MOLD, "M3", "Mon 08:35", "Mon 10:32"),
            wait(Cause.SETTER, "", "Mon 10:32", "Mon 10:37"));
    // 136 x 0.75; 2.00 x 1.000; 2.00 x 0.333; 36.00 x 240/60 on P2 less 24.00 x 250/60 on P3; 25.00
    // x 240/60.
    return charged(
        run,
        charge(Rule.CHANGE, 10_200_000),
        charge(Rule.PURGE, 200_000),
        charge(Rule.START_UP, 66_600),
        charge(Rule.PRESS_RATE, 4_400_000),
        charge(Rule.KEPT_PRESS, 10_000_000));
  }

  /**
   * Clearance alone: 30 min, no first article, no start-up. Setter until 17:39. Run 400: 269 on
   * Monday, 131 on Tuesday.
   */
  private static Run r7() {
    Change change =
        change("M3 - PP WH > M3 - PP WH", "Mon 17:01 - Mon 17:31", 30, 0, FOOD_CLEARANCE);
    Run run = run("R7 D/1 P2 M3 3", change, "Mon 17:31", "Tue 08:11");
    run = waits(run, wait(Cause.SETTER, "", "Mon 16:59", "Mon 17:01"));
    return charged(run, charge(Rule.CHANGE, 2_250_000));
  }

  /**
   * On the empty press 36; white to black is darker: 10; first article 10: 56 min. Purge 1.5 x 80
   * g. Run 180 + 9: 184 until the break, 5 after it. With R4 and R7 it takes all 2 operators until
   * 08:11.
   */
  private static Run r8() {
    Change change =
        change("- - PP WH > M1 T8 PP BK", "Tue 06:00 - Tue 06:56", 56, 120, MOLD, COLOUR);
    Run run = run("R8 E/1 P3 M1 1", change, "Tue 06:56", "Tue 10:35");
    run =
        waits(
            run,
            wait(Cause.MOLD, "M1", "Mon 06:00", "Mon 13:51"),
            wait(Cause.SHIFT, "", "Mon 14:00", "Tue 06:00"));
    // 56 x 0.75; 2.00 x 0.120; the weight of start-up shots is not known.
    return charged(run, charge(Rule.CHANGE, 4_200_000), charge(Rule.PURGE, 24_000));
  }

  /**
   * Green has no lightness: 40; first article 10: 50 min. Purge 4 x 80 g. M1 is away from Tuesday
   * noon. Run 100 + 4. Ready an hour later, Thu 09:34; due Tue 15:00: 24 h and 18 h 34 are 2554 min
   * late, with the cut-offs of Tuesday and Wednesday.
   */
  private static Run r9() {
    Change change = change("M1 T8 PP BK > M1 T8 PP GN", "Thu 06:00 - Thu 06:50", 50, 320, COLOUR);
    Run run = run("R9 F/1 P3 M1 2", change, "Thu 06:50", "Thu 08:34");
    run = Edited.set(run, "readyMin", at("Thu 09:34"));
    run = waits(run, wait(Cause.MOLD_AWAY, "M1", "Tue 10:35", "Thu 06:00"));
    // 1.5 x (2 x 100.00 + 60.00 x 2554/1440), 60.00 x 2554/1440 = 106.41666, rounded down; 50 x
    // 0.75; 2.00 x 0.320; 2.00 x 0.077.
    return charged(
        run,
        charge(Rule.LATE, 45_962_499),
        charge(Rule.CHANGE, 3_750_000),
        charge(Rule.PURGE, 64_000),
        charge(Rule.START_UP, 15_400));
  }

  /**
   * Each 30 min before its run. Of I1 lots L1 (100, expires) and L2 (80) are free, L3 (60) is for
   * order B, 300 come on Monday 15:00.
   */
  private static List<Pull> pulls() {
    int receipt = at("Mon 15:00");
    return List.of(
        pull("R2 P1 I1 L1", "Mon 08:53", 0, 80), // 70 + 10, leaves 20
        pull("R6 P2 I1 L1", "Mon 12:23", 0, 20), // 45 + 5
        pull("R6 P2 I1 L2", "Mon 12:23", 0, 30), // leaves 50
        pull("R3 P1 I1 L3", "Mon 15:48", 0, 60), // reserved
        pull("R3 P1 I1 L2", "Mon 15:48", 0, 46), // 40 + 6, leaves 4
        // 100, a clearance has no start-up; food-grade, so not 4 of L2 and the rest of another
        pull("R7 P2 I1 -", "Mon 17:01", receipt, 100), // leaves 200
        pull("R4 P1 I1 -", "Mon 21:00", receipt, 120), // no change, no start-up
        pull("R8 P3 I2 K1", "Tue 06:26", 0, 155), // 150 + 5, leaves 45
        pull("R9 P3 I2 K1", "Thu 06:20", 0, 43)); // 40 + 3
  }

  /**
   * 83 + 171 + 50 + 136 + 30 + 56 + 50 + 18 = 594 min; 480 + 480 + 700 + 1000 + 120 + 320 = 3100 g.
   */
  private static Figures figures() {
    return new Figures(
        9,
        2,
        1,
        2554,
        8,
        594,
        3100,
        Map.of(
            Rule.LATE, 45_962_499L,
            Rule.UNPLACED, 53_750_000L,
            Rule.CHANGE, 44_550_000L,
            Rule.PURGE, 786_000L,
            Rule.START_UP, 292_000L,
            Rule.PRESS_RATE, 5_600_000L,
            Rule.KEPT_PRESS, 13_750_000L));
  }

  /** A run by number, job, press, mold and place, ready as soon as it ends. */
  static Run run(String ids, Change change, String start, String end) {
    String[] id = ids.split(" ");
    return new Run(
        id[0],
        id[1],
        id[2],
        id[3],
        Integer.parseInt(id[4]),
        change,
        at(start),
        at(end),
        at(end),
        List.of(),
        List.of());
  }

  static Setup setup(String moldToolingResinColour) {
    String[] ids = moldToolingResinColour.replace("-", "").split(" ", -1);
    return new Setup(ids[0], ids[1], ids[2], ids[3]);
  }

  static Change none(String at, Setup setup) {
    return new Change(setup, setup, List.of(), at(at), at(at), 0, 0);
  }

  static Change change(String setups, String span, int minutes, int purgeG, ChangeKind... kinds) {
    String[] setup = setups.split(" > ");
    String[] times = span.split(" - ");
    return new Change(
        setup(setup[0]),
        setup(setup[1]),
        List.of(kinds),
        at(times[0]),
        at(times[1]),
        minutes,
        purgeG);
  }

  static Run waits(Run run, Wait... waits) {
    return Edited.set(run, "waits", List.of(waits));
  }

  static Wait wait(Cause cause, String what, String from, String to) {
    return new Wait(cause, what, at(from), at(to));
  }

  static Run charged(Run run, Charge... charges) {
    return Edited.set(run, "charges", List.of(charges));
  }

  static Charge charge(Rule rule, long amount) {
    return new Charge(rule, amount, "by hand");
  }

  /** A pull by run, press, insert and lot. */
  private static Pull pull(String ids, String needBy, int receiptMin, int pieces) {
    String[] id = ids.split(" ");
    String lot = id[3].replace("-", "");
    String bin = lot.isEmpty() ? "" : "bin " + lot;
    return new Pull(id[0], id[1], at(needBy), id[2], lot, bin, receiptMin, pieces);
  }
}
