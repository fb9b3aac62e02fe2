package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Job;
import pressweek.data.problem.Preparation;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Standing;
import pressweek.data.problem.Unplaced;

class WeekTest {
  private static final int HOUR = 60;
  private static final int WEDNESDAY = SmallPlant.START + 2 * SmallPlant.DAY;

  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
  }

  @Test
  void threeFilesMakeAWeek() {
    Job job = plant.job();
    assertThat(job.id()).isEqualTo("1/1");
    assertThat(job.resin()).isEqualTo("PP");
    assertThat(job.quantity().good()).isEqualTo(100);
    assertThat(job.options()).hasSize(2);
    assertThat(job.options().get(0).standing()).isEqualTo(Standing.UNCHECKED);
    // ceil(100 / (0.97 x 4)) = 26 shots of 30 s are 13 min, at 85 % 15.3
    assertThat(job.options().get(0).making().shots()).isEqualTo(26);
    assertThat(job.options().get(0).pace().runMin()).isEqualTo(16);
    assertThat(job.options().get(0).pace().basis()).isEqualTo("estimate: molds.csv cycle_s");
    assertThat(job.foodGrade()).isFalse();
    assertThat(job.deadline().earliestMin()).isEqualTo(SmallPlant.START);
    assertThat(job.deadline().dueMin()).isEqualTo(WEDNESDAY + 15 * HOUR);
  }

  @Test
  void orderWithoutResinAndColourIsStillPlanned() {
    plant.file("orders.csv", "order,item,quantity,due", "1,M1,100,2026-12-02");
    assertThat(plant.job().resin()).isEmpty();
    assertThat(plant.notChecked())
        .containsEntry("resin and colour changes: the order line names no resin or no colour", 1);
  }

  @Test
  void planStartsAtTheNextFullHourUnlessThePlantSaysOtherwise() {
    plant.file("plant.json", "{}");
    Problem problem = Week.build(plant.read(), PlantFolder.NOW + 1).problem().orElseThrow();
    assertThat(problem.plant().hours().startMin()).isEqualTo(PlantFolder.NOW + HOUR);
    assertThat(problem.plant().hours().endMin())
        .isEqualTo(PlantFolder.NOW + HOUR + 7 * SmallPlant.DAY);
    problem = Week.build(plant.read(), PlantFolder.NOW).problem().orElseThrow();
    assertThat(problem.plant().hours().startMin()).isEqualTo(PlantFolder.NOW);
  }

  @Test
  void horizonEndsAtTheSameLocalTimeOverAClockChange() {
    plant.file("plant.json", "{\"plan_start\": \"2026-10-19T06:00\", \"zone\": \"Europe/Berlin\"}");
    Problem problem = plant.problem();
    int minutes = problem.plant().hours().endMin() - problem.plant().hours().startMin();
    assertThat(minutes).isEqualTo(7 * SmallPlant.DAY + HOUR);
  }

  @Test
  void pressWithoutCalendarWorksAllShifts() {
    Problem problem = plant.problem();
    String calendar = problem.floor().presses().get(0).calendar();
    assertThat(problem.plant().hours().calendars())
        .filteredOn(c -> c.id().equals(calendar))
        .first()
        .satisfies(c -> assertThat(c.shifts()).containsExactly("early", "late"));
  }

  @Test
  void lineOnHoldIsUnplacedWithItsReason() {
    plant.file("orders.csv", "order,item,quantity,due,hold", "1,M1,100,2026-12-02,credit limit");
    assertThat(plant.unplaced())
        .isEqualTo(
            new Unplaced(
                "1", "1", "M1", 100, "on hold: credit limit", "lift the hold in orders.csv"));
  }

  @Test
  void unreadableLineIsUnplacedAndHidesNoOther() {
    plant.file(
        "orders.csv", "order,item,quantity,due", "1,M1,many,2026-12-02", "2,M1,100,2026-12-02");
    Problem problem = plant.problem();
    assertThat(problem.jobs()).extracting(Job::id).containsExactly("2/1");
    assertThat(problem.unplaced()).hasSize(1);
    assertThat(problem.unplaced().get(0).reason()).startsWith("orders.csv:2: ").contains("many");
  }

  @Test
  void faultInThePlantsOwnFilesMeansNoProblem() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s", "M1,M1,none,30");
    WeekResult week = plant.week();
    assertThat(week.problem()).isEmpty();
    assertThat(week.errors()).isNotEmpty();
  }

  @Test
  void faultyGuideMeansNoProblem() {
    plant.file("guide.json", "{\"schema\": \"pressweek-guide/1\"}");
    WeekResult week = plant.week();
    assertThat(week.problem()).isEmpty();
    assertThat(week.errors()).extracting(Object::toString).anyMatch(e -> e.contains("families"));
  }

  @Test
  void hoursBeforeAndAfterMoldingGoByAttributes() {
    plant.file(
        "plant.json",
        """
        {"plan_start": "2026-11-30T00:00Z",
         "shipping": {"after_molding_h": 1},
         "after_h": [{"when": {"colour": "BLK|WHT"}, "h": 24}, {"when": {"colour": "WHT"}, "h": 5}],
         "before_h": [{"when": {"resin": "PP"}, "h": 4}]}
        """);
    Job job = plant.job();
    assertThat(job.deadline().afterMin()).isEqualTo(25 * HOUR);
    assertThat(job.deadline().earliestMin()).isEqualTo(SmallPlant.START + 4 * HOUR);
  }

  @Test
  void earliestAndHoursBeforeCombineToTheLater() {
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"before_h\": [{\"when\": {\"resin\": \"PP\"}, \"h\": 4}]}");
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,earliest,weight,requested",
        "1,M1,100,2026-12-02,PP,BLK,2026-11-30T06:00Z,2.5,2026-12-01",
        "2,M1,100,2026-12-02,PP,BLK,2026-11-30T02:00Z,,");
    Problem problem = plant.problem();
    assertThat(problem.jobs().get(0).deadline().earliestMin())
        .isEqualTo(SmallPlant.START + 6 * HOUR);
    assertThat(problem.jobs().get(0).deadline().weightHundredths()).isEqualTo(250);
    assertThat(problem.jobs().get(0).line().requestedMin())
        .isEqualTo(SmallPlant.START + SmallPlant.DAY + 15 * HOUR);
    assertThat(problem.jobs().get(1).deadline().earliestMin())
        .isEqualTo(SmallPlant.START + 4 * HOUR);
    assertThat(problem.jobs().get(1).line().requestedMin()).isEqualTo(WEDNESDAY + 15 * HOUR);
  }

  @Test
  void cartonMultipleRoundsUp() {
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"run\": {\"carton_multiple\": 48}}");
    assertThat(plant.job().quantity().good()).isEqualTo(144);
  }

  @Test
  void resinThatIsNotAmongTheResinsLeavesTheLineUnplaced() {
    plant.file("resins.csv", "resin", "PPS");
    assertThat(plant.unplaced().reason())
        .isEqualTo("resin \"PP\" is not in resins.csv; nearest: PPS");
  }

  @Test
  void lightnessIsRankBeforeScreenColour() {
    plant.file(
        "colours.csv", "resin,colour,srgb,rank", ",WHT,FFFFFF,", "PP,RED,FF0000,30", ",BLK,,");
    Problem problem = plant.problem();
    assertThat(problem.materials().colours().get(0).lightness().orElseThrow()).isEqualTo(100);
    assertThat(problem.materials().colours().get(1).lightness().orElseThrow()).isEqualTo(70);
    assertThat(problem.materials().colours().get(2).lightness()).isEmpty();
    assertThat(plant.notChecked())
        .containsEntry("colour change minutes: a lightness is not known", 1);
  }

  @Test
  void preparationIsWhatResinsColoursAndDryersSay() {
    plant.file("resins.csv", "resin,dry_h,dry_c,dry_max_h,bulk_density_kg_l", "PP,3,80,12,0.55");
    plant.file("colours.csv", "colour,masterbatch,let_down_pct", "BLK,MB-BLK,25:1", "NAT,,0");
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn,dryer",
        "P1,horizontal,900,D1",
        "P2,vertical,600,");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D1,40,P2");
    Preparation kept = plant.problem().materials().preparation().orElseThrow();
    assertThat(kept.granules("PP"))
        .contains(
            new Granules(
                "PP",
                OptionalDouble.of(3),
                OptionalDouble.of(80),
                OptionalDouble.of(12),
                OptionalDouble.of(0.55)));
    assertThat(kept.masterbatch("PP", "BLK").orElseThrow().letDownPct().orElseThrow())
        .isCloseTo(100.0 / 26, within(1e-9));
    assertThat(kept.masterbatch("PP", "RED")).isEmpty();
    assertThat(kept.dryer("P2"))
        .contains(new Dryer("D1", OptionalDouble.of(40), List.of("P2", "P1")));
    assertThat(kept.coldStartH()).isEqualTo(1);
  }

  @Test
  void dryerThatOnlyAPressNamesHasNoHopper() {
    plant.file("presses.csv", "press,orientation,clamp_kn,dryer", "P1,horizontal,900,D7");
    Preparation kept = plant.problem().materials().preparation().orElseThrow();
    assertThat(kept.dryers())
        .containsExactly(new Dryer("D7", OptionalDouble.empty(), List.of("P1")));
    assertThat(kept.granules("PP")).isEmpty();
  }

  @Test
  void everythingAJobNamesExists() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert",
        "1,M1,9,2026-12-02,PP,BLK,I1*2");
    Problem problem = plant.problem();
    assertThat(problem.materials().resins()).extracting("id").containsExactly("PP");
    assertThat(problem.materials().colours()).extracting("id").containsExactly("BLK");
    assertThat(problem.materials().inserts()).extracting("id").containsExactly("I1");
    assertThat(problem.materials().stock().checked()).isFalse();
  }
}
