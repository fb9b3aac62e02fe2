package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SheetTest {
  @Test
  void cellsWithCommasAndQuotesAreQuoted() {
    Sheet sheet = new Sheet("a", "b");
    sheet.row("x,y", "5\" stud");
    assertThat(sheet.text()).isEqualTo("a,b\n\"x,y\",\"5\"\" stud\"\n");
  }

  @Test
  void rowOfAnotherWidthIsRefused() {
    Sheet sheet = new Sheet("a", "b");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sheet.row("x"))
        .withMessage("row of 1 cells in a sheet of 2 columns");
  }

  @Test
  void tenthsKeepTheirZero() {
    assertThat(Sheet.tenths(120)).isEqualTo("12.0");
    assertThat(Sheet.tenths(7)).isEqualTo("0.7");
  }
}
