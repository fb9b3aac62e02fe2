package pressweek.reports.staging;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.schedule.PlanBook;

/**
 * 500 pieces from four cavities of 20 g are 125 shots of 80 g; ten shots of start-up and 375 g of
 * purge come on top: 10,000 + 800 + 375 g. A shot of 80 g in 38 s is 7.58 kg/h.
 */
class StagingReportTest extends StagedPlan {
  @Test
  void startUpAndPurgeAreInTheAmountAndTheLetDownIsAFractionOfTheTotal() {
    run("R1", "V1", "PP", MONDAY + "09:00", MONDAY + "12:00");
    Batch batch = rows().get(0).batch();
    assertThat(batch.plasticG()).contains(11_175);
    assertThat(batch.startupG()).contains(800);
    assertThat(batch.purgeG()).isEqualTo(375);
    // 25:1 is one part of 26: 11175 / 26 = 429.8
    assertThat(batch.masterbatchG()).contains(430);
    assertThat(batch.resinG()).contains(10_745);
    assertThat(batch.masterbatch()).isEqualTo("MB-BLK");
  }

  @Test
  void resinThatNeedsNoDryingIsAtThePressWhenTheChangeBegins() {
    run("R1", "V1", "PP", MONDAY + "09:00", MONDAY + "12:00");
    StagingRow row = rows().get(0);
    assertThat(row.needByMin()).isEqualTo(SampleWeek.at(MONDAY + "08:20"));
    assertThat(row.drying().where()).isEqualTo("hopper at V1");
    assertThat(row.drying().fromMin()).isEmpty();
    assertThat(row.cautions()).isEmpty();
    assertThat(row.notComputed()).isEmpty();
  }

