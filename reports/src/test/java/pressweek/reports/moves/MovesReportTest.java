package pressweek.reports.moves;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Wait;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Listing;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

/**
 * What moved between plans put together by hand; 4711/1 and 4712/1 on Monday from 08:00 to 12:00.
 */
final class MovesReportTest {
  private static final String MONDAY = "2026-11-30T";
  private static final String TUESDAY = "2026-12-01T";
  private static final String EIGHT = MONDAY + "08:00";
  private static final String NOON = MONDAY + "12:00";

  private static SmallPlan first() {
    return new SmallPlan()
        .job("4711", "V1", TUESDAY + "10:00")
        .run("R1", "4711", "V1", EIGHT, NOON)
        .job("4712", "V2", TUESDAY + "10:00");
  }

  private static SmallPlan two() {
    return first().run("R2", "4712", "V2", EIGHT, NOON).pull("R2", "V2", EIGHT, "S0825");
  }

  private static SmallPlan second(String press, String from, String to) {
    return first().run("R2", "4712", press, from, to);
  }

  private static FloorEvent event(EventKind kind, String what, String from, String to) {
    return new FloorEvent(
        new At("events.csv", 2), kind, what, SampleWeek.at(from), SampleWeek.at(to), 1, "oil");
  }

  private static Moves moves(Plan now, FloorEvent... events) {
    return new Moves(two().plan(), two().plan(), now, List.of(events), List.of(), List.of());
  }

  private static Move only(SmallPlan now, FloorEvent... events) {
    List<Move> moves = MovesReport.of(moves(now.plan(), events));
    assertThat(moves).hasSize(1);
    return moves.get(0);
  }

  @Test
  void nothingMoved() {
    assertThat(MovesReport.of(moves(two().plan()))).isEmpty();
    assertThat(MovesReport.stayed(moves(two().plan()))).isEqualTo(2);
  }

  /** The plant's tolerance is 60 minutes. */
  @ParameterizedTest
  @CsvSource({"09:00, 0", "09:01, 1", "07:00, 0", "06:59, 1"})
  void aStartBeyondTheToleranceIsAMove(String start, int moved) {
    assertThat(MovesReport.of(moves(second("V2", MONDAY + start, NOON).plan()))).hasSize(moved);
  }

  @Test
  void whatIsRunningCannotHaveMoved() {
    SmallPlan now = second("V2", MONDAY + "10:00", MONDAY + "14:00");
    now.states.add(new PressState("V2", new Setup("M1", "", "PP", "BLK"), false, "4712/1"));
    assertThat(MovesReport.of(moves(now.plan()))).isEmpty();
  }

  @Test
  void anEventThatTookItsPressIsTheReason() {
    Move move =
        only(
            second("V1", NOON, MONDAY + "16:00"),
            event(EventKind.PRESS_AWAY, "V2", MONDAY + "09:00", TUESDAY + "06:00"));
    assertThat(move.kind()).isEqualTo(MoveKind.MOVED);
    assertThat(move.reason()).isEqualTo("press-away V2 (oil), events.csv:2");
  }

  @Test
  void anEventThatTookItsMoldOrItsLotIsTheReason() {
    SmallPlan later = second("V2", TUESDAY + "08:00", TUESDAY + "12:00");
    assertThat(only(later, event(EventKind.MOLD_AWAY, "M1", EIGHT, NOON)).reason())
        .startsWith("mold-away M1");
    assertThat(only(later, event(EventKind.LOT_HELD, "L1", EIGHT, EIGHT)).reason())
        .startsWith("lot-held L1");
  }

  @Test
  void anEventElsewhereIsNotTheReason() {
    Move move =
        only(
            second("V2", TUESDAY + "08:00", TUESDAY + "12:00"),
            event(EventKind.PRESS_AWAY, "V1", EIGHT, NOON));
    assertThat(move.reason()).isEqualTo("it costs less there than in its old place");
  }

  @Test
  void aRunThatTookItsPlaceIsTheReason() {
    SmallPlan now =
        new SmallPlan()
            .job("4711", "V1", TUESDAY + "10:00")
            .run("R1", "4711", "V1", EIGHT, NOON)
            .job("9", "V2", TUESDAY + "10:00")
            .run("R3", "9", "V2", EIGHT, MONDAY + "10:00")
            .job("4712", "V2", TUESDAY + "10:00")
            .run("R2", "4712", "V2", MONDAY + "10:00", MONDAY + "14:00");
    List<Move> rows = MovesReport.of(moves(now.plan(), event(EventKind.RUSH, "9/1", EIGHT, EIGHT)));
    assertThat(rows).extracting(Move::kind).containsExactly(MoveKind.NEW, MoveKind.MOVED);
    assertThat(rows.get(0).reason()).isEqualTo("rush 9/1 (oil), events.csv:2");
    assertThat(rows.get(1).reason()).isEqualTo("its place on V2 is taken by 9/1");
  }

