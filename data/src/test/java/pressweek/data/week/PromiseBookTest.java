package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Promise;
import pressweek.data.problem.SmallPlant;

/** Promises that contradict each other, or what is known of their press. */
class PromiseBookTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour",
        "1,M1,970,2026-12-02,PP,BLK",
        "2,M1,970,2026-12-02,PP,BLK");
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,1,51,", "M2,M1,1,51,");
    // a run is 1000 shots of 51 s at 85 %: 1000 minutes
  }

  private void promised(String... rows) {
    String[] lines = new String[rows.length + 1];
    lines[0] = "order,press,start";
    System.arraycopy(rows, 0, lines, 1, rows.length);
    plant.file("promised.csv", lines);
  }

  private List<String> kept() {
    return plant.problem().floor().promises().stream().map(Promise::job).toList();
  }

  private List<String> warnings() {
    return plant.findings().stream().filter(f -> f.startsWith("promised.csv")).toList();
  }

  @Test
  void secondPromiseOfALineIsLeftOut() {
    promised("1,P1,2026-11-30T08:00Z", "1,P2,2026-11-30T09:00Z");
    assertThat(warnings())
        .containsExactly(
            "promised.csv:3: order 1/1 is promised to P2, and by line 2 to P1; the promise is left out");
    assertThat(plant.problem().floor().promises())
        .containsExactly(new Promise("1/1", "P1", SmallPlant.START + 480));
  }

  @Test
  void lineThatRunsElsewhereKeepsItsPress() {
    plant.file("running.csv", "press,order,mold", "P1,1,M1");
    promised("1,P1,2026-11-30T00:00Z");
    assertThat(warnings()).isEmpty();
    promised("1,P2,2026-11-30T00:00Z");
    assertThat(warnings())
        .containsExactly(
            "promised.csv:2: order 1/1 is promised to P2, but running.csv:2 says that it is running on P1; the promise is left out");
    assertThat(kept()).isEmpty();
  }

  @Test
  void pressThatIsDownAtEveryStartCannotKeepIt() {
    promised("1,P1,2026-11-30T08:00Z");
    plant.file("downtime.csv", "what,from,to", "P1,2026-11-30T08:00Z,2026-11-30T09:00Z");
    assertThat(kept()).containsExactly("1/1");
    plant.file("downtime.csv", "what,from,to", "P1,2026-11-30T08:00Z,2026-11-30T09:01Z");
    assertThat(kept()).isEmpty();
    assertThat(warnings())
        .containsExactly(
            "promised.csv:2: order 1/1 is promised to P1 for 2026-11-30 08:00 to 2026-11-30 09:00, and by downtime.csv:2 the press is down all that time; the promise is left out");
    plant.file("downtime.csv", "what,from,to", "P1,2026-11-30T08:01Z,2026-11-30T19:00Z");
    assertThat(kept()).containsExactly("1/1");
    plant.file("downtime.csv", "what,from,to", "P2,2026-11-30T06:00Z,2026-11-30T19:00Z");
    assertThat(kept()).containsExactly("1/1");
    plant.file(
        "downtime.csv",
        "what,from,to,kind,mold",
        "P1,2026-11-30T06:00Z,2026-11-30T19:00Z,trial,M2");
    assertThat(kept()).isEmpty();
  }

  @Test
  void promisesThatOverlapBeyondDoubtAreNotBothKept() {
    // from 08:00 a run lasts until 00:40, and the second may start an hour later than promised
    promised("2,P1,2026-11-30T23:40Z", "1,P1,2026-11-30T08:00Z");
    assertThat(kept()).containsExactly("2/1", "1/1");
    assertThat(warnings()).isEmpty();
    promised("2,P1,2026-11-30T23:39Z", "1,P1,2026-11-30T08:00Z");
    assertThat(kept()).containsExactly("1/1");
    assertThat(warnings())
        .containsExactly(
            "promised.csv:2: order 2/1 is promised to P1 for 2026-11-30 23:39, and the run of promised.csv:3 holds the press until 2026-12-01 00:40 at least; the promise is left out");
    promised("2,P2,2026-11-30T23:39Z", "1,P1,2026-11-30T08:00Z");
    assertThat(kept()).hasSize(2);
  }

  @Test
  void promiseBehindWhatRunsNeedsItsEnd() {
    plant.file("running.csv", "press,order,mold", "P1,2,M2");
    promised("1,P1,2026-11-30T15:40Z");
    assertThat(kept()).containsExactly("1/1");
    promised("1,P1,2026-11-30T15:39Z");
    assertThat(kept()).isEmpty();
    assertThat(warnings())
        .singleElement()
        .asString()
        .contains("the run of running.csv:2 holds the press until 2026-11-30 16:40");
  }
}
