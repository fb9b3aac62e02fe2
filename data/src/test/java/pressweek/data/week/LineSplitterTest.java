package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Job;
import pressweek.data.problem.Quantity;

/** Lines that are made in two parts since they take long. */
class LineSplitterTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,1,30,", "M2,M1,1,30,");
    orders(3000, 1, "");
    over("29");
  }

  private void orders(int quantity, double weight, String hold) {
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,resin,colour,weight,hold",
        "1,5,M1,%d,2026-12-02,PP,BLK,%s,%s".formatted(quantity, weight, hold));
  }

  private void over(String hours, String... more) {
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"split\": {\"over_h\": "
            + hours
            + "}"
            + String.join("", more)
            + "}");
  }

  private List<Job> jobs() {
    return plant.problem().jobs();
  }

  private void whole() {
    assertThat(jobs()).extracting(Job::id).containsExactly("1/5");
  }

  @Test
  void longLineIsMadeInTwoParts() {
    assertThat(jobs()).extracting(Job::id).containsExactly("1/5/1", "1/5/2");
    assertThat(jobs())
        .extracting(Job::quantity)
        .containsExactly(new Quantity(1500, 0, 0, 1500), new Quantity(1500, 0, 0, 1500));
    assertThat(jobs()).extracting(j -> j.line().quantity()).containsExactly(1500, 1500);
    assertThat(jobs()).extracting(j -> j.deadline().weightHundredths()).containsExactly(50, 50);
    assertThat(jobs().get(0).deadline().dueMin()).isEqualTo(jobs().get(1).deadline().dueMin());
    assertThat(plant.problem().arranged().links()).isEmpty();
    assertThat(plant.notChecked()).containsEntry("cycles are estimates, not recorded ones", 1);
  }

  @Test
  void runOfExactlyTheHoursStaysWhole() {
    // 3093 shots of 30 s at 85 % are 1820 minutes
    over("30.34");
    whole();
    over("30.33");
    assertThat(jobs()).hasSize(2);
    over("0");
    whole();
  }

  @Test
  void lineOfOneMoldStaysWhole() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,1,30,");
    whole();
  }

  @Test
  void lineThatRunsOrIsPromisedStaysWhole() {
    plant.file("running.csv", "press,order,line,mold", "P1,1,5,M1");
    whole();
    plant.file("running.csv", "press,order,line,mold");
    plant.file("promised.csv", "order,line,press,start", "1,5,P1,2026-11-30T08:00Z");
    whole();
  }

  @Test
  void lineWithLotsOfItsOwnStaysWhole() {
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,L1,40,1/5");
    whole();
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,L1,40,1");
    whole();
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,L1,40,2");
    assertThat(jobs()).hasSize(2);
  }

  @Test
  void partsAreFullCartonsAndHalfOfAnOddWeightIsRoundedUp() {
    orders(3000, 0.05, "");
    over("29", ", \"run\": {\"carton_multiple\": 700}");
    assertThat(jobs()).extracting(j -> j.quantity().good()).containsExactly(2100, 1400);
    assertThat(jobs()).extracting(j -> j.quantity().ordered()).containsExactly(1600, 1400);
    assertThat(jobs()).extracting(j -> j.deadline().weightHundredths()).containsExactly(3, 3);
    over("29", ", \"run\": {\"carton_multiple\": 5000}");
    whole();
  }

  @Test
  void lineStaysInPartsWhenOneOfThemRuns() {
    over("100");
    whole();
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,5/2,M2,400");
    assertThat(jobs()).extracting(Job::id).containsExactly("1/5/1", "1/5/2");
    assertThat(jobs())
        .extracting(Job::quantity)
        .containsExactly(new Quantity(1500, 0, 0, 1500), new Quantity(1500, 0, 400, 1100));
    assertThat(jobs().get(1).options()).hasSize(1);
    assertThat(plant.problem().floor().states().get(0).job()).isEqualTo("1/5/2");
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,5/2,M2,1500");
    assertThat(jobs()).extracting(Job::id).containsExactly("1/5/1");
  }

  @Test
  void lineThatIsCalledAsAPartIsAnError() {
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,resin,colour",
        "1/5,2,M1,100,2026-12-02,PP,BLK",
        "1,5,M1,3000,2026-12-02,PP,BLK");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .containsExactly(
            "orders.csv:2: order 1/5/2 is a line and a part of another line; expected order and line numbers that differ");
  }

  @Test
  void lineOnHoldIsUnplacedOnce() {
    orders(3000, 1, "drawing");
    assertThat(plant.unplaced().id()).isEqualTo("1/5");
  }
}