  @ParameterizedTest
  @CsvSource({
    "SETTER, '', PERSON_AWAY, setter, 'no setter free for 2 h, person-away setter (oil), events.csv:2'",
    "SETTER, '', PERSON_AWAY, operator, 'no setter free for 2 h'",
    "OPERATOR, '', PERSON_AWAY, operator, 'no operator free for 2 h, person-away operator (oil), events.csv:2'",
    "MOLD, M1, RUSH, 9/1, 'mold elsewhere (M1) for 2 h'",
    "INSERTS, I9, LOT_HELD, L7, 'not in the house (I9) for 2 h, lot-held L7 (oil), events.csv:2'"
  })
  void elseWhatItWaitsForIsTheReason(
      Cause cause, String what, EventKind kind, String thing, String said) {
    Wait wait = new Wait(cause, what, SampleWeek.at(EIGHT), SampleWeek.at(MONDAY + "10:00"));
    SmallPlan now =
        second("V2", MONDAY + "10:00", MONDAY + "14:00").because(List.of(wait), List.of());
    assertThat(only(now, event(kind, thing, EIGHT, EIGHT)).reason()).isEqualTo(said);
  }

  @Test
  void thePriceIsThatOfTheLedger() {
    SmallPlan now =
        second("V2", MONDAY + "10:00", MONDAY + "14:00")
            .because(List.of(), List.of(new Charge(Rule.MOVED, 1_500_000, "")));
    assertThat(only(now).cost()).isEqualTo(1_500_000);
    Listing list = MovesList.of(moves(now.plan()));
    List<Cell> row = list.rows().get(0);
    assertThat(row.get(list.place("cost")))
        .isEqualTo(new Cell.Number(new java.math.BigDecimal("15")));
    assertThat(row.get(list.place("later_min")))
        .isEqualTo(new Cell.Number(new java.math.BigDecimal("120")));
    assertThat(row.get(list.place("order"))).isEqualTo(new Cell.Text("4712"));
    assertThat(row.get(list.place("line"))).isEqualTo(new Cell.Text("1"));
  }

  @Test
  void linesWithoutARunAreNamed() {
    SmallPlan now = first();
    now.unplaced.add(new Unplaced("4712", "1", "ITEM", 5, "on hold: x", "lift it"));
    Moves moves =
        new Moves(
            two().plan(),
            two().plan(),
            now.plan(),
            List.of(),
            List.of(
                new Ended("4713/1", Ended.How.DROPPED, "events.csv:3: dropped 4713/1"),
                new Ended("4714/1", Ended.How.DONE, "by the plan"),
                new Ended("4715/1", Ended.How.FINISHED, "events.csv:4: finished 4715/1")),
            List.of("mind this"));
    assertThat(MovesReport.of(moves))
        .extracting(Move::kind, Move::line)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(MoveKind.UNPLACED, "4712/1"),
            org.assertj.core.groups.Tuple.tuple(MoveKind.DROPPED, "4713/1"),
            org.assertj.core.groups.Tuple.tuple(MoveKind.FINISHED, "4715/1"));
    assertThat(MovesText.of(moves, List.of()))
        .contains("1 run: 1 stay, 0 moved, 0 new; 1 unplaced, 1 dropped, 1 finished, 1 done")
        .contains("mind this");
  }

  @Test
  void whatIsLateNowAndWasNotIsNamed() {
    SmallPlan now = second("V2", TUESDAY + "08:00", TUESDAY + "12:00");
    assertThat(MovesReport.newlyLate(moves(now.plan())))
        .singleElement()
        .satisfies(r -> assertThat(r.job()).isEqualTo("4712/1"));
    String text = MovesText.of(moves(now.plan()), List.of("a rule is broken"));
    assertThat(text)
        .contains("Late now that was not")
        .contains("4712/1 on V2: ready Tue 12:00, 2 h late")
        .contains("THIS PLAN BREAKS HARD RULES");
    assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
  }
}
