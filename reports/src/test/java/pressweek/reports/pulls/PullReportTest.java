package pressweek.reports.pulls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Job;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.sample.Stocked;
import pressweek.reports.schedule.PlanBook;

class PullReportTest {
  private static final String MONDAY = "2026-11-30T";

  private static List<PullRow> rows(SmallPlan plan) {
    return PullReport.rows(PlanBook.of(plan.plan()));
  }

  private static SmallPlan oneRun() {
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "22:00")
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00");
  }

  @Test
  void rowNamesTheOrderLineAndTheInsertInWords() {
    PullRow row = rows(oneRun().pull("R1", "V1", MONDAY + "07:30", "S0825")).get(0);
    assertThat(row.line()).hasValueSatisfying(l -> assertThat(l.id()).isEqualTo("4711/1"));
    assertThat(row.words()).isEqualTo("stud, M8x1.25, 25 mm, steel, zinc trivalent");
    assertThat(row.thread()).isEqualTo("M8x1.25");
    assertThat(row.shiftId()).isEqualTo("2026-11-30 early");
    assertThat(row.cautions()).isEmpty();
  }

  @Test
  void lookAlikesOfOneShiftNameEachOther() {
    List<PullRow> rows =
        rows(
            oneRun()
                .pull("R1", "V1", MONDAY + "07:30", "S0825")
                .pull("R1", "V2", MONDAY + "13:59", "T5618")
                .pull("R1", "V2", MONDAY + "09:00", "L1000"));
    assertThat(rows)
        .extracting(PullRow::caution)
        .containsExactly(
            "do not mix with T5618 (5/16-18 UNC instead of M8x1.25, diameters 0.8 % apart): go/no-go"
                + " thread gauge M8x1.25 passes one, not the other",
            "",
            "do not mix with S0825 (M8x1.25 instead of 5/16-18 UNC, diameters 0.8 % apart): go/no-go"
                + " thread gauge 5/16-18 UNC passes one, not the other");
  }

  @Test
  void lookAlikesOtherThanThreadsAreToldWithWhatTellsThemApart() {
    SmallPlan plan = oneRun();
    plan.materials =
        new Materials(
            List.of(),
            List.of(),
            List.of(
                SampleWeek.insert("S20", "stud", "M8", 20, "A2", "", "none"),
                SampleWeek.insert("S20-4", "stud", "M8", 20, "A4", "", "none"),
                SampleWeek.insert("S25", "stud", "M8", 25, "A2", "", "none"),
                SampleWeek.insert("S30", "stud", "M8", 30, "A2", "", "none"),
                SampleWeek.insert("S30-4", "stud", "M8", 30, "A4", "", "none")),
            plan.materials.stock());
    plan.pull("R1", "V1", MONDAY + "07:30", "S20")
        .pull("R1", "V1", MONDAY + "07:31", "S20-4")
        .pull("R1", "V1", MONDAY + "07:32", "S30");
    assertThat(rows(plan).get(0).caution())
        .isEqualTo(
            "do not mix with S20-4 (A4 instead of A2, alike to the eye): the lot's certificate, looks"
                + " prove nothing");
    assertThat(rows(plan).get(2).cautions()).isEmpty();
    plan.pull("R1", "V1", MONDAY + "07:33", "S25");
    assertThat(rows(plan).get(3).caution())
        .isEqualTo(
            "do not mix with S20 and S20-4 (20 mm instead of 25 mm, the next length): a steel rule; do"
                + " not mix with S30 (30 mm instead of 25 mm, the next length): a steel rule");
  }

  @Test
  void lookAlikeInAnotherShiftIsNoCaution() {
    List<PullRow> rows =
        rows(
            oneRun()
                .pull("R1", "V1", MONDAY + "13:59", "S0825")
                .pull("R1", "V2", MONDAY + "14:00", "T5618"));
    assertThat(rows).allSatisfy(r -> assertThat(r.cautions()).isEmpty());
  }

  @Test
  void sameThreadTwiceIsNoCaution() {
    List<PullRow> rows =
        rows(
            oneRun()
                .pull("R1", "V1", MONDAY + "07:30", "T5618")
                .pull("R1", "V2", MONDAY + "08:30", "T5618"));
    assertThat(rows).allSatisfy(r -> assertThat(r.cautions()).isEmpty());
  }

  @Test
  void threadThatIsNotReadIsSaidNotToBeCompared() {
    SmallPlan plan = oneRun();
    plan.materials =
        new Materials(
            List.of(),
            List.of(),
            List.of(
                SampleWeek.insert("P1", "blind", "G1/4", 0, "brass", "", ""),
                SampleWeek.insert("P2", "blind", "M6x1", 0, "brass", "", "")),
            plan.materials.stock());
    plan.pull("R1", "V1", MONDAY + "07:30", "P1").pull("R1", "V1", MONDAY + "07:31", "P2");
    assertThat(rows(plan))
        .extracting(PullRow::caution)
        .containsExactly("thread not compared with the others: check with the thread gauge", "");
  }

  @Test
  void threadThatIsNotReadIsNoCautionWhereNoOtherIsBrought() {
    SmallPlan plan = oneRun();
    plan.materials =
        new Materials(
            List.of(),
            List.of(),
            List.of(
                SampleWeek.insert("P1", "blind", "G1/4", 0, "brass", "", ""),
                SampleWeek.insert("P2", "bushing", "", 0, "brass", "", "")),
            plan.materials.stock());
    plan.pull("R1", "V1", MONDAY + "07:30", "P1").pull("R1", "V1", MONDAY + "07:31", "P2");
    assertThat(rows(plan)).allSatisfy(r -> assertThat(r.cautions()).isEmpty());
  }

  @Test
  void hexavalentFinishAndReceiptAreCautions() {
    SmallPlan plan = oneRun();
    plan.pulls.add(
        new Pull(
            "R1",
            "V1",
            SampleWeek.at("2026-12-01T12:00"),
            "S5616",
            "",
            "",
            SampleWeek.at("2026-12-01T10:00"),
            100));
    assertThat(rows(plan).get(0).cautions())
        .containsExactly(
            "hexavalent chromium: handle by the site procedure", "from receipt Tue 10:00");
  }

  @Test
  void rowsGoByShiftThenPressThenTime() {
    List<PullRow> rows =
        rows(
            oneRun()
                .pull("R1", "V2", MONDAY + "07:00", "S0825")
                .pull("R1", "V1", MONDAY + "15:00", "S0825")
                .pull("R1", "V1", MONDAY + "12:00", "S0825")
                .pull("R1", "V1", MONDAY + "06:30", "S0825"));
    assertThat(rows)
        .extracting(r -> r.shiftId() + " " + r.pull().press())
        .containsExactly(
            "2026-11-30 early V1",
            "2026-11-30 early V1",
            "2026-11-30 early V2",
            "2026-11-30 late V1");
    assertThat(rows.get(0).pull().needByMin()).isEqualTo(SampleWeek.at(MONDAY + "06:30"));
  }

  @Test
  void betweenShiftsTheShiftBeforeBrings() {
    PullRow row = rows(oneRun().pull("R1", "V1", "2026-12-01T05:30", "S0825")).get(0);
    assertThat(row.shiftId()).isEqualTo("2026-11-30 late");
  }

  @Test
  void beforeThePlanStartsItsFirstShiftBrings() {
    PullRow row = rows(oneRun().pull("R1", "V1", MONDAY + "05:30", "S0825")).get(0);
    assertThat(row.shiftId()).isEqualTo("2026-11-30 early");
  }

  @Test
  void insertWithoutARowSaysSo() {
    PullRow row = rows(oneRun().pull("R9", "V1", MONDAY + "07:30", "NONE")).get(0);
    assertThat(row.words()).isEqualTo("not in inserts.csv");
    assertThat(row.line()).isEmpty();
  }

  private static SmallPlan twoLots() {
    SmallPlan plan = oneRun();
    plan.pulls.add(Stocked.pull("R1", MONDAY + "07:30", "S0825", "A", 30));
    plan.pulls.add(Stocked.pull("R1", MONDAY + "07:30", "S0825", MONDAY + "05:00", 60));
    return plan;
  }

  @Test
  void severalLotsOfATracedRunAreSubLots() {
    SmallPlan plan = twoLots();
    assertThat(rows(plan)).noneMatch(row -> row.caution().contains("sub-lot"));
    plan.jobs.set(0, food(plan.jobs.get(0)));
    assertThat(rows(plan).get(0).caution())
        .isEqualTo(
            "from 2 lots, in this order: A, receipt Mon 05:00; each begins a new sub-lot: do not mix"
                + " them, and write down where one ends");
    assertThat(rows(plan).get(1).caution())
        .startsWith("from receipt Mon 05:00; from 2 lots, in this order: A, receipt");
  }

  private static Job food(Job job) {
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        true,
        job.options());
  }

  @Test
  void aLotThatExpiresBeforeTheRunEndsIsToldOf() {
    SmallPlan plan = twoLots();
    OptionalInt expires = OptionalInt.of(SampleWeek.at(MONDAY + "11:59"));
    new Stocked().lot("S0825", "A", 30, LotStatus.USABLE, expires).to(plan);
    assertThat(rows(plan).get(0).caution())
        .isEqualTo("lot expires Mon 11:59, before its run ends: use it first");
  }
}
