package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Terms;

/** Files and keys of what is arranged beside presses, molds and materials. */
class ArrangedFilesTest {
  @TempDir private Path path;
  private PlantFolder folder;

  @BeforeEach
  void smallestFolder() {
    folder = new PlantFolder(path);
  }

  @Test
  void countedThingsAreRead() {
    folder.with("tooling.csv", "tooling,count,note\nPIN-M8,1,core pins\nOIL,10000,\n");
    assertThat(folder.findings()).isEmpty();
    assertThat(folder.read().arranged().tooling())
        .extracting(ToolingRow::tooling, ToolingRow::count, ToolingRow::note)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("PIN-M8", 1, "core pins"),
            org.assertj.core.groups.Tuple.tuple("OIL", 10_000, ""));
  }

  @Test
  void servicesAndDevicesStandWithTheirMold() {
    folder.with(
        "molds.csv",
        """
        mold,makes,live_cavities,runs_on,cycle_s,shots_to_service,service_shots,service_h,devices
        M1,KNOB,2,P1,40,-1000000000,1,0.1,OIL|HRC
        M2,KNOB,2,P1,40,0,1000000000,,
        M3,KNOB,2,P1,40,,,,
        """);
    assertThat(folder.findings()).isEmpty();
    List<MoldRow> molds = folder.read().floor().molds();
    assertThat(molds.get(0).devices()).containsExactly("OIL", "HRC");
    assertThat(molds.get(0).service().shotsToService()).hasValue(-1_000_000_000);
    assertThat(molds.get(0).service().minutes()).hasValue(6);
    assertThat(molds.get(1).service().shotsBetween()).hasValue(1_000_000_000);
    assertThat(molds.get(1).service().minutes()).isEmpty();
    assertThat(molds.get(2).service().shotsBetween()).isEmpty();
  }

  @Test
  void trialTakesAPressAMoldAndASetter() {
    folder.with(
        "downtime.csv",
        """
        what,from,to,reason,kind,mold,setters
        P1,2026-12-01T06:00,2026-12-01T08:00,oil,,,
        M1,2026-12-02T06:00,2026-12-02T08:00,polish,away,,
        P1,2026-12-03T06:00,2026-12-03T08:00,new gate,trial,M1,
        P1,2026-12-04T06:00,2026-12-04T08:00,,trial,M1,0
        """);
    assertThat(folder.findings()).isEmpty();
    List<DowntimeRow> rows = folder.read().floor().downtime();
    assertThat(rows).extracting(DowntimeRow::trial).containsExactly(false, false, true, true);
    assertThat(rows).extracting(DowntimeRow::mold).containsExactly("", "", "M1", "M1");
    assertThat(rows).extracting(DowntimeRow::setters).containsExactly(0, 0, 1, 0);
  }

  @Test
  void stagesAndFamiliesAreRead() {
    folder.with("stages.csv", "item,core,rest_h\nKNOB,CORE,\nLEVER,CORE,1.51\n");
    folder.with("family.csv", "mold,item,cavities\nM1,A,1\nM1,B,1000\n");
    assertThat(folder.findings()).isEmpty();
    assertThat(folder.read().arranged().stages())
        .extracting(StageRow::restMin)
        .containsExactly(0, 91);
    assertThat(folder.read().arranged().family())
        .extracting(FamilyRow::cavities)
        .containsExactly(1, 1000);
  }

  @Test
  void familyMoldNeedsNoHeads() {
    folder.with("molds.csv", "mold,makes,live_cavities,runs_on,cycle_s\nM1,,2,P1,40\n");
    assertThat(folder.findings())
        .containsExactly(
            "molds.csv:2: makes is empty; expected heads or items, or rows of the mold in family.csv");
    folder.with("family.csv", "mold,item,cavities\nM1,KNOB,2\n");
    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void deviceIsLookedUpOnlyWhereThingsAreCounted() {
    folder.with(
        "molds.csv", "mold,makes,live_cavities,runs_on,cycle_s,devices\nM1,KNOB,2,P1,40,HEAT-1\n");
    assertThat(folder.findings()).isEmpty();
    folder.with("tooling.csv", "tooling,count\nHEAT-2,1\n");
    assertThat(folder.findings())
        .containsExactly(
            "molds.csv:2: device \"HEAT-1\" is not in tooling.csv; did you mean \"HEAT-2\"?");
    folder.with("tooling.csv", "tooling,count\nGRIPPER,1\n");
    assertThat(folder.findings())
        .containsExactly(
            "molds.csv:2: device \"HEAT-1\" is not in tooling.csv; expected a row in tooling.csv");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          tooling.csv @ tooling,count/PIN,0 @ tooling.csv:2: count "0" is out of range; expected a whole number from 1 to 10,000
          tooling.csv @ tooling,count/PIN,10001 @ tooling.csv:2: count "10001" is out of range; expected a whole number from 1 to 10,000
          tooling.csv @ tooling,count/PIN,1/PIN,2 @ tooling.csv:3: tooling "PIN" is also in line 2; expected it once
          tooling.csv @ tooling/PIN @ tooling.csv: column "count" missing; found tooling
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,devices/M1,KNOB,2,P1,40,A|B|A @ molds.csv:2: devices "A|B|A" names one twice; expected each once
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,service_shots/M1,KNOB,2,P1,40,0 @ molds.csv:2: service_shots "0" is out of range; expected a whole number from 1 to 1,000,000,000
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,shots_to_service/M1,KNOB,2,P1,40,-1000000001 @ molds.csv:2: shots_to_service "-1000000001" is out of range; expected a whole number from -1,000,000,000 to 1,000,000,000
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,service_h/M1,KNOB,2,P1,40,-1 @ molds.csv:2: service_h "-1" is out of range; expected 0 to 8,784
          downtime.csv @ what,from,to,kind/P1,2026-12-01,2026-12-02,tryal @ downtime.csv:2: kind "tryal" is not known; expected away, trial
          downtime.csv @ what,from,to,kind/P1,2026-12-01,2026-12-02,trial @ downtime.csv:2: mold is empty; expected a value
          downtime.csv @ what,from,to,kind,mold/P1,2026-12-01,2026-12-02,trial,M9 @ downtime.csv:2: mold "M9" is not in molds.csv; did you mean "M1"?
          downtime.csv @ what,from,to,kind,mold/M1,2026-12-01,2026-12-02,trial,M1 @ downtime.csv:2: what "M1" of a trial is no press of presses.csv; did you mean "P1"?
          downtime.csv @ what,from,to,kind,mold/P1,2026-12-02,2026-12-02,trial,M1 @ downtime.csv:2: the trial ends before it begins; expected "to" after "from" (a date alone is its 00:00)
          downtime.csv @ what,from,to,kind,mold/P1,2026-12-01,2026-12-02,,M1 @ downtime.csv:2: mold "M1" stands in a row that is no trial; expected kind trial
          stages.csv @ item,core,rest_h/KNOB,CORE,-1 @ stages.csv:2: rest_h "-1" is out of range; expected 0 to 8,784
          stages.csv @ item,core/KNOB,A/KNOB,B @ stages.csv:3: item "KNOB" is also in line 2; expected it once
          stages.csv @ item,core/KNOB, @ stages.csv:2: core is empty; expected a value
          family.csv @ mold,item,cavities/M9,A,1 @ family.csv:2: mold "M9" is not in molds.csv; did you mean "M1"?
          family.csv @ mold,item,cavities/M1,A,1/M1,A,2 @ family.csv:3: item "A" in mold "M1" is also in line 2; expected it once
          family.csv @ mold,item,cavities/M1,A,0 @ family.csv:2: cavities "0" is out of range; expected a whole number from 1 to 1,000
          """)
  void aBadRowIsNamed(String file, String text, String message) {
    folder.with(file, text.replace('/', '\n'));
    assertThat(folder.findings()).containsExactly(message);
  }

  private PlantRow plant(String json) {
    return folder.with("plant.json", json).read().plant();
  }

  private static String shifts(String more) {
    return "{\"shifts\": [{\"name\": \"day\", \"days\": [\"MON\"], \"from\": \"06:00\", \"to\": \"14:00\"},"
        + "{\"name\": \"late\", \"days\": [\"MON\"], \"from\": \"14:00\", \"to\": \"22:00\", "
        + more
        + "}]}";
  }

  @Test
  void overtimeAndUnattendedShiftsAreShifts() {
    assertThat(plant("{}").hours().opening()).isEqualTo(Opening.NONE);
    PlantRow overtime = plant(shifts("\"overtime_h\": 210.5, \"setters\": 1"));
    assertThat(folder.findings()).isEmpty();
    assertThat(overtime.hours().shifts()).hasSize(2);
    assertThat(overtime.hours().opening())
        .isEqualTo(new Opening(List.of(new Opening.Overtime("late", 21_050_000)), List.of()));
    PlantRow unattended = plant(shifts("\"unattended\": true, \"operators\": 0"));
    assertThat(folder.findings()).isEmpty();
    assertThat(unattended.hours().opening()).isEqualTo(new Opening(List.of(), List.of("late")));
    assertThat(plant(shifts("\"overtime_h\": 0")).hours().opening().overtime()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          "unattended": true, "setters": 1      @ plant.json:1: shift "late" is unattended and has people; expected neither setters, operators nor inspectors
          "unattended": true, "operators": 0.5  @ plant.json:1: shift "late" is unattended and has people; expected neither setters, operators nor inspectors
          "unattended": true, "inspectors": 1   @ plant.json:1: shift "late" is unattended and has people; expected neither setters, operators nor inspectors
          "unattended": true, "overtime_h": 9   @ plant.json:1: shift "late" is unattended and has overtime_h; expected one of the two
          "unattended": "yes"                   @ plant.json:1: shifts.unattended is the text "yes"; expected true or false
          "overtime_h": -1                      @ plant.json:1: shifts.overtime_h is the number -1; expected a number from 0 to 100,000,000
          """)
  void badShiftIsNamed(String more, String message) {
    plant(shifts(more));
    assertThat(folder.findings()).containsExactly(message);
  }

  @Test
  void nobodyIsInAShiftWithoutPeople() {
    folder.with("people.csv", "person,shifts\nAda,day|late\nBen,day\n");
    plant(shifts("\"unattended\": true"));
    assertThat(folder.findings())
        .containsExactly("people.csv:2: shift \"late\" is unattended; expected one with people");
  }

  @Test
  void termsHaveDefaults() {
    assertThat(plant("{}").terms()).isEqualTo(new Terms(0, 0, 0, 1_500_000, List.of()));
    assertThat(plant("{\"rates\": {\"late_day\": 1}}").terms().movedRun()).isEqualTo(1_500_000);
    String rates = "{\"close_h\": 1.5, \"short_campaign_h\": 2, \"moved_run\": 0}";
    assertThat(plant("{\"campaign\": {\"min_h\": 2.5}, \"rates\": " + rates + "}").terms())
        .isEqualTo(new Terms(150, 200_000, 150_000, 0, List.of()));
    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void furtherKeysOfThePlantHaveLimits() {
    plant("{\"campaign\": {\"min_h\": -1}, \"molds\": {\"service_h\": -1, \"service_shots\": -1}}");
    assertThat(folder.findings())
        .containsExactlyInAnyOrder(
            "plant.json:1: campaign.min_h is the number -1; expected a number from 0 to 8,784",
            "plant.json:1: molds.service_h is the number -1; expected a number from 0 to 8,784",
            "plant.json:1: molds.service_shots is the number -1; expected a whole number from 0 to 1,000,000,000");
    plant("{\"split\": {\"over_h\": -1}, \"drying\": {\"clean_min\": -1, \"planned\": 1}}");
    assertThat(folder.findings())
        .containsExactlyInAnyOrder(
            "plant.json:1: split.over_h is the number -1; expected a number from 0 to 8,784",
            "plant.json:1: drying.clean_min is the number -1; expected a whole number from 0 to 527,040",
            "plant.json:1: drying.planned is the number 1; expected true or false");
  }
}
