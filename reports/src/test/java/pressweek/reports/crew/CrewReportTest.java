package pressweek.reports.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.problem.Break;
import pressweek.data.problem.Person;
import pressweek.data.problem.Person.Role;
import pressweek.data.problem.Setup;
import pressweek.reports.listing.Paper;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.Shifts;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

/** Every run takes a quarter of an operator; V1 and V2 work early and late, 06:00 to 22:00. */
class CrewReportTest {
  private static final String MONDAY = "2026-11-30T";

  private final SmallPlan plan = new SmallPlan();

  private void run(String id, String press, String from, String to) {
    plan.job(id, press, MONDAY + "22:00").run(id, id, press, MONDAY + from, MONDAY + to);
  }

  private void off(String press, String from, int minutes) {
    int start = SampleWeek.at(MONDAY + from);
    plan.dismounts.add(new Dismount(press, "M-" + press, start, start + minutes, minutes, 0));
  }

  private List<CrewRow> rows() {
    return CrewReport.rows(PlanBook.of(plan.plan()));
  }

  @Test
  void peopleAreTheSharesAtThePeakRoundedUp() {
    run("R1", "V1", "07:00", "12:00");
    run("R2", "V2", "10:00", "13:00");
    CrewRow row = rows().get(0);
    assertThat(row.shift().id()).isEqualTo("2026-11-30 early");
    assertThat(row.cell()).isEqualTo("whole plant");
    assertThat(row.operators().thousandths()).isEqualTo(500);
    assertThat(row.operators().people()).isEqualTo(1);
    assertThat(row.operators().atMin()).contains(SampleWeek.at(MONDAY + "10:00"));
    assertThat(row.operators().presses()).containsExactly("V1 0.25", "V2 0.25");
    assertThat(row.operators().sharing()).containsExactly("V1 0.25", "V2 0.25");
    assertThat(row.operators().thereThousandths()).contains(6_500);
    assertThat(row.shortages()).isEmpty();
    assertThat(rows()).hasSize(1);
  }

  @Test
  void onePressSharesWithNobody() {
    run("R1", "V1", "07:00", "12:00");
    assertThat(rows().get(0).operators().sharing()).isEmpty();
  }

  @Test
  void runOverTwoShiftsCountsInBoth() {
    run("R1", "V1", "13:00", "15:00");
    assertThat(rows())
        .extracting(r -> r.shift().id())
        .containsExactly("2026-11-30 early", "2026-11-30 late");
  }

  @Test
  void shiftInWhichNothingIsDoneHasNoRow() {
    run("R1", "V1", "06:00", "14:00");
    assertThat(rows()).hasSize(1);
    assertThat(CrewReport.rows(PlanBook.of(SamplePlan.empty()))).isEmpty();
  }

  @Test
  void tooFewOperatorsAreToldWithMinutesAndRuns() {
    run("R1", "V1", "07:00", "12:00");
    run("R2", "V2", "10:00", "13:00");
    plan.plant = Shifts.with(s -> Shifts.crew(s, 2, 500));
    assertThat(rows().get(0).shortages()).isEmpty();
    plan.plant = Shifts.with(s -> Shifts.crew(s, 2, 400));
    assertThat(rows().get(0).shortages())
        .containsExactly("operators: up to 0.5 needed, 0.4 there, for 120 min: R1 on V1, R2 on V2");
  }

  @Test
  void pressesStandInBreaks() {
    run("R1", "V1", "07:00", "12:00");
    Break pause = new Break(LocalTime.of(9, 0), LocalTime.of(9, 30));
    plan.plant = Shifts.with(s -> Shifts.crew(s, 2, 200, pause));
    assertThat(rows().get(0).shortages())
        .containsExactly("operators: up to 0.25 needed, 0.2 there, for 270 min: R1 on V1");
  }

  @Test
  void setterMinutesStandBesideThoseThatCanBePlanned() {
    off("V1", "08:00", 60);
    plan.plant = Shifts.with(s -> Shifts.crew(s, 1, 6_500));
    CrewRow row = rows().get(0);
    assertThat(row.setters().minutes()).isEqualTo(60);
    // 80 % of eight hours
    assertThat(row.setters().availableMin()).contains(384);
    assertThat(row.setters().there()).contains(1);
    assertThat(row.operators().atMin()).isEmpty();
    assertThat(row.shortages()).isEmpty();
  }

  @Test
  void changeOverTheEndOfAShiftCountsInBothWithoutBreaks() {
    off("V1", "13:00", 120);
    Break pause = new Break(LocalTime.of(13, 30), LocalTime.of(13, 45));
    plan.plant = Shifts.with(s -> s.name().equals("early") ? Shifts.crew(s, 1, 0, pause) : s);
    assertThat(rows()).extracting(r -> r.setters().minutes()).containsExactly(45, 60);
  }

  @Test
  void tooFewSettersAreToldWithMinutesAndChanges() {
    off("V1", "06:00", 240);
    off("V2", "10:00", 144);
    plan.plant = Shifts.with(s -> Shifts.crew(s, 1, 0));
    assertThat(rows().get(0).shortages()).isEmpty();
    off("V2", "13:00", 1);
    assertThat(rows().get(0).shortages())
        .containsExactly(
            "setters: 385 min of changes, 384 min can be planned: M-V1 off on V1, M-V2 off on V2");
  }