  @Test
  void coldDryerStartsAnHourEarlier() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "14:00");
    run("R2", "V2", "POM", MONDAY + "16:00", MONDAY + "18:00");
    List<StagingRow> rows = rows();
    assertThat(rows.get(0).drying().hours()).contains(new BigDecimal("4.0"));
    assertThat(rows.get(0).drying().fromMin()).contains(SampleWeek.at(MONDAY + "08:00"));
    assertThat(rows.get(0).needByMin()).isEqualTo(SampleWeek.at(MONDAY + "08:00"));
    assertThat(rows.get(0).drying().where()).isEqualTo("dryer D2");
    // The dryer held POM before: 3 hours will do.
    assertThat(rows.get(1).drying().fromMin()).contains(SampleWeek.at(MONDAY + "13:00"));
    assertThat(rows.get(1).cautions()).isEmpty();
  }

  @Test
  void twoResinsInOneDryerAreToldOnBothRows() {
    run("R1", "V1", "PA66-GF30", MONDAY + "11:00", MONDAY + "14:20");
    run("R2", "V2", "POM", MONDAY + "18:00", MONDAY + "20:00");
    run("R3", "V2", "POM", MONDAY + "20:40", MONDAY + "21:40");
    List<StagingRow> rows = rows();
    assertThat(row(rows, "R1").cautions())
        .containsExactly(
            "dryer D2 must take POM from Mon 14:00 (R2 on V2); this run needs it until Mon 14:20");
    assertThat(row(rows, "R2").cautions())
        .containsExactly(
            "dryer D2 holds PA66-GF30 until Mon 14:20 (R1 on V1): dried there no earlier than Mon"
                + " 18:20, 20 min after the first shot",
            "clean dryer D2, hopper and loader: PA66-GF30 was in");
    assertThat(row(rows, "R3").cautions()).isEmpty();
  }

  @Test
  void dryerIsFreeWhenTheOtherResinEndsAsDryingStarts() {
    run("R1", "V1", "PA66-GF30", MONDAY + "11:00", MONDAY + "14:00");
    run("R2", "V2", "POM", MONDAY + "18:00", MONDAY + "20:00");
    assertThat(rows()).allSatisfy(r -> assertThat(r.cautions().toString()).doesNotContain("until"));
  }

  @Test
  void resinsThatMustNeverMeetAreNamedAtTheCleaning() {
    run("R1", "V1", "PVC", MONDAY + "11:00", MONDAY + "12:00");
    run("R2", "V2", "POM", MONDAY + "18:00", MONDAY + "20:00");
    granules.add(granules("PVC", 2, 0));
    assertThat(row(rows(), "R2").cautions())
        .singleElement()
        .asString()
        .contains("PVC was in; the two must never meet");
  }

  @Test
  void dryingBeforeThePlanAndAtNightIsTold() {
    run("R1", "V1", "POM", MONDAY + "09:00", MONDAY + "10:00");
    run("R2", "V2", "PA66-GF30", TUESDAY + "07:00", TUESDAY + "08:00");
    List<StagingRow> rows = rows();
    assertThat(row(rows, "R1").cautions())
        .containsExactly("drying should have begun Mon 30 Nov 05:00, before the plan starts");
    assertThat(row(rows, "R1").shift()).map(ShiftSpan::id).contains("2026-11-30 early");
    assertThat(row(rows, "R2").cautions())
        .contains(
            "nobody in the house at Tue 02:00: load before Mon 22:00, or let a timer start it");
    assertThat(row(rows, "R2").shift()).map(ShiftSpan::id).contains("2026-11-30 late");
  }

  @Test
  void hopperThatIsTooSmallIsTold() {
    dryers.set(0, new Dryer("D2", OptionalDouble.of(16), List.of("V1", "V2")));
    run("R1", "V1", "PA66-GF30", MONDAY + "12:00", MONDAY + "14:00");
    // 7.58 kg/h for 4 h are 30.3 kg, but the run takes only 10.8 kg: 16.36 L.
    StagingRow row = rows().get(0);
    assertThat(row.drying().neededL()).contains(new BigDecimal("16.4"));
    assertThat(row.cautions()).containsExactly("hopper of D2 too small: 16.4 L needed, 16 L there");
  }

  @Test
  void runsOfOneResinShareTheHopper() {
    dryers.set(0, new Dryer("D2", OptionalDouble.of(30), List.of("V1", "V2")));
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "16:00");
    run("R2", "V2", "POM", MONDAY + "15:00", MONDAY + "18:00");
    List<StagingRow> rows = rows();
    assertThat(row(rows, "R1").cautions())
        .containsExactly("hopper of D2 too small with R2 on V2: 32.7 L needed, 30 L there");
    assertThat(row(rows, "R2").cautions())
        .containsExactly("hopper of D2 too small with R1 on V1: 32.7 L needed, 30 L there");
  }

  @Test
  void runsOfOnePressDrawFromOneFilling() {
    dryers.set(0, new Dryer("D2", OptionalDouble.of(17), List.of("V1", "V2")));
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "16:00");
    run("R2", "V1", "POM", MONDAY + "16:40", MONDAY + "18:00");
    assertThat(rows()).allSatisfy(r -> assertThat(r.cautions()).isEmpty());
  }

  @Test
  void longestStayIsToldOnlyBeyondTheLimit() {
    run("R1", "V1", "PA66-GF30", MONDAY + "12:00", MONDAY + "19:00");
    assertThat(rows().get(0).cautions()).isEmpty();
    plan.runs.clear();
    plan.jobs.clear();
    run("R1", "V1", "PA66-GF30", MONDAY + "12:00", MONDAY + "19:30");
    assertThat(rows().get(0).cautions())
        .containsExactly(
            "loaded in one go it would be 12.5 h in the dryer, 12 h at most: load in portions, and"
                + " for closed hours do as the resin sheet says");
  }

  @Test
  void whatIsRunningIsInTheDryerAlready() {
    run("R1", "V1", "POM", MONDAY + "06:00", MONDAY + "10:00");
    plan.states.add(new PressState("V1", new Setup("M1", "", "POM", "BLK"), false, "R1/1"));
    run("R2", "V2", "POM", MONDAY + "12:00", MONDAY + "14:00");
    List<StagingRow> rows = rows();
    assertThat(row(rows, "R1").drying().fromMin()).isEmpty();
    assertThat(row(rows, "R1").cautions())
        .containsExactly(
            "running already: its resin is in the dryer, the amount is what it still takes");
    assertThat(row(rows, "R2").drying().hours()).contains(new BigDecimal("3.0"));
  }

  @Test
  void whatIsNotKnownNamesTheColumn() {
    plan.molds.set(0, SampleJobs.mold("M1"));
    granules.set(0, new Granules("PP", none(), none(), none(), none()));
    granules.set(
        2, new Granules("POM", OptionalDouble.of(3), OptionalDouble.of(80), none(), none()));
    masterbatches.clear();
    dryers.set(0, new Dryer("D2", none(), List.of("V2")));
    run("R1", "V1", "PP", MONDAY + "12:00", MONDAY + "13:00");
    run("R2", "V1", "POM", MONDAY + "14:00", MONDAY + "15:00");
    run("R3", "V2", "POM", MONDAY + "14:00", MONDAY + "15:00");
    List<StagingRow> rows = rows();
    assertThat(row(rows, "R1").notComputed())
        .containsExactly(
            "kilograms: molds.csv part_g of M1",
            "masterbatch: colours.csv let_down_pct of BLK",
            "drying: resins.csv dry_h of PP, 0 where it needs none");
    assertThat(row(rows, "R1").batch().plasticG()).isEmpty();
    assertThat(row(rows, "R2").notComputed()).contains("which dryer: presses.csv dryer of V1");
    assertThat(row(rows, "R2").drying().where()).isEqualTo("a dryer for V1");
    assertThat(row(rows, "R3").notComputed())
        .contains("whether the hopper is big enough: dryers.csv hopper_l of D2");
  }

  @Test
  void litresNeedTheBulkDensity() {
    granules.set(
        2, new Granules("POM", OptionalDouble.of(3), OptionalDouble.of(80), none(), none()));
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "13:00");
    assertThat(rows().get(0).notComputed())
        .containsExactly("litres: resins.csv bulk_density_kg_l of POM");
  }

  @Test
  void planOfBeforePreparationWasKeptSaysSo() {
    run("R1", "V1", "POM", MONDAY + "12:00", MONDAY + "13:00");
    keep(Optional.empty());
    StagingRow row = StagingReport.rows(PlanBook.of(plan.plan())).get(0);
    assertThat(row.notComputed())
        .containsExactly(
            "masterbatch and drying: the plan was made before they were kept; plan anew");
    assertThat(row.batch().plasticG()).contains(11_175);
  }

  @Test
  void rowsAreByShiftThenPressThenTime() {
    run("R1", "V2", "PP", MONDAY + "07:00", MONDAY + "08:00");
    run("R2", "V1", "PP", MONDAY + "12:00", MONDAY + "13:00");
    run("R3", "V1", "PP", MONDAY + "16:00", MONDAY + "17:00");
    assertThat(rows()).extracting(r -> r.run().id()).containsExactly("R2", "R1", "R3");
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private static StagingRow row(List<StagingRow> rows, String run) {
    return rows.stream().filter(r -> r.run().id().equals(run)).findFirst().orElseThrow();
  }
}
