package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;

/**
 * Set T8 is in M1 on P1, which runs A/1 from 06:00 to 08:00. C/1 needs T8 in M3 on P3, where a
 * tooling exchange takes 20 min and 10 for the first article.
 */
class ToolingSetTest {
  private static final Job A1 = job("A/1", "PP BK", option("P1 M1 T8", pace(120, 0, 0), making(0)));
  private static final Job A2 = job("A/2", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0)));
  private static final Job B1 = job("B/1", "ABS RD", option("P2 M4 T8", pace(30, 0, 0), making(0)));
  private static final Job C1 = job("C/1", "PP WH", option("P3 M3 T8", pace(60, 0, 0), making(0)));
  private static final Job C2 = job("C/2", "PP WH", option("P3 M3", pace(60, 0, 0), making(0)));

  private static Problem problem(int sets, Job... jobs) {
    return Arranged.set(TinyWeek.problem(jobs), "things", List.of(new CountedThing("T8", sets)));
  }

  private static Run none(String ids, String setup, String start, String end) {
    return WeekPlan.run(ids, WeekPlan.none(start, WeekPlan.setup(setup)), start, end);
  }

  private static Run fit(String ids, String setups, String change, String start, String end) {
    return WeekPlan.run(
        ids,
        WeekPlan.change(setups, change + " - " + start, 30, 0, ChangeKind.TOOLING),
        start,
        end);
  }

  private static final Run FIRST = none("R1 A/1 P1 M1 1", "M1 T8 PP BK", "Mon 06:00", "Mon 08:00");

  private static Run onP3(String change, String start, String end) {
    return fit("R3 C/1 P3 M3 1", "M3 - PP WH > M3 T8 PP WH", change, start, end);
  }

  @Test
  void itIsTakenOutOfAMoldThatDoesNotRun() {
    Run taker = onP3("Mon 08:00", "Mon 08:30", "Mon 09:30");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1, A1, C1), List.of(FIRST, taker)))).isEmpty();
  }

  @Test
  void whileTheMoldRunsItIsNot() {
    Run early = onP3("Mon 07:59", "Mon 08:29", "Mon 09:29");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1, A1, C1), List.of(FIRST, early))))
        .containsExactly(
            "COUNTED run R3 (C/1) on P3 needs tooling set T8 from Mon 2026-11-30 07:59; all there"
                + " are stay in use then, on P1");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(2, A1, C1), List.of(FIRST, early)))).isEmpty();
    Problem uncounted = Arranged.set(problem(1, A1, C1), "things", List.of());
    assertThat(TinyWeek.told(TinyWeek.plan(uncounted, List.of(FIRST, early)))).isEmpty();
  }

  @Test
  void theLosersNextRunFitsOneAgain() {
    Run taker = onP3("Mon 08:00", "Mon 08:30", "Mon 09:30");
    Run simple = none("R2 A/2 P1 M1 2", "M1 T8 PP BK", "Mon 11:00", "Mon 12:00");
    Problem problem = problem(1, A1, A2, C1);
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, simple, taker))))
        .contains(
            "CHANGE_TIME run R2 (A/2) on P1 changes from mold M1, tooling T8, resin PP, colour BK;"
                + " the press holds mold M1, tooling none, resin PP, colour BK",
            "CHANGE_TIME run R2 (A/2) on P1 has a change of []; expected [TOOLING]");
    Run back =
        fit("R2 A/2 P1 M1 2", "M1 - PP BK > M1 T8 PP BK", "Mon 09:30", "Mon 10:00", "Mon 11:30");
    back = Edited.set(back, "startMin", at("Mon 10:30"));
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, back, taker)))).isEmpty();
    Run tooSoon =
        fit("R2 A/2 P1 M1 2", "M1 - PP BK > M1 T8 PP BK", "Mon 09:29", "Mon 09:59", "Mon 11:29");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, tooSoon, taker))))
        .containsExactly(
            "COUNTED run R2 (A/2) on P1 needs tooling set T8 from Mon 2026-11-30 09:29; all there"
                + " are stay in use then, on P3");
    // A run that follows without a gap keeps the set.
    Run next = none("R2 A/2 P1 M1 2", "M1 T8 PP BK", "Mon 08:00", "Mon 09:00");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, next, taker))))
        .containsExactly(
            "COUNTED run R3 (C/1) on P3 needs tooling set T8 from Mon 2026-11-30 08:00; all there"
                + " are stay in use then, on P1");
  }

  /** P1 and P2 hold the two sets. The one whose last run ended first loses it. */
  private static Plan two(String secondStart, String secondEnd, Run... rest) {
    Problem problem = problem(2, A1, A2, B1, C1);
    problem =
        Edited.set(
            problem,
            "floor.states[P2]",
            new PressState("P2", new Setup("M4", "T8", "ABS", "RD"), false, ""));
    List<Run> runs = new ArrayList<>(List.of(rest));
    runs.add(FIRST);
    runs.add(none("R4 B/1 P2 M4 1", "M4 T8 ABS RD", secondStart, secondEnd));
    runs.add(onP3("Mon 08:30", "Mon 09:00", "Mon 10:00"));
    return TinyWeek.plan(problem, runs);
  }

  @Test
  void thePressThatStoodLongestLosesIt() {
    Run same = none("R2 A/2 P1 M1 2", "M1 T8 PP BK", "Mon 09:00", "Mon 10:00");
    Run exchange =
        fit("R2 A/2 P1 M1 2", "M1 - PP BK > M1 T8 PP BK", "Mon 10:30", "Mon 11:00", "Mon 12:00");
    // P2 ended at 07:59, a minute before P1: P1 keeps its set.
    assertThat(TinyWeek.told(two("Mon 07:29", "Mon 07:59", same))).isEmpty();
    // They ended together: the earlier of the list, P1, loses it, and takes that of P2 at 10:30.
    assertThat(TinyWeek.told(two("Mon 07:30", "Mon 08:00", exchange))).isEmpty();
    assertThat(TinyWeek.told(two("Mon 07:30", "Mon 08:00", same)))
        .contains("CHANGE_TIME run R2 (A/2) on P1 has a change of []; expected [TOOLING]");
    // P2 has not run yet, so it stands since the start of the plan.
    assertThat(TinyWeek.told(two("Mon 09:00", "Mon 09:30", same)))
        .contains("CHANGE_TIME run R4 (B/1) on P2 has a change of []; expected [TOOLING]");
  }

  /** P1 changes from M1 with T8 to M2 without a set from 08:00 to 09:10. */
  @Test
  void itIsHeldToTheEndOfTheChangeThatExchangesIt() {
    Job away = job("A/2", "PP BK", option("P1 M2", pace(60, 0, 0), making(0)));
    Run out =
        WeekPlan.run(
            "R2 A/2 P1 M2 2",
            WeekPlan.change(
                "M1 T8 PP BK > M2 - PP BK", "Mon 08:00 - Mon 09:10", 70, 0, ChangeKind.MOLD),
            "Mon 09:10",
            "Mon 10:40");
    Problem problem = problem(1, A1, away, C1);
    Run after = onP3("Mon 09:10", "Mon 09:40", "Mon 11:10");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, out, after)))).isEmpty();
    Run during = onP3("Mon 09:09", "Mon 09:39", "Mon 11:09");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, out, during))))
        .containsExactly(
            "COUNTED run R3 (C/1) on P3 needs tooling set T8 from Mon 2026-11-30 09:09; all there"
                + " are stay in use then, on P1");
    Run sameTime = onP3("Mon 08:00", "Mon 08:30", "Mon 09:30");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(FIRST, out, sameTime))))
        .singleElement()
        .asString()
        .startsWith("COUNTED run R3 (C/1) on P3");
  }

  /** M1 is taken off P1 from 08:00 to 08:24. */
  @Test
  void itIsHeldToTheEndOfADismount() {
    Dismount off = new Dismount("P1", "M1", at("Mon 08:00"), at("Mon 08:24"), 24, 0);
    Plan good =
        TinyWeek.plan(
            problem(1, A1, C1), List.of(FIRST, onP3("Mon 08:24", "Mon 08:54", "Mon 09:54")));
    assertThat(TinyWeek.told(dismounts(good, off))).isEmpty();
    Plan bad =
        TinyWeek.plan(
            problem(1, A1, C1), List.of(FIRST, onP3("Mon 08:23", "Mon 08:53", "Mon 09:53")));
    assertThat(TinyWeek.told(dismounts(bad, off)))
        .containsExactly(
            "COUNTED run R3 (C/1) on P3 needs tooling set T8 from Mon 2026-11-30 08:23; all there"
                + " are stay in use then, on P1");
  }

  private static Plan dismounts(Plan plan, Dismount off) {
    Plan more = Edited.set(plan, "dismounts", List.of(off));
    more = Edited.set(more, "figures.changes", plan.figures().changes() + 1);
    return Edited.set(more, "figures.changeMin", plan.figures().changeMin() + off.minutes());
  }

  /** M2 on P1 takes over the set of M1. */
  @Test
  void aPressGoesOnWithItsOwn() {
    Job own = job("A/2", "PP BK", option("P1 M2 T8", pace(60, 0, 0), making(0)));
    Run run =
        WeekPlan.run(
            "R2 A/2 P1 M2 2",
            WeekPlan.change(
                "M1 T8 PP BK > M2 T8 PP BK", "Mon 08:00 - Mon 09:10", 70, 0, ChangeKind.MOLD),
            "Mon 09:10",
            "Mon 10:40");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1, A1, own), List.of(FIRST, run)))).isEmpty();
  }

  /** P3 works by day: it fits the set on Monday before 14:00 and runs on Tuesday from 06:00 on. */
  @Test
  void oneThatWaitsForItsRunIsNotTaken() {
    Run waits =
        WeekPlan.run(
            "R3 C/1 P3 M3 1",
            WeekPlan.change(
                "M3 - PP WH > M3 T8 PP WH", "Mon 13:30 - Mon 14:00", 30, 0, ChangeKind.TOOLING),
            "Tue 06:00",
            "Tue 07:00");
    Run back =
        fit("R2 A/2 P1 M1 2", "M1 - PP BK > M1 T8 PP BK", "Mon 15:00", "Mon 15:30", "Mon 16:30");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1, A1, A2, C1), List.of(FIRST, back, waits))))
        .containsExactly(
            "COUNTED run R2 (A/2) on P1 needs tooling set T8 from Mon 2026-11-30 15:00; all there"
                + " are stay in use then, on P3");
  }

  /** A/1 is running, but its press is down to 07:00: nobody takes its set meanwhile. */
  @Test
  void aRunningJobKeepsItsSet() {
    Problem problem = Edited.set(problem(1, A1, C1), "floor.states[P1].job", "A/1");
    Downtime down = new Downtime(Downtime.Kind.PRESS, "P1", 0, at("Mon 07:00"), "hose");
    problem = Edited.set(problem, "floor.downtime", List.of(down));
    Run running = none("R1 A/1 P1 M1 1", "M1 T8 PP BK", "Mon 07:00", "Mon 09:00");
    Run after = onP3("Mon 09:00", "Mon 09:30", "Mon 11:00");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(running, after)))).isEmpty();
    Run before = onP3("Mon 06:00", "Mon 06:30", "Mon 07:30");
    assertThat(TinyWeek.told(TinyWeek.plan(problem, List.of(running, before))))
        .containsExactly(
            "COUNTED run R3 (C/1) on P3 needs tooling set T8 from Mon 2026-11-30 06:00; all there"
                + " are stay in use then, on P1");
  }

  @Test
  void aRunThatNeedsNoSetIsNotAsked() {
    Run plain = none("R3 C/2 P3 M3 1", "M3 - PP WH", "Mon 06:00", "Mon 07:00");
    assertThat(TinyWeek.told(TinyWeek.plan(problem(1, A1, C2), List.of(FIRST, plain)))).isEmpty();
  }
}