  @Test
  void moreChangesAtOnceThanSettersAreTold() {
    off("V1", "08:00", 60);
    off("V2", "08:40", 60);
    plan.plant = Shifts.with(s -> Shifts.crew(s, 1, 0));
    assertThat(rows().get(0).shortages())
        .containsExactly(
            "setters: 2 changes at once, 1 there, for 20 min: M-V1 off on V1, M-V2 off on V2");
  }

  @Test
  void cellsHaveARowEachWhenThereAreSeveral() {
    plan.presses = SampleWeek.presses(9).stream().filter(p -> !p.id().matches("V[3-8]")).toList();
    run("R1", "V1", "07:00", "12:00");
    run("R2", "H9", "08:00", "12:00");
    Setup black = new Setup("M1", "", "PP", "BLK");
    Setup red = new Setup("M1", "", "PP", "SGR");
    plan.job("R3", "H9", MONDAY + "22:00")
        .run(
            "R3",
            "R3/1",
            "H9",
            SmallPlan.change(
                List.of(ChangeKind.COLOUR), black, red, MONDAY + "12:00", MONDAY + "12:50"),
            List.of(SampleWeek.at(MONDAY + "12:50"), SampleWeek.at(MONDAY + "13:30")));
    List<CrewRow> rows = rows();
    assertThat(rows).extracting(CrewRow::cell).containsExactly("whole plant", "A", "B");
    assertThat(rows).extracting(r -> r.operators().thousandths()).containsExactly(500, 250, 250);
    assertThat(rows).extracting(r -> r.setters().minutes()).containsExactly(50, 0, 50);
    assertThat(rows.get(1).operators().thereThousandths()).isEmpty();
  }

  private static Person person(String name, Role role, String shift, String... presses) {
    return new Person(name, role, List.of(shift), List.of(presses));
  }

  @Test
  void peopleStandInTheRowsOfTheirShiftAndCell() {
    plan.presses = SampleWeek.presses(9).stream().filter(p -> !p.id().matches("V[3-8]")).toList();
    run("R1", "V1", "07:00", "15:00");
    run("R2", "H9", "08:00", "12:00");
    off("V2", "09:00", 30);
    plan.plant =
        Shifts.people(
            person("Ada", Role.OPERATOR, "early", "V1", "V2"),
            person("Ben", Role.SETTER, "early", "V1", "V2", "H9"),
            person("Cem", Role.OPERATOR, "late", "V1", "V2", "H9"));
    List<CrewRow> rows = rows();
    assertThat(rows)
        .extracting(r -> r.shift().shift() + " " + r.cell(), r -> r.qualified().mayRun())
        .containsExactly(
            tuple("early whole plant", List.of("Ada: V1", "Ben (setter): all")),
            tuple("early A", List.of("Ada: all", "Ben (setter): all")),
            tuple("early B", List.of()),
            tuple("late whole plant", List.of("Cem: all")),
            tuple("late A", List.of("Cem: all")));
    assertThat(rows)
        .extracting(r -> r.qualified().nobodyFor())
        .containsExactly(List.of("H9"), List.of(), List.of("H9"), List.of(), List.of());
    assertThat(rows.get(2).shortages())
        .containsExactly("operators who may run the presses: 1 needed at once, none there");
    assertThat(rows).allSatisfy(r -> assertThat(r.notComputed()).isEmpty());
  }

  @Test
  void changeThatNoSetterOfTheShiftMayMakeIsTold() {
    off("V1", "13:00", 120);
    plan.plant = Shifts.people(person("Ben", Role.SETTER, "early", "V1"));
    assertThat(rows())
        .extracting(CrewRow::shortages)
        .containsExactly(
            List.of(), List.of("setters who may make the change: none there: M-V1 off on V1"));
  }

  @Test
  void withoutPeopleTheirColumnsAreEmpty() {
    run("R1", "V1", "07:00", "12:00");
    CrewRow row = rows().get(0);
    assertThat(row.qualified()).isEqualTo(new CrewRow.Qualified(List.of(), List.of()));
    assertThat(row.notComputed()).containsExactly("who may run what: people.csv");
    assertThat(paper().caution()).startsWith("Who may run what is not recorded: ");
    plan.plant = Shifts.people();
    assertThat(rows().get(0).qualified().nobodyFor()).containsExactly("V1");
    assertThat(rows().get(0).notComputed()).isEmpty();
    assertThat(paper().caution()).startsWith("Who may run what is as people.csv says; ");
  }

  private Paper paper() {
    return CrewList.of(PlanBook.of(plan.plan())).paper();
  }

  @Test
  void crewThatIsNotRecordedIsNotCompared() {
    run("R1", "V1", "07:00", "12:00");
    plan.plant = Shifts.unchecked();
    CrewRow row = rows().get(0);
    assertThat(row.notComputed())
        .containsExactly(
            "whether operators are enough: plant.json shifts operators",
            "whether setters are enough: plant.json shifts setters",
            "who may run what: people.csv");
    assertThat(row.operators().thereThousandths()).isEmpty();
    assertThat(row.setters().availableMin()).isEmpty();
  }
}
