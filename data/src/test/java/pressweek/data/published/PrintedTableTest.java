package pressweek.data.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintedTableTest {
  private static List<List<String>> rows(String file) {
    return PrintedTable.rows(PrintedTableTest.class, file);
  }

  @Test
  void rowsComeWithoutRemarksAndHeader() {
    assertThat(rows("good.csv")).containsExactly(List.of("#4", "1"), List.of("2", ""));
  }

  @Test
  void rowWithAnotherNumberOfCellsIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> rows("uneven.csv"))
        .withMessage("uneven.csv: [1, 2, 3] has 3 cells; expected 2");
  }

  @Test
  void missingTableIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> rows("none.csv"))
        .withMessageContaining("none.csv");
  }
}
