package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("full")
class LargeFileTest {
  private static final int ROWS = 400_000;

  @TempDir private Path path;

  /** About 50 MB, every fifth row of it bad. */
  private void writeOrders() throws IOException {
    String note = "x".repeat(100);
    try (BufferedWriter out = Files.newBufferedWriter(path.resolve("orders.csv"))) {
      out.write("order,item,quantity,due,note\n");
      for (int i = 0; i < ROWS; i++) {
        String quantity = i % 5 == 0 ? "-1" : "100";
        out.write("A" + i + ",KNOB," + quantity + ",2026-12-01," + note + "\n");
      }
    }
  }

  @Test
  void aLargeFileIsReadRowByRow() throws IOException {
    PlantFolder folder = new PlantFolder(path);
    writeOrders();
    assertThat(Files.size(path.resolve("orders.csv"))).isGreaterThan(50_000_000);

    Folder read = folder.read();

    assertThat(read.demand().orders()).hasSize(ROWS - ROWS / 5);
    assertThat(read.demand().faulty()).hasSize(ROWS / 5);
    assertThat(read.findings()).hasSize(21);
    assertThat(read.findings().get(20).message())
        .isEqualTo("quantity: and 79,980 more of the same kind from here on");
  }

  @Test
  void moreRowsThanAWeekHasAreAnError() throws IOException {
    StringBuilder stock = new StringBuilder("item,on_hand\n");
    for (int i = 0; i < 500_001; i++) {
      stock.append("K,1\n");
    }

    assertThat(new PlantFolder(path).with("stock.csv", stock.toString()).findings())
        .containsExactly(
            "stock.csv:500002: the file has more than 500,000 rows; expected a week's");
  }
}
