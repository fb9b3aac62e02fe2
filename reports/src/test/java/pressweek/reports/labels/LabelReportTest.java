package pressweek.reports.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class LabelReportTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan plan() {
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "22:00")
        .run("R1", "4711", "V1", MONDAY + "12:00", MONDAY + "14:00")
        .job("4712", "V2", MONDAY + "22:00")
        .run("R2", "4712", "V2", MONDAY + "08:00", MONDAY + "12:00");
  }

  private static List<KitLabel> labels(SmallPlan plan) {
    return LabelReport.labels(PlanBook.of(plan.plan()));
  }

  @Test
  void runWithoutPullsHasALabelForItsStart() {
    assertThat(labels(plan())).extracting(l -> l.run().id()).containsExactly("R2", "R1");
    assertThat(labels(plan())).allMatch(l -> l.pulls().isEmpty() && l.count() == 1);
  }

  @Test
  void labelsComeAsTheyAreNeeded() {
    SmallPlan plan = plan().pull("R1", "V1", MONDAY + "07:00", "S0825");
    assertThat(labels(plan)).extracting(l -> l.run().id()).containsExactly("R1", "R2");
  }

  @Test
  void twoPullsFitALabelAndTheThirdNeedsAnother() {
    SmallPlan plan = plan();
    for (String insert : List.of("S0825", "S5616")) {
      plan.pull("R2", "V2", MONDAY + "07:30", insert);
    }
    assertThat(labels(plan)).hasSize(2);
    plan.pull("R2", "V2", MONDAY + "07:30", "B0600");
    List<KitLabel> its = labels(plan).stream().filter(l -> l.run().id().equals("R2")).toList();
    assertThat(its).extracting(KitLabel::place).containsExactly(1, 2);
    assertThat(its).extracting(l -> l.pulls().size()).containsExactly(2, 1);
  }

  @Test
  void textHoldsWhatTheLabelSays() {
    SmallPlan plan = plan().pull("R2", "V2", MONDAY + "07:30", "S0825");
    KitLabel label = labels(plan).get(0);
    assertThat(label.text("2026-11-30T07:30+01:00"))
        .isEqualTo(
            "plan 2026-W49/3\nrun R2\npress V2\nline 4712/1\nitem LV90/S0825/PP-BLK\nmold M1\n"
                + "need by 2026-11-30T07:30+01:00\ninsert S0825 pieces 540 bin C1-2 lot L1");
    assertThat(label.ids()).isEqualTo("2026-W49/3 R2");
  }
}
