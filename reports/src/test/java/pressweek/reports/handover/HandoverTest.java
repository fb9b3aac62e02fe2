package pressweek.reports.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class HandoverTest {
  private static final String MONDAY = "2026-11-30T";
  private static final String TUESDAY = "2026-12-01T";

  /** Lines 4711/1 on V1 and 4712/1 on V2, each on Monday from 08:00 to 12:00 and due on Tuesday. */
  private static SmallPlan two() {
    return new SmallPlan()
        .job("4711", "V1", TUESDAY + "10:00")
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
        .pull("R1", "V1", MONDAY + "07:30", "S0825")
        .job("4712", "V2", TUESDAY + "10:00")
        .run("R2", "4712", "V2", MONDAY + "08:00", MONDAY + "12:00");
  }

  /** The same with line 4712/1 as given. */
  private static SmallPlan withSecond(String press, String from, String to) {
    return new SmallPlan()
        .job("4711", "V1", TUESDAY + "10:00")
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
        .pull("R1", "V1", MONDAY + "07:30", "S0825")
        .job("4712", press, TUESDAY + "10:00")
        .run("R2", "4712", press, from, to);
  }

  private static List<HandoverRow> rows(SmallPlan before, SmallPlan now) {
    return Handover.between(before.plan(), now.plan()).rows();
  }

  private static HandoverRow only(SmallPlan before, SmallPlan now) {
    List<HandoverRow> rows = rows(before, now);
    assertThat(rows).hasSize(1);
    return rows.get(0);
  }

  @Test
  void nothingChangedIsNoRowAndIsSaid() {
    Handover handover = Handover.between(two().plan(), two().plan());
    assertThat(handover.rows()).isEmpty();
    assertThat(handover.whenEmpty())
        .isEqualTo("Nothing has changed for the floor since plan 2026-W49/3.");
    assertThat(Handover.none().whenEmpty()).isEqualTo("There is no earlier plan to compare with.");
  }

  @Test
  void runOnAnotherPressIsSaidWithBothPresses() {
    HandoverRow row = only(two(), withSecond("V1", MONDAY + "08:00", MONDAY + "12:00"));
    assertThat(row.what()).containsExactly(Difference.PRESS);
    assertThat(row.order()).isEqualTo("4712");
    assertThat(row.before()).hasValueSatisfying(s -> assertThat(s.run().press()).isEqualTo("V2"));
    assertThat(row.now()).hasValueSatisfying(s -> assertThat(s.run().press()).isEqualTo("V1"));
  }

  /** The plant's tolerance is 60 minutes. */
  @ParameterizedTest
  @CsvSource({"08:59, 0", "09:00, 0", "09:01, 1", "07:00, 0", "06:59, 1"})
  void startHasMovedBeyondTheToleranceOnly(String from, int rows) {
    assertThat(rows(two(), withSecond("V2", MONDAY + from, MONDAY + "12:00"))).hasSize(rows);
  }

  @Test
  void droppedRunIsGone() {
    SmallPlan now =
        new SmallPlan()
            .job("4711", "V1", TUESDAY + "10:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
            .pull("R1", "V1", MONDAY + "07:30", "S0825");
    HandoverRow row = only(two(), now);
    assertThat(row.what()).containsExactly(Difference.GONE);
    assertThat(row.now()).isEmpty();
    assertThat(row.press()).isEqualTo("V2");
  }

  @Test
  void droppedRunOfALineThatFoundNoPlaceSaysWhy() {
    SmallPlan now =
        new SmallPlan()
            .job("4711", "V1", TUESDAY + "10:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
            .pull("R1", "V1", MONDAY + "07:30", "S0825");
    now.unplaced.add(new Unplaced("4712", "1", "LV90", 500, "V2 is away", "bring it back"));
    HandoverRow row = only(two(), now);
    assertThat(row.what()).containsExactly(Difference.GONE, Difference.NEWLY_UNPLACED);
    assertThat(row.reason()).isEqualTo("V2 is away");
  }

  @Test
  void addedRunAndLineThatIsUnplacedFromTheStart() {
    SmallPlan now =
        two()
            .job("4713", "V1", TUESDAY + "10:00")
            .run("R3", "4713", "V1", MONDAY + "12:00", MONDAY + "13:00");
    now.unplaced.add(new Unplaced("4714", "1", "LV91", 10, "no mold makes it", "add one"));
    List<HandoverRow> rows = rows(two(), now);
    assertThat(rows)
        .extracting(HandoverRow::what)
        .containsExactly(List.of(Difference.ADDED), List.of(Difference.NEWLY_UNPLACED));
    assertThat(rows).extracting(HandoverRow::order).containsExactly("4713", "4714");
  }

  @Test
  void lineThatWasUnplacedBeforeIsNotSaidAgain() {
    SmallPlan before = two();
    SmallPlan now = two();
    before.unplaced.add(new Unplaced("4714", "1", "LV91", 10, "no mold makes it", "add one"));
    now.unplaced.add(new Unplaced("4714", "1", "LV91", 10, "no mold makes it", "add one"));
    assertThat(rows(before, now)).isEmpty();
  }

  @Test
  void runThatEndedBeforeTheNewPlanStartsIsPast() {
    SmallPlan before =
        two()
            .job("4709", "V1", MONDAY + "10:00")
            .run("R9", "4709", "V1", MONDAY + "05:00", MONDAY + "06:00")
            .job("4710", "V1", MONDAY + "10:00")
            .run("R10", "4710", "V1", MONDAY + "05:00", MONDAY + "06:01");
    assertThat(rows(before, two())).extracting(HandoverRow::order).containsExactly("4710");
  }

  @Test
  void otherPiecesAndOtherLotsAreSaid() {
    SmallPlan now = new SmallPlan();
    now.job("4711", choice(400))
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
        .pull("R1", "V1", MONDAY + "07:30", "S5616")
        .job("4712", "V2", TUESDAY + "10:00")
        .run("R2", "4712", "V2", MONDAY + "08:00", MONDAY + "12:00");
    HandoverRow row = only(two(), now);
    assertThat(row.what()).containsExactly(Difference.QUANTITY, Difference.INSERTS);
    assertThat(row.before().orElseThrow().inserts()).containsExactly("S0825 540 from C1-2, lot L1");
    assertThat(row.now().orElseThrow().inserts()).containsExactly("S5616 540 from C1-2, lot L1");
  }

  private static SampleJobs.Choice choice(int pieces) {
    return new SampleJobs.Choice(
        "V1", "M1", "PP", "BLK", "S0825", pieces, SampleWeek.at(TUESDAY + "10:00"));
  }

  @Test
  void runUnderWayHasMovedOnlyWhenItsPressHas() {
    SmallPlan now = new SmallPlan();
    now.job("4711", choice(100))
        .run("R1", "4711", "V1", MONDAY + "12:00", MONDAY + "13:00")
        .job("4712", "V2", TUESDAY + "10:00")
        .run("R2", "4712", "V2", MONDAY + "08:00", MONDAY + "12:00");
    assertThat(rows(two(), now)).hasSize(1);
    now.states.add(new PressState("V1", new Setup("M1", "", "PP", "BLK"), false, "4711/1"));
    assertThat(rows(two(), now)).isEmpty();
  }

  @Test
  void latenessThatComesAndGoesIsSaid() {
    SmallPlan late = withSecond("V2", MONDAY + "08:30", TUESDAY + "10:01");
    assertThat(only(two(), late).what()).containsExactly(Difference.NEWLY_LATE);
    assertThat(only(late, two()).what()).containsExactly(Difference.NO_LONGER_LATE);
  }

  @Test
  void runsOfOneLineAreMatchedByTheirPlaceInTime() {
    SmallPlan before = two().run("R3", "4711", "V2", MONDAY + "14:00", MONDAY + "15:00");
    SmallPlan now = two().run("R3", "4711", "V2", MONDAY + "18:00", MONDAY + "19:00");
    HandoverRow row = only(before, now);
    assertThat(row.what()).containsExactly(Difference.START);
    assertThat(row.runId()).isEqualTo("R3");
  }
}
