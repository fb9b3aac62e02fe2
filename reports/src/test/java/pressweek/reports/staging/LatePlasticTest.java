package pressweek.reports.staging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Component;
import pressweek.data.problem.Preparation;
import pressweek.data.problem.Take;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.Stocked;
import pressweek.reports.schedule.PlanBook;

/** Plastic that comes late, or is dried beside food-grade work; hours worked out by hand. */
class LatePlasticTest extends StagedPlan {
  @Test
  void resinFromAReceiptIsDriedNoEarlierThanItComes() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    plan.takes(new Take(Component.RESIN, "POM", 10_000, 0, 0));
    plan.pulls.add(Stocked.pull("R1", MONDAY + "11:00", "POM", MONDAY + "11:00", 10_000));
    // 3 h and 1 h for a cold dryer from 11:00 on are done at 15:00
    assertThat(rows().get(0).cautions())
        .contains(
            "POM comes with the receipt of Mon 11:00: dried no earlier than Mon 15:00, 3 h after"
                + " the first shot");
  }

  @Test
  void driedResinIsPulledWhenItsDryingBegins() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    plan.takes(new Take(Component.RESIN, "POM", 10_000, 0, 0));
    plan.pulls.add(Stocked.pull("R1", MONDAY + "11:30", "POM", "L1", 10_000));
    plan.pulls.add(Stocked.pull("R1", MONDAY + "11:30", "S0825", "L1", 10));
    keep(Optional.of(new Preparation(granules, masterbatches, dryers, 1)));
    // the change takes 40 minutes, drying 3 h and 1 h for a cold dryer
    assertThat(PullReport.rows(PlanBook.of(plan.plan())))
        .extracting(
            row -> row.pull().insert() + " " + (row.needByMin() - SampleWeek.at(MONDAY + "08:00")))
        .containsExactlyInAnyOrder("POM 0", "S0825 170");
  }

  @Test
  void resinFromAReceiptThatIsInWhenDryingBeginsIsNoMatter() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    plan.takes(new Take(Component.RESIN, "POM", 10_000, 0, 0));
    plan.pulls.add(Stocked.pull("R1", MONDAY + "08:00", "POM", MONDAY + "08:00", 10_000));
    assertThat(rows().get(0).cautions()).noneMatch(caution -> caution.contains("receipt"));
  }

  @Test
  void foodGradeRunWantsTheDryerOfItsPressEmpty() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    run("R2", "V2", "PP", MONDAY + "07:00", MONDAY + "09:00");
    List<StagingRow> rows = rows();
    assertThat(rows.get(0).cautions())
        .contains(
            "food-grade run R2 on V2 wants dryer D2 empty and clean from Mon 06:20 to Mon 09:00");
    assertThat(rows.get(1).cautions())
        .contains(
            "dryer D2 must be empty and clean for it, but holds POM from Mon 08:00 to Mon 14:00 (R1"
                + " on V1)");
  }

  @Test
  void foodGradeRunThatIsOverBeforeIsNoMatter() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    run("R2", "V2", "PP", MONDAY + "07:00", MONDAY + "08:00");
    assertThat(rows()).flatExtracting(StagingRow::cautions).noneMatch(c -> c.contains("food"));
  }
}
