package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;

/** Counted things, devices, services, trials, and shifts beside the ordinary ones. */
class ArrangementsBuilderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,devices",
        "M1,M1,4,30,,OIL|HRC",
        "M2,M2,4,30,,");
  }

  private Arrangements arranged() {
    return plant.problem().arranged();
  }

  private void services(String... rows) {
    String[] lines = new String[rows.length + 1];
    lines[0] = "mold,makes,live_cavities,cycle_s,runs_on,shots_to_service,service_shots,service_h";
    System.arraycopy(rows, 0, lines, 1, rows.length);
    plant.file("molds.csv", lines);
  }

  @Test
  void plantOfThreeFilesArrangesNothingButWhatAMoveCosts() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,4,30,");
    Arrangements none = Arrangements.NONE;
    assertThat(arranged())
        .isEqualTo(
            new Arrangements(
                none.things(),
                none.devices(),
                none.services(),
                none.trials(),
                none.links(),
                none.surplus(),
                none.opening(),
                new Arrangements.Settled(Drying.NONE, new Terms(0, 0, 0, 1_500_000, List.of()))));
  }

  @Test
  void devicesAreCountedWithTheFile() {
    plant.file("tooling.csv", "tooling,count", "OIL,1", "HRC,2", "PIN-M8,1");
    assertThat(arranged().things())
        .containsExactly(
            new CountedThing("OIL", 1), new CountedThing("HRC", 2), new CountedThing("PIN-M8", 1));
    assertThat(arranged().devices())
        .containsExactly(new DeviceNeed("M1", "OIL"), new DeviceNeed("M1", "HRC"));
    assertThat(plant.notChecked()).noneSatisfy((what, n) -> assertThat(what).contains("devices"));
  }

  @Test
  void withoutTheFileDevicesAreNotChecked() {
    assertThat(arranged().things()).isEmpty();
    assertThat(arranged().devices()).isEmpty();
    assertThat(plant.notChecked())
        .containsEntry(
            "whether devices (controllers, heaters, grippers) are free: they are not counted", 1);
  }

  @Test
  void moldIsServicedByItsOwnFigures() {
    services("M1,M1,4,30,,1200,50000,2.01", "M2,M2,4,30,,,,3");
    assertThat(arranged().services()).containsExactly(new MoldService("M1", 1200, 50_000, 121));
    assertThat(plant.findings()).noneMatch(f -> f.contains("service"));
  }

  @Test
  void hoursOfAServiceAreThePlants() {
    services("M1,M1,4,30,,1200,50000,");
    assertThat(arranged().services().get(0).minutes()).isEqualTo(480);
    plant.file(
        "plant.json", "{\"plan_start\": \"2026-11-30T00:00Z\", \"molds\": {\"service_h\": 4}}");
    assertThat(arranged().services().get(0).minutes()).isEqualTo(240);
  }

  @Test
  void shotsBetweenServicesMayBeThePlants() {
    services("M1,M1,4,30,,1200,,");
    assertThat(arranged().services()).isEmpty();
    assertThat(plant.notChecked())
        .containsEntry(
            "whether molds are due for service: the shots between two services are not known", 1);
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"molds\": {\"service_shots\": 90000}}");
    assertThat(arranged().services()).containsExactly(new MoldService("M1", 1200, 90_000, 480));
  }

  @Test
  void moldWithoutShotsLeftCountsAsServiced() {
    services("M1,M1,4,30,,,50000,");
    assertThat(arranged().services()).containsExactly(new MoldService("M1", 50_000, 50_000, 480));
    assertThat(plant.findings())
        .contains(
            "molds.csv:2: mold M1 has no shots_to_service; it counts as serviced when the plan starts");
  }

  @Test
  void moldPastItsServiceIsNoted() {
    services("M1,M1,4,30,,1,50000,", "M2,M2,4,30,,0,50000,", "M3,M3,4,30,,-700,50000,");
    assertThat(plant.findings())
        .filteredOn(f -> f.contains("service"))
        .containsExactly(
            "molds.csv:3: mold M2 is due for service (0 shots left); its service comes before its next run",
            "molds.csv:4: mold M3 is due for service (-700 shots left); its service comes before its next run");
    assertThat(arranged().services().get(2).shotsLeft()).isEqualTo(-700);
  }

  @Test
  void trialIsNoDowntime() {
    plant.file(
        "downtime.csv",
        "what,from,to,reason,kind,mold,setters",
        "P1,2026-12-01T06:00,2026-12-01T08:00,new gate,trial,M2,2");
    int six = SmallPlant.START + SmallPlant.DAY + 360;
    assertThat(arranged().trials())
        .containsExactly(new Trial("P1", "M2", six, six + 120, 2, "new gate", OptionalInt.empty()));
    assertThat(plant.problem().floor().downtime()).isEmpty();
  }

  @Test
  void peopleAreInNoShiftWithoutPeople() {
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"shifts\": [",
        "{\"name\": \"day\", \"days\": [\"MON\"], \"from\": \"06:00\", \"to\": \"14:00\"},",
        "{\"name\": \"ghost\", \"days\": [\"MON\"], \"from\": \"22:00\", \"to\": \"06:00\", \"unattended\": true}]}");
    plant.file("people.csv", "person", "Ada");
    assertThat(arranged().opening().unattended()).containsExactly("ghost");
    assertThat(plant.problem().plant().crew().people().orElseThrow().get(0).shifts())
        .containsExactly("day");
  }
}
