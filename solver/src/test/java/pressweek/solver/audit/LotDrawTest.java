package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.lot;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.Parts.take;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;

/**
 * Two runs that need 50 pieces of I1 at the same time, Mon 05:30: 4711/1 on P1 and 4711/2 on P2.
 */
class LotDrawTest {
  private static List<String> messages(int reserved, Stock stock, String... pulls) {
    Problem problem =
        TinyWeek.problem(
            job(
                "4711/1",
                "PP BK",
                option(
                    "P1 M1 T8",
                    pace(120, 5, 0),
                    making(0, take("I1", 50 - reserved, 0, reserved)))),
            job(
                "4711/2",
                "ABS RD",
                option(
                    "P2 M4", pace(90, 5, 0), making(0, take("I1", 50 - reserved, 0, reserved)))));
    problem = Edited.set(problem, "materials.stock", stock);
    Run first =
        WeekPlan.run(
            "R1 4711/1 P1 M1 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 06:00",
            "Mon 08:00");
    Run second =
        WeekPlan.run(
            "R2 4711/2 P2 M4 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M4 - ABS RD")),
            "Mon 06:00",
            "Mon 07:30");
    Pull[] all = Arrays.stream(pulls).map(LotDrawTest::pull).toArray(Pull[]::new);
    return TinyWeek.messages(TinyWeek.plan(problem, List.of(first, second), all));
  }

  /**
   * A pull by number of the run, lot (or {@code -} for the receipt of Sunday's last minutes) and
   * pieces.
   */
  private static Pull pull(String text) {
    String[] part = text.split(" ");
    boolean receipt = part[1].equals("-");
    return new Pull(
        "R" + part[0],
        "P" + part[0],
        at("Mon 05:30"),
        "I1",
        receipt ? "" : part[1],
        receipt ? "" : "bin " + part[1],
        receipt ? at("Mon 05:00") : 0,
        Integer.parseInt(part[2]));
  }

  private static Stock stock(Lot... lots) {
    Receipt receipt = new Receipt("I1", 20, at("Mon 04:00"), at("Mon 05:00"));
    return new Stock(true, List.of(lots), List.of(receipt, receipt));
  }

  @Test
  void runsAtTheSameTimeMayShareEitherWay() {
    Stock stock = stock(lot("I1", "L1", 60, "", at("Sat 06:00")), lot("I1", "L2", 90, ""));
    assertThat(messages(0, stock, "1 L1 50", "2 L1 10", "2 L2 40")).isEmpty();
    assertThat(messages(0, stock, "1 L1 10", "1 L2 40", "2 L1 50")).isEmpty();
    assertThat(messages(0, stock, "1 L1 10", "1 L2 40", "2 L1 49", "2 L2 1"))
        .containsExactly(
            "run R1 (4711/1) on P1 pulls insert I1 from lot L2, but lot L1 comes first and has 1"
                + " left");
  }

  @Test
  void receiptsOfTheSameTimeAreOne() {
    Stock stock = stock(lot("I1", "L1", 60, ""));
    assertThat(messages(0, stock, "1 L1 50", "2 L1 10", "2 - 40")).isEmpty();
    Stock less = stock(lot("I1", "L1", 59, ""));
    assertThat(messages(0, less, "1 L1 50", "2 L1 9", "2 - 41"))
        .containsExactly(
            "run R2 (4711/2) on P2 needs 50 of insert I1 by Mon 2026-11-30 05:30, only 49 are free"
                + " then",
            "run R2 (4711/2) on P2 pulls 41 of insert I1 from the receipt of Mon 2026-11-30 05:00,"
                + " which has 1 less",
            "over the week 1 more of I1 are pulled from the receipt of Mon 2026-11-30 05:00 than it"
                + " holds");
  }

  @Test
  void lotsWithTheSameExpiryGoByTimeReceivedThenByNumber() {
    Lot late = Edited.set(lot("I1", "L1", 50, ""), "receivedMin", 2);
    Lot early = Edited.set(lot("I1", "L3", 50, ""), "receivedMin", 1);
    Lot sameTime = Edited.set(lot("I1", "L2", 50, ""), "receivedMin", 1);
    Stock stock = stock(late, early, sameTime);
    assertThat(messages(0, stock, "1 L2 50", "2 L3 50")).isEmpty();
    assertThat(messages(0, stock, "1 L1 50", "2 L2 50"))
        .containsExactly(
            "run R1 (4711/1) on P1 pulls insert I1 from lot L1, but lot L3 comes first and has 50"
                + " left");
  }

  @Test
  void lotsReservedForTheLineGoBeforeThoseForItsOrder() {
    Stock stock =
        stock(lot("I1", "A", 40, "4711"), lot("I1", "B", 20, "4711/1"), lot("I1", "C", 100, ""));
    assertThat(messages(30, stock, "1 B 20", "1 A 10", "1 C 20", "2 A 30", "2 C 20")).isEmpty();
    assertThat(messages(30, stock, "1 B 19", "1 A 11", "1 C 20", "2 A 29", "2 C 21"))
        .containsExactly(
            "run R2 (4711/2) on P2 leaves 1 of insert I1 in lots reserved for it",
            "run R1 (4711/1) on P1 pulls insert I1 from lot A, but lot B comes first and has 1"
                + " left");
    assertThat(messages(30, stock, "1 B 20", "1 A 10", "1 C 20", "2 B 1", "2 A 29", "2 C 20"))
        .contains(
            "run R2 (4711/2) on P2 pulls 1 of insert I1 from lot B, which is reserved for 4711/1");
  }

  @Test
  void aLotMayBeReservedInPart() {
    Stock stock = stock(lot("I1", "A", 40, ""), lot("I1", "A", 60, "4711"));
    assertThat(messages(30, stock, "1 A 50", "2 A 50")).isEmpty();
    assertThat(messages(25, stock, "1 A 50", "2 A 50"))
        .anyMatch(message -> message.contains("pulls 50 of insert I1 from lot A"));
  }
}
