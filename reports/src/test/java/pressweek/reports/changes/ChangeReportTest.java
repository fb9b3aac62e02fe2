package pressweek.reports.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class ChangeReportTest {
  private static final String MONDAY = "2026-11-30T";
  private static final Setup BLACK = new Setup("M1", "", "PP", "BLK");
  private static final Setup RED = new Setup("M1", "", "PP", "SGR");
  private static final Setup OTHER = new Setup("M2", "", "PP", "BLK");

  private static SmallPlan changed(List<ChangeKind> kinds, Setup from, Setup to) {
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "22:00")
        .run(
            "R1",
            "4711/1",
            "V1",
            SmallPlan.change(kinds, from, to, MONDAY + "08:00", MONDAY + "08:40"),
            List.of(SampleWeek.at(MONDAY + "08:40"), SampleWeek.at(MONDAY + "12:00")));
  }

  private static List<ChangeRow> rows(SmallPlan plan) {
    return ChangeReport.rows(PlanBook.of(plan.plan()));
  }

  @Test
  void colourChangeLeavesMoldAndResin() {
    ChangeRow row = rows(changed(List.of(ChangeKind.COLOUR), BLACK, RED)).get(0);
    assertThat(row.kinds()).containsExactly("colour");
    assertThat(row.moldOut()).isEmpty();
    assertThat(row.moldIn()).isEmpty();
    assertThat(row.materialOut()).isEqualTo("PP, BLK");
    assertThat(row.materialIn()).isEqualTo("PP, SGR");
    assertThat(row.stays()).containsExactly("mold M1", "resin PP");
    assertThat(row.minutes()).isEqualTo(40);
    assertThat(row.run()).isEqualTo("R1");
    assertThat(row.shift()).map(ShiftSpan::id).hasValue("2026-11-30 early");
  }

  @Test
  void moldChangeNamesBothMolds() {
    ChangeRow row =
        rows(changed(List.of(ChangeKind.MOLD, ChangeKind.FOOD_CLEARANCE), BLACK, OTHER)).get(0);
    assertThat(row.kinds()).containsExactly("mold", "food clearance");
    assertThat(row.moldOut()).isEqualTo("M1");
    assertThat(row.moldIn()).isEqualTo("M2");
    assertThat(row.materialOut()).isEmpty();
    assertThat(row.stays()).containsExactly("resin PP", "colour BLK");
  }

  @Test
  void toolingChangeNamesBothSets() {
    Setup metric = new Setup("M1", "PIN-M8", "PP", "BLK");
    Setup inch = new Setup("M1", "PIN-U516", "PP", "BLK");
    ChangeRow row = rows(changed(List.of(ChangeKind.TOOLING), metric, inch)).get(0);
    assertThat(row.kinds()).containsExactly("tooling");
    assertThat(row.toolingOut()).isEqualTo("PIN-M8");
    assertThat(row.toolingIn()).isEqualTo("PIN-U516");
    assertThat(row.stays()).containsExactly("mold M1", "resin PP", "colour BLK");
    ChangeRow kept = rows(changed(List.of(ChangeKind.COLOUR), metric, metric)).get(0);
    assertThat(kept.toolingOut()).isEmpty();
    assertThat(kept.toolingIn()).isEmpty();
  }

  @Test
  void runWithoutAChangeIsNoRow() {
    assertThat(rows(changed(List.of(), BLACK, BLACK))).isEmpty();
  }

  @Test
  void dismountIsARowInOrderOfTime() {
    SmallPlan plan = changed(List.of(ChangeKind.COLOUR), BLACK, RED);
    int six = SampleWeek.at(MONDAY + "06:00");
    plan.dismounts.add(new Dismount("V2", "M7", six, six + 24, 24, 0));
    List<ChangeRow> rows = rows(plan);
    assertThat(rows).extracting(ChangeRow::press).containsExactly("V2", "V1");
    assertThat(rows.get(0).kinds()).containsExactly("dismount");
    assertThat(rows.get(0).moldOut()).isEqualTo("M7");
    assertThat(rows.get(0).moldIn()).isEmpty();
    assertThat(rows.get(0).stays()).isEmpty();
  }

  @Test
  void changeOutsideAllShiftsHasNone() {
    SmallPlan plan = new SmallPlan();
    int night = SampleWeek.at("2026-12-01T02:00");
    plan.dismounts.add(new Dismount("V2", "M7", night, night + 24, 24, 0));
    assertThat(rows(plan).get(0).shift()).isEmpty();
  }
}
