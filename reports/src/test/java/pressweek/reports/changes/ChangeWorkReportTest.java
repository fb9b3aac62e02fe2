package pressweek.reports.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.reports.changes.ChangeWork.AtOnce;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.Shifts;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

/**
 * The plant's table: a mold 60 min, 24 of them to take it off; tooling 20; another resin 20, 40
 * when it melts cooler; a colour of unknown lightness 40; food clearance 30; first article 10.
 */
class ChangeWorkReportTest {
  private static final String MONDAY = "2026-11-30T";
  private static final Setup BLACK = new Setup("M1", "", "PP", "BLK");
  private static final Setup OTHER = new Setup("M2", "", "PP", "BLK");

  private final SmallPlan plan = new SmallPlan();

  ChangeWorkReportTest() {
    plan.molds.clear();
    plan.molds.add(SampleJobs.mold("M1", OptionalDouble.of(20), OptionalDouble.of(107), "rack A1"));
    plan.molds.add(
        SampleJobs.mold("M2", OptionalDouble.of(20), OptionalDouble.of(62.5), "rack B2"));
  }

  private void change(String id, String press, List<ChangeKind> kinds, Setup from, Setup to) {
    change(id, press, kinds, from, to, "08:00", "09:10");
  }

  private void change(
      String id, String press, List<ChangeKind> kinds, Setup from, Setup to, String... times) {
    int end = SampleWeek.at(MONDAY + times[1]);
    plan.job(
        id, new SampleJobs.Choice(press, to.mold(), to.resin(), to.colour(), "S0825", 500, end));
    plan.run(
        id,
        id + "/1",
        press,
        SmallPlan.change(kinds, from, to, MONDAY + times[0], MONDAY + times[1]),
        List.of(end, end + 120));
  }

  private void melts(double pp, double abs) {
    Materials known = plan.materials;
    plan.materials =
        new Materials(
            List.of(resin("PP", pp), resin("ABS", abs)),
            known.colours(),
            known.inserts(),
            known.stock());
  }

