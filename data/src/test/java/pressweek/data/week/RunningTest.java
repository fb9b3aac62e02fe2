package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/** Presses as they stand, promises, downtime. */
class RunningTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file("inserts.csv", "insert,kind,thread", "I1,blind,M8");
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert,needs",
        "1,M1,100,2026-12-02,PP,BLK,I1,");
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,orientation",
        "M1,M1,4,30,,vertical",
        "M2,M2,4,30,,");
  }

  @Test
  void whatIsRunningStaysOnItsPressWhateverTheChecksSay() {
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,1,M1,20");
    Job job = plant.job();
    assertThat(job.options()).hasSize(1);
    assertThat(job.options().get(0).press()).isEqualTo("P1");
    assertThat(job.options().get(0).notes()).containsExactly("running there now");
    assertThat(job.quantity().good()).isEqualTo(80);
    assertThat(plant.problem().floor().states())
        .containsExactly(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, "1/1"));
  }

  @Test
  void runInProgressHasItsInsertsUnlessTheRowCountsThem() {
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,1,M1,20");
    assertThat(plant.job().options().get(0).making().takes()).isEmpty();
    plant.file(
        "running.csv", "press,order,line,mold,good_made,inserts_at_press", "P1,1,1,M1,20,50");
    // 21 shots of 4 are 84 parts; 84 / 0.995 = 84.4, and 5 samples: 90 less 50
    assertThat(plant.job().options().get(0).making().takes())
        .containsExactly(new Take("I1", 40, 0, 0));
  }

  @Test
  void orderCountsBeforeWhatTheRowSaysOfTheBarrel() {
    plant.file("running.csv", "press,order,line,mold,resin,colour", "P1,1,1,M1,ABS,BLK");
    assertThat(plant.findings())
        .contains(
            "running.csv:2: resin is \"ABS\", but order 1/1 runs in \"PP\"; the order counts");
    assertThat(plant.problem().floor().states().get(0).setup().resin()).isEqualTo("PP");
  }

  @Test
  void runThatHasMadeItsPiecesLeavesItsMoldInThePress() {
    plant.file("running.csv", "press,order,line,mold,good_made,resin", "P1,1,1,M1,100,PP");
    assertThat(plant.problem().jobs()).isEmpty();
    assertThat(plant.problem().floor().states())
        .containsExactly(new PressState("P1", new Setup("M1", "", "PP", ""), false, ""));
  }

  @Test
  void moldOrOrderOnTwoPressesIsAnError() {
    plant.file("running.csv", "press,order,line,mold", "P1,1,1,M1", "P2,1,1,M1");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .containsExactly(
            "running.csv:3: mold M1 is on P2 and, by line 2, on P1; expected one press",
            "running.csv:3: order 1/1 is on P2 and, by line 2, on P1; expected one press");
    assertThat(plant.week().problem()).isEmpty();
  }

  @Test
  void foodOrderOnAPressThatIsNotClearedIsUnplaced() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,needs",
        "1,M1,100,2026-12-02,PP,BLK,food");
    plant.file("records.csv", "what,for", "PP,food", "BLK,food");
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn,food",
        "P1,horizontal,900,kept",
        "P2,vertical,600,");
    plant.file("running.csv", "press,order,line,mold", "P1,1,1,M1");
    assertThat(plant.unplaced().reason()).contains("not cleared for food-grade work");
    plant.file("running.csv", "press,order,line,mold,cleared_for_food", "P1,1,1,M1,yes");
    assertThat(plant.job().foodGrade()).isTrue();
  }

  @Test
  void promiseThatCanBeKeptIsKept() {
    plant.file("promised.csv", "order,press,start", "1,P2,2026-11-30T08:00Z");
    assertThat(plant.problem().floor().promises())
        .containsExactly(new Promise("1/1", "P2", SmallPlant.START + 8 * 60));
  }

  @Test
  void promiseThatCannotBeKeptIsLeftOutWithAWarning() {
    plant.file("promised.csv", "order,press,start", "1,P1,2026-11-30T08:00Z");
    assertThat(plant.problem().floor().promises()).isEmpty();
    assertThat(plant.findings()).anyMatch(f -> f.contains("where none of its molds may run"));
    plant.file("promised.csv", "order,press,start", "1,P2,2026-11-29T22:59Z");
    assertThat(plant.problem().floor().promises()).isEmpty();
    assertThat(plant.findings()).anyMatch(f -> f.contains("was promised for 2026-11-29 22:59"));
    plant.file("promised.csv", "order,press,start", "1,P2,2026-11-29T23:00Z");
    assertThat(plant.problem().floor().promises()).hasSize(1);
  }

  @Test
  void promisedLineHasHadItsHoursBeforeMolding() {
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"before_h\": [{\"when\": {\"resin\": \"PP\"}, \"h\": 4}]}");
    assertThat(plant.job().deadline().earliestMin()).isEqualTo(SmallPlant.START + 240);
    plant.file("promised.csv", "order,press,start", "1,P2,2026-11-30T01:00Z");
    assertThat(plant.job().deadline().earliestMin()).isEqualTo(SmallPlant.START);
  }

  @Test
  void pressesAndMoldsGoAway() {
    plant.file(
        "downtime.csv",
        "what,from,to,reason",
        "P1,2026-12-01,2026-12-02,oil",
        "M2,2026-12-01T06:00,2026-12-01T08:00,polish");
    int tuesday = SmallPlant.START + SmallPlant.DAY;
    assertThat(plant.problem().floor().downtime())
        .isEqualTo(
            List.of(
                new Downtime(Downtime.Kind.PRESS, "P1", tuesday, tuesday + SmallPlant.DAY, "oil"),
                new Downtime(Downtime.Kind.MOLD, "M2", tuesday + 360, tuesday + 480, "polish")));
  }
}
