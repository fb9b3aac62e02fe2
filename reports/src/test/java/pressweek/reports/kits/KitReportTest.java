package pressweek.reports.kits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Component;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Take;
import pressweek.data.problem.Tip;
import pressweek.reports.listing.Listing;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleKitting;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class KitReportTest {
  private static final String MONDAY = "2026-11-30T";

  private static List<Kit> kits(SmallPlan plan) {
    return KitReport.kits(PlanBook.of(plan.plan()));
  }

  private static SmallPlan oneRun() {
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "22:00")
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
        .pull("R1", "V1", MONDAY + "07:30", "S0825");
  }

  private static void bring(SmallPlan plan, Component component, String what, int amount) {
    plan.takes(new Take(component, what, amount, 0, 0));
    plan.pulls.add(
        new Pull("R1", "V1", SampleWeek.at(MONDAY + "07:30"), what, "X1", "B1", 0, amount));
  }

  @Test
  void kitHasInsertGaugeResinAndPackaging() {
    Kit kit = kits(oneRun()).get(0);
    assertThat(kit.readyByMin()).isEqualTo(SampleWeek.at(MONDAY + "07:30"));
    assertThat(kit.signs()).containsExactly("brought by", "received by");
    assertThat(kit.parts())
        .extracting(KitPart::kind)
        .containsExactly(PartKind.INSERT, PartKind.GAUGE, PartKind.RESIN, PartKind.PACKAGING);
    KitPart insert = kit.parts().get(0);
    assertThat(insert.lot()).isEqualTo("L1");
    assertThat(insert.bin()).isEqualTo("C1-2");
    assertThat(insert.pieces()).contains(540);
    assertThat(kit.parts().get(1).words()).isEqualTo("go/no-go ring gauge M8x1.25");
    assertThat(kit.parts().get(2).amount()).isEmpty();
  }

  @Test
  void kitThatWaitsForAReceiptIsReadyWhenItIsIn() {
    SmallPlan plan = oneRun();
    int receipt = SampleWeek.at(MONDAY + "07:45");
    plan.pulls.add(new Pull("R1", "V1", receipt, "L1000", "", "", receipt, 9));
    assertThat(kits(plan).get(0).readyByMin()).isEqualTo(receipt);
  }

  @Test
  void masterbatchIsNamedWithItsLetDown() {
    SmallPlan plan = oneRun();
    plan.kitting =
        new SampleKitting()
            .lot("PP", "R7", "silo 2", LotStatus.USABLE)
            .lot("PP", "R8", "", LotStatus.HELD)
            .kitting();
    List<KitPart> parts = kits(plan).get(0).parts();
    assertThat(parts)
        .filteredOn(p -> p.kind() == PartKind.MASTERBATCH)
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.words()).isEqualTo("masterbatch for BLK, black: MB-1");
              assertThat(p.note())
                  .isEqualTo("let-down 4 % of the whole mass; write down the lot that is loaded");
            });
    assertThat(parts)
        .filteredOn(p -> p.kind() == PartKind.RESIN)
        .singleElement()
        .satisfies(p -> assertThat(p.note()).isEqualTo("lots at hand: R7 in silo 2"));
  }

  @Test
  void plasticIsThatOfAllShotsAndItsMasterbatchAShareOfIt() {
    SmallPlan plan = oneRun();
    plan.kitting = new SampleKitting().kitting();
    plan.moldGrams(20, 5);
    List<KitPart> parts = kits(plan).get(0).parts();
    // 125 shots of 4 x 20 g + 5 g are 10,625 g, of which 4 % are 425 g
    assertThat(parts)
        .filteredOn(p -> p.kind() == PartKind.RESIN)
        .singleElement()
        .satisfies(p -> assertThat(p.grams()).contains(10_200));
    assertThat(parts)
        .filteredOn(p -> p.kind() == PartKind.MASTERBATCH)
        .singleElement()
        .satisfies(p -> assertThat(p.grams()).contains(425));
  }

  @Test
  void whatIsPulledStandsInPlaceOfWhatIsWorkedOut() {
    SmallPlan plan = oneRun();
    SampleKitting kitting = new SampleKitting();
    kitting.tips.add(new Tip("S0825", "T9"));
    plan.kitting = kitting.kitting();
    bring(plan, Component.MASTERBATCH, "MB-1", 425);
    bring(plan, Component.RESIN, "PP", 10_200);
    bring(plan, Component.TIP, "T9", 540);
    bring(plan, Component.CARTON, "CTN-5", 3);
    List<KitPart> parts = kits(plan).get(0).parts();
    assertThat(parts)
        .extracting(p -> p.kind() + " " + p.what() + " " + p.lot())
        .containsExactly(
            "INSERT S0825 L1",
            "GAUGE  ",
            "TIP T9 X1",
            "RESIN PP X1",
            "MASTERBATCH MB-1 X1",
            "PACKAGING CTN-5 X1");
    assertThat(parts.get(3).grams()).contains(10_200);
    assertThat(parts.get(4).note()).isEqualTo("let-down 4 % of the whole mass");
    assertThat(parts.get(5).pieces()).contains(3);
  }

  @Test
  void foodKitIsCheckedByASecondPersonAndHasNoRegrindThatIsNotApproved() {
    int due = SampleWeek.at(MONDAY + "22:00");
    SmallPlan plan =
        new SmallPlan()
            .job("4711", new SampleJobs.Choice("V2", "M1", "PP", "BLK", "S0825", 10, due))
            .needs("food")
            .run("R1", "4711", "V2", MONDAY + "08:00", MONDAY + "12:00");
    Kit kit = kits(plan).get(0);
    assertThat(kit.signs()).hasSize(3).contains("checked by a second person");
    assertThat(kit.parts().get(0).note()).startsWith("no regrind: none is approved; ");
    plan.kitting = new SampleKitting().declared("regrind:PP", "food", "").kitting();
    assertThat(kits(plan).get(0).parts().get(0).note())
        .startsWith("regrind of its runners approved (records.csv:2); ");
  }

  @Test
  void runUnderWayWithNothingToBringHasNoKit() {
    SmallPlan plan = oneRun();
    plan.states.add(new PressState("V1", new Setup("M1", "", "PP", "BLK"), false, "4711/1"));
    assertThat(kits(plan)).hasSize(1);
    plan.pulls.clear();
    assertThat(kits(plan)).isEmpty();
  }

  @Test
  void listHasARowAPart() {
    Listing list = KitList.of(PlanBook.of(oneRun().plan()));
    assertThat(list.rows()).hasSize(4);
    assertThat(list.columns())
        .extracting("name")
        .startsWith("run", "press", "ready_by", "order", "line", "item", "good", "part")
        .endsWith("note", "signs");
  }
}
