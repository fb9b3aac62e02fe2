package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/** Items that are molded over a core. */
class CoreLinesTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,resin,colour,mold",
        "1,10,GRIP,97,2026-12-02,TPE,RED,");
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hand_load,dummy_plugs",
        "MC,CORE,2,30,,no,no",
        "MG,GRIP,1,60,,yes,no");
    plant.file("stages.csv", "item,core,rest_h", "GRIP,CORE,4");
    plant.file(
        "bom.csv",
        "item,component,pieces,kind,attribute,value",
        "CORE,I1,1,insert,,",
        "CORE,,,,resin,PA",
        "CORE,,,,colour,BLK");
    plant.file("inserts.csv", "insert,kind,thread,length_mm", "I1,stud,M8,30");
  }

  private Job job(int part) {
    return plant.problem().jobs().get(part - 1);
  }

  @Test
  void lineBecomesItsCoreAndThenTheItem() {
    Problem problem = plant.problem();
    assertThat(problem.unplaced()).isEmpty();
    assertThat(problem.jobs()).extracting(Job::id).containsExactly("1/10/1", "1/10/2");
    assertThat(problem.jobs()).extracting(j -> j.item().code()).containsExactly("CORE", "GRIP");
    assertThat(problem.jobs()).extracting(Job::resin).containsExactly("PA", "TPE");
    assertThat(problem.jobs()).extracting(Job::colour).containsExactly("BLK", "RED");
    assertThat(problem.arranged().links()).containsExactly(new Link("1/10/2", "1/10/1", 240));
  }

  @Test
  void coresAreAsManyAsTheSecondRunMolds() {
    // 97 / 0.97 = 100 shots of one, and 10 start-up shots
    assertThat(job(2).quantity()).isEqualTo(new Quantity(97, 0, 0, 97));
    assertThat(job(1).quantity()).isEqualTo(new Quantity(110, 0, 0, 110));
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hand_load,dummy_plugs",
        "MC,CORE,2,30,,no,no",
        "MG,GRIP,1,60,,yes,yes");
    assertThat(job(1).quantity().good()).isEqualTo(100);
  }

  @Test
  void insertIsInTheCoreAndTheSecondRunLoadsTheCore() {
    assertThat(job(1).options().get(0).making().takes())
        .extracting(Take::insert)
        .containsExactly("I1");
    Option second = job(2).options().get(0);
    assertThat(second.making().takes()).isEmpty();
    // 60 s, then 5 s to unload and 3 s for the core
    assertThat(second.pace().cycleMillis()).isEqualTo(68_000);
  }

  @Test
  void insertThatTheOrderNamesIsInTheCoreAndItsMoldIsTheItems() {
    plant.file("inserts.csv", "insert,kind,thread", "I1,stud,M8", "I2,stud,M8");
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,resin,colour,mold,insert",
        "1,10,GRIP,97,2026-12-02,TPE,RED,MG,I2");
    assertThat(job(1).options().get(0).making().takes())
        .extracting(Take::insert)
        .containsExactly("I2");
    assertThat(job(1).options().get(0).mold()).isEqualTo("MC");
    assertThat(job(2).options().get(0).making().takes()).isEmpty();
  }

  @Test
  void secondRunTakesAnInsertThatItsOwnRecordNames() {
    plant.file("bom.csv", "item,component,pieces,kind", "CORE,I1,1,insert", "GRIP,I1,2,insert");
    assertThat(job(2).options().get(0).making().takes())
        .extracting(Take::insert)
        .containsExactly("I1");
  }

  @Test
  void latenessOfTheCoreIsNotCharged() {
    Deadline core = job(1).deadline();
    Deadline item = job(2).deadline();
    assertThat(core.weightHundredths()).isZero();
    assertThat(item.weightHundredths()).isEqualTo(100);
    int run = job(2).options().get(0).pace().runMin();
    assertThat(core.dueMin()).isEqualTo(item.dueMin() - run - 240);
  }

  @Test
  void finishedCoresAreTakenOff() {
    plant.file("stock.csv", "item,on_hand", "CORE,30");
    assertThat(job(1).quantity()).isEqualTo(new Quantity(110, 30, 0, 80));
    plant.file("stock.csv", "item,on_hand", "CORE,110");
    assertThat(plant.problem().jobs()).extracting(Job::id).containsExactly("1/10/2");
    assertThat(plant.problem().arranged().links()).isEmpty();
  }

  @Test
  void lineStaysUnplacedOnceWhenAPartCannotBeMade() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "MG,GRIP,1,60,");
    assertThat(plant.unplaced().id()).isEqualTo("1/10");
    assertThat(plant.unplaced().pieces()).isEqualTo(97);
    assertThat(plant.unplaced().reason()).isEqualTo("core CORE: no mold makes item CORE");
    assertThat(plant.problem().jobs()).isEmpty();
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "MC,CORE,1,60,");
    assertThat(plant.unplaced().reason()).isEqualTo("no mold makes item GRIP");
  }

  @Test
  void whatRunsIsSaidByItsPart() {
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,10,MC,20");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .containsExactly(
            "running.csv:2: order 1/10 is made in two parts; expected line 10/1 or 10/2");
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,10/1,MC,20");
    assertThat(job(1).quantity()).isEqualTo(new Quantity(110, 0, 20, 90));
    assertThat(job(1).options()).hasSize(1);
    assertThat(job(2).quantity().good()).isEqualTo(97);
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,1,10/2,MG,20");
    assertThat(plant.problem().jobs()).extracting(Job::id).containsExactly("1/10/2");
    assertThat(job(1).quantity()).isEqualTo(new Quantity(97, 0, 20, 77));
  }

  @Test
  void promiseIsOfAPart() {
    plant.file("promised.csv", "order,line,press,start", "1,10,P1,2026-11-30T08:00Z");
    assertThat(plant.findings())
        .contains(
            "promised.csv:2: order 1/10 is made in two parts, 10/1 and 10/2; expected one of them; the promise is left out");
    plant.file("promised.csv", "order,line,press,start", "1,10/2,P1,2026-11-30T08:00Z");
    assertThat(plant.problem().floor().promises())
        .containsExactly(new Promise("1/10/2", "P1", SmallPlant.START + 480));
  }

  @Test
  void lotOfTheLineServesThePartThatTakesIt() {
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,L1,40,1/10", "I1,L2,500,");
    Problem problem = plant.problem();
    assertThat(job(1).options().get(0).making().takes().get(0).reservedPieces()).isEqualTo(40);
    assertThat(problem.materials().stock().lots())
        .extracting(Lot::reservedFor)
        .containsExactly("1/10/1", "");
    assertThat(plant.findings()).noneMatch(f -> f.contains("reserved"));
  }

  @Test
  void coreOverACoreIsAnError() {
    plant.file("stages.csv", "item,core", "GRIP,CORE", "CORE,BUSH");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .containsExactly(
            "stages.csv:2: core \"CORE\" is itself molded over a core, by line 3; expected one that is molded at once");
  }

  @Test
  void otherItemsAreMoldedAtOnce() {
    plant.file("stages.csv", "item,core", "OTHER,CORE");
    assertThat(plant.problem().jobs()).extracting(Job::id).containsExactly("1/10");
    assertThat(plant.problem().arranged().links()).isEmpty();
  }
}