  private static Resin resin(String id, double meltC) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble melt = meltC == 0 ? none : OptionalDouble.of(meltC);
    return new Resin(id, "", none, melt, none, 0, Barrel.STANDARD, List.of());
  }

  private List<ChangeWork> rows() {
    return ChangeWorkReport.rows(PlanBook.of(plan.plan()));
  }

  @Test
  void moldsHaveWeightPlaceAndMinutes() {
    change("1", "V1", List.of(ChangeKind.MOLD), OTHER, BLACK);
    ChangeWork row = rows().get(0);
    assertThat(row.out().weightKg()).hasValue(62.5);
    assertThat(row.out().places()).containsExactly("rack B2");
    assertThat(row.in().places()).containsExactly("rack A1");
    assertThat(row.firstArticle()).isEqualTo("setter");
    assertThat(row.tasks().before())
        .containsExactly("fetch M1, 107 kg, from rack A1", "preheat M1 where the site can");
    assertThat(row.tasks().stopped())
        .containsExactly(
            "take off M2, 62.5 kg (24 min)",
            "put on M1, 107 kg (36 min)",
            "first article: setter (10 min)");
    assertThat(row.notComputed()).isEmpty();
  }

  @Test
  void stepsHaveNoMinutesWhenTheyDoNotAddUp() {
    change("1", "V1", List.of(ChangeKind.MOLD), OTHER, BLACK, "08:00", "09:11");
    assertThat(rows().get(0).tasks().stopped())
        .containsExactly("take off M2, 62.5 kg", "put on M1, 107 kg", "first article: setter");
  }

  @Test
  void moldComesFromThePressThatHeldItAndGoesToTheNext() {
    int nine = SampleWeek.at(MONDAY + "09:00");
    plan.dismounts.add(new Dismount("V2", "M1", nine, nine + 24, 24, 0));
    change("1", "V1", List.of(ChangeKind.MOLD), OTHER, BLACK, "09:24", "10:34");
    change(
        "2",
        "V2",
        List.of(ChangeKind.MOLD),
        new Setup("", "", "PP", "BLK"),
        OTHER,
        "11:00",
        "12:00");
    List<ChangeWork> rows = rows();
    assertThat(rows.get(0).out().places()).containsExactly("rack A1", "then to V1, Mon 09:24");
    assertThat(rows.get(0).firstArticle()).isEmpty();
    assertThat(rows.get(0).tasks().before()).isEmpty();
    assertThat(rows.get(0).tasks().stopped()).containsExactly("take off M1, 107 kg (24 min)");
    assertThat(rows.get(1).in().places()).containsExactly("V2, off Mon 09:24", "rack A1");
    assertThat(rows.get(1).out().places()).containsExactly("rack B2", "then to V2, Mon 11:00");
    assertThat(rows.get(1).tasks().before()).contains("fetch M1, 107 kg, from V2, off Mon 09:24");
    assertThat(rows.get(2).in().places()).containsExactly("V1, changed from Mon 09:24", "rack B2");
  }

  @Test
  void barrelGoesUpOrDown() {
    Setup abs = new Setup("M1", "", "ABS", "BLK");
    change("1", "V1", List.of(ChangeKind.RESIN), BLACK, abs, "08:00", "08:30");
    change("2", "V2", List.of(ChangeKind.RESIN), abs, BLACK, "08:00", "08:50");
    melts(200, 245);
    assertThat(rows())
        .extracting(ChangeWork::temperature)
        .containsExactly("up 45 C to 245 C", "down 45 C to 200 C");
    assertThat(rows().get(1).tasks().stopped())
        .containsExactly(
            "purge ABS, BLK with PP, BLK, 0.375 kg, barrel down 45 C to 200 C (40 min)",
            "first article: setter (10 min)");
    melts(200, 200);
    assertThat(rows().get(0).temperature()).isEqualTo("same, 200 C");
    melts(200, 0);
    assertThat(rows().get(0).temperature()).isEqualTo("not known");
    assertThat(rows().get(0).notComputed())
        .containsExactly("temperature: resins.csv melt_c of ABS");
  }

  @Test
  void whatIsStagedAndKittedIsDoneWhileThePressRuns() {
    change("1", "V1", List.of(ChangeKind.COLOUR), new Setup("M1", "", "PP", "SGR"), BLACK);
    plan.pull("1", "V1", MONDAY + "07:30", "S0825").pull("1", "V1", MONDAY + "07:30", "S0825");
    ChangeWork row = rows().get(0);
    assertThat(row.tasks().before())
        .containsExactly("stage PP, BLK: 11.175 kg in all", "kit inserts S0825");
    assertThat(row.temperature()).isEmpty();
  }

  @Test
  void toolingIsCheckedBeforeAndExchangedWhenThePressStands() {
    Setup metric = new Setup("M1", "PIN-M8", "PP", "BLK");
    Setup inch = new Setup("M1", "PIN-U516", "PP", "BLK");
    change("1", "V1", List.of(ChangeKind.TOOLING), metric, inch, "08:00", "08:30");
    ChangeWork row = rows().get(0);
    assertThat(row.tasks().before()).containsExactly("check that tooling PIN-U516 is complete");
    assertThat(row.tasks().stopped())
        .containsExactly(
            "exchange tooling PIN-M8 for PIN-U516 (20 min)", "first article: setter (10 min)");
  }

  @Test
  void foodClearanceAloneTakesNoFirstArticle() {
    change("1", "V1", List.of(ChangeKind.FOOD_CLEARANCE), BLACK, BLACK, "08:00", "08:30");
    ChangeWork row = rows().get(0);
    assertThat(row.firstArticle()).isEmpty();
    assertThat(row.tasks().stopped())
        .containsExactly("clear press, mold, dryer and loader for food (30 min)");
  }

  @Test
  void changesAtOnceAreCountedWhereMostAreUnderWay() {
    List<ChangeKind> mold = List.of(ChangeKind.MOLD);
    change("1", "V1", mold, OTHER, BLACK, "08:00", "09:10");
    change("2", "V2", mold, BLACK, OTHER, "09:00", "10:10");
    int ten = SampleWeek.at(MONDAY + "10:00");
    plan.dismounts.add(new Dismount("V3", "M7", ten, ten + 24, 24, 0));
    int after = SampleWeek.at(MONDAY + "10:10");
    plan.dismounts.add(new Dismount("V4", "M8", after, after + 24, 24, 0));
    assertThat(rows())
        .extracting(ChangeWork::atOnce)
        .containsExactly(
            new AtOnce(2, List.of("V2")),
            new AtOnce(2, List.of("V1", "V3")),
            new AtOnce(2, List.of("V2", "V4")),
            new AtOnce(2, List.of("V3")));
  }

  @Test
  void inspectorChecksTheFirstArticleWhereThePlantHasSome() {
    change("1", "V1", List.of(ChangeKind.MOLD), OTHER, BLACK);
    plan.plant = Shifts.with(s -> Shifts.inspectors(s, OptionalInt.of(1)));
    assertThat(rows().get(0).firstArticle()).isEqualTo("QA");
    plan.plant =
        Shifts.with(s -> Shifts.inspectors(s, OptionalInt.of(s.name().equals("late") ? 1 : 0)));
    assertThat(rows().get(0).firstArticle()).isEqualTo("QA: nobody there, wait until Mon 14:00");
    plan.plant = Shifts.with(s -> Shifts.inspectors(s, OptionalInt.of(0)));
    assertThat(rows().get(0).firstArticle())
        .isEqualTo("QA: nobody there, and no later shift has one");
  }

  @Test
  void settersWhoAreNotRecordedAreNotPromised() {
    change("1", "V1", List.of(ChangeKind.MOLD), OTHER, BLACK);
    plan.plant = Shifts.unchecked();
    assertThat(rows().get(0).firstArticle()).isEqualTo("setter (who is there is not recorded)");
  }
}
