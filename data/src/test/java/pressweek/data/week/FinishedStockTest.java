package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Quantity;

class FinishedStockTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,under_pct,hold",
        "1,1,M1,100,2026-12-03,0,",
        "2,1,M1,100,2026-12-02,5,",
        "2,2,M1,100,2026-12-04,0,");
  }

  private List<Quantity> quantities() {
    Problem problem = plant.problem();
    return problem.jobs().stream().map(job -> job.quantity()).toList();
  }

  @Test
  void freePiecesServeTheEarlierDueLineFirst() {
    plant.file("stock.csv", "item,on_hand", "M1,60", "M1,70", "M2,1000");
    assertThat(quantities())
        .containsExactly(new Quantity(100, 30, 0, 70), new Quantity(100, 0, 0, 100));
    assertThat(plant.findings())
        .contains(
            "orders.csv:3: order 2/1 has its pieces: 100 from finished stock, 0 made; nothing to make");
  }

  @Test
  void reservedPiecesServeTheirOrderAlone() {
    plant.file("stock.csv", "item,on_hand,reserved_for", "M1,30,2/2", "M1,80,2", "M1,500,9");
    assertThat(quantities())
        .containsExactly(
            new Quantity(100, 0, 0, 100),
            new Quantity(100, 80, 0, 20),
            new Quantity(100, 30, 0, 70));
    assertThat(plant.findings()).anyMatch(f -> f.contains("reserved for order \"9\""));
  }

  @Test
  void reservedPiecesOfAnOrderGoToItsLinesByDueTime() {
    plant.file("stock.csv", "item,on_hand,reserved_for", "M1,120,2");
    assertThat(quantities())
        .containsExactly(new Quantity(100, 0, 0, 100), new Quantity(100, 20, 0, 80));
  }

  @Test
  void lineWithinItsToleranceNeedsNothing() {
    plant.file("stock.csv", "item,on_hand,reserved_for", "M1,95,2/1");
    assertThat(quantities()).hasSize(2);
    plant.file("stock.csv", "item,on_hand,reserved_for", "M1,94,2/1");
    assertThat(quantities()).contains(new Quantity(100, 94, 0, 6));
  }

  @Test
  void toleranceAloneNeverMakesALineDisappear() {
    plant.file("orders.csv", "order,item,quantity,due,under_pct", "1,M1,100,2026-12-03,100");
    assertThat(quantities()).containsExactly(new Quantity(100, 0, 0, 100));
  }

  @Test
  void lineOnHoldLeavesFreePiecesToTheOthers() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,hold",
        "1,M1,100,2026-12-03,",
        "2,M1,100,2026-12-02,credit");
    plant.file("stock.csv", "item,on_hand", "M1,60");
    assertThat(quantities()).containsExactly(new Quantity(100, 60, 0, 40));
    assertThat(plant.unplaced().pieces()).isEqualTo(100);
  }

  @Test
  void piecesOfTheRunInProgressCount() {
    plant.file("running.csv", "press,order,line,mold,good_made", "P1,2,1,M1,40");
    plant.file("stock.csv", "item,on_hand", "M1,10");
    assertThat(quantities().get(1)).isEqualTo(new Quantity(100, 10, 40, 50));
  }
}
