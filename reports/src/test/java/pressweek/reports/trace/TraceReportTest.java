package pressweek.reports.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Tip;
import pressweek.reports.listing.Listing;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleKitting;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class TraceReportTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan food() {
    int due = SampleWeek.at(MONDAY + "22:00");
    return new SmallPlan()
        .job("4711", new SampleJobs.Choice("V2", "M1", "PP", "BLK", "S0825", 500, due))
        .needs("food")
        .run("R1", "4711", "V2", MONDAY + "08:00", MONDAY + "12:00")
        .pull("R1", "V2", MONDAY + "07:30", "S0825");
  }

  private static SampleKitting kitting() {
    return new SampleKitting()
        .declared("PP", "food", "2027-01-01T00:00")
        .declared("PP:BLK", "food", "")
        .declared("S0825", "food", "2026-12-01T00:00");
  }

  private static List<TraceRow> rows(SmallPlan plan) {
    return TraceReport.rows(PlanBook.of(plan.plan()));
  }

  @Test
  void everyMaterialOfTheRunHasItsLotItsPaperAndItsRecord() {
    SmallPlan plan = food();
    plan.kitting = kitting().lot("PP", "R7", "silo 2", LotStatus.USABLE).kitting();
    assertThat(rows(plan))
        .extracting(
            r ->
                r.subject().words()
                    + " / "
                    + r.source().lot()
                    + " / "
                    + r.source().paper()
                    + " / "
                    + r.declaration().map(d -> d.source()).orElse("none"))
        .containsExactly(
            "resin PP /  /  / records.csv:2",
            "colour BLK /  /  / records.csv:3",
            "insert S0825 / L1 / plating 12 / records.csv:4");
    assertThat(rows(plan).get(0).source().note())
        .isEqualTo("write down the lot that is loaded; at hand: R7");
  }

  @Test
  void anotherLotOfTheSameInsertIsKeptApart() {
    SmallPlan plan = food();
    int needBy = SampleWeek.at(MONDAY + "07:30");
    plan.pulls.add(new Pull("R1", "V2", needBy, "S0825", "L2", "C1-3", 0, 20));
    plan.pulls.add(new Pull("R1", "V2", needBy, "S0825", "", "", needBy, 5));
    assertThat(rows(plan))
        .filteredOn(r -> r.subject().id().equals("S0825"))
        .extracting(r -> r.source().note())
        .containsExactly(
            "",
            "another lot: keep the parts made from it apart",
            "write down the lot that is brought");
  }

  @Test
  void tipsAreTracedAndARecordThatEndsTooEarlyIsNone() {
    SmallPlan plan = food();
    SampleKitting kitting = kitting().declared("T9", "food", MONDAY + "22:00");
    kitting.tips.add(new Tip("S0825", "T9"));
    plan.kitting = kitting.kitting();
    assertThat(rows(plan).get(3).subject().words()).isEqualTo("tip T9");
    assertThat(rows(plan).get(3).declaration()).isEmpty();
  }

  @Test
  void everyNeedHasItsOwnRow() {
    SmallPlan plan = food().needs("food", "rohs");
    plan.kitting = kitting().declared("S0825", "rohs", "").kitting();
    assertThat(rows(plan))
        .extracting(TraceRow::need)
        .containsExactly("food", "rohs", "food", "rohs", "food", "rohs");
    assertThat(rows(plan).get(5).declaration())
        .hasValueSatisfying(d -> assertThat(d.exemption()).isEqualTo("6(c)"));
  }

  @Test
  void runWithoutANeedIsNotTraced() {
    assertThat(rows(food().needs())).isEmpty();
  }

  @Test
  void rulesAreNamedWhereTheListLeansOnThem() {
    String food = TraceList.caution(rows(food()));
    assertThat(food)
        .contains("1935/2004, Art. 17", "21 CFR 177.1520", "never certifies")
        .doesNotContain("2011/65/EU");
    String restricted = TraceList.caution(rows(food().needs("rohs")));
    assertThat(restricted)
        .containsOnlyOnce("2011/65/EU")
        .contains("Annex II", "never certifies")
        .doesNotContain("177.1520");
  }

  @Test
  void operatorAndFirstArticleAreLeftToBeFilledIn() {
    SmallPlan plan = food();
    plan.kitting = kitting().kitting();
    Listing list = TraceList.of(PlanBook.of(plan.plan()));
    assertThat(list.columns()).extracting("name").endsWith("lot_used", "operator", "first_article");
    assertThat(list.rows()).hasSize(3);
  }

  @Test
  void foodRunIsClearedPressMoldDryerAndLoaderFirst() {
    SmallPlan plan = food();
    plan.kitting = kitting().kitting();
    List<Clearance> all = ClearanceReport.of(PlanBook.of(plan.plan()));
    assertThat(all).hasSize(1);
    assertThat(all.get(0).checks())
        .extracting(Clearance.Check::what)
        .startsWith("press", "mold", "dryer", "loader")
        .contains(
            "old parts", "labels", "cartons", "resin", "inserts", "bins", "paperwork", "floor");
    assertThat(all.get(0).checks().get(0).words())
        .isEqualTo("V2 clean; its barrel held PP BLK before");
    assertThat(all.get(0).checks().get(2).words()).startsWith("D1 empty");
  }

  @Test
  void otherRunsAreNotCleared() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "22:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00");
    assertThat(ClearanceReport.of(PlanBook.of(plan.plan()))).isEmpty();
    assertThat(ClearanceList.of(PlanBook.of(plan.plan())).rows()).isEmpty();
  }
}
