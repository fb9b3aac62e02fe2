package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders that come as a workbook. Day 46357 of its calendar is 2026-12-01. */
class WorkbookTest {
  @TempDir private Path path;
  private PlantFolder folder;

  @BeforeEach
  void withoutCsv() {
    folder = new PlantFolder(path).without("orders.csv");
  }

  private static Workbook header() {
    return new Workbook()
        .row(
            1,
            Workbook.text("A1", "Order"),
            Workbook.text("B1", "item"),
            Workbook.text("C1", "quantity"),
            Workbook.text("D1", "due"),
            Workbook.text("E1", "note"));
  }

  private static String order(int row, String due) {
    return Workbook.number("A" + row, "4711.0")
        + Workbook.text("B" + row, " KNOB ")
        + Workbook.number("C" + row, "1200.0")
        + due;
  }

  private OrderRow read(Workbook workbook) {
    Folder read = folder.with("orders.xlsx", workbook.bytes()).read();
    assertThat(read.findings()).isEmpty();
    assertThat(read.inputs()).containsKey("orders.xlsx");
    assertThat(read.has(InputFile.ORDERS)).isTrue();
    return read.demand().orders().get(0);
  }

  @Test
  void numbersAndDatesAreWhatTheyShow() {
    OrderRow order = read(header().row(3, order(3, Workbook.styled("D3", 1, "46357"))));

    assertThat(order.at()).isEqualTo(new At("orders.xlsx", 3));
    assertThat(order.order()).isEqualTo("4711");
    assertThat(order.item()).isEqualTo("KNOB");
    assertThat(order.quantity()).isEqualTo(1200);
    assertThat(order.due()).isEqualTo(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void aDateWithATimeIsATime() {
    OrderRow order = read(header().row(2, order(2, Workbook.styled("D2", 2, "46357.60416666666"))));

    assertThat(order.due()).isEqualTo(new When.Local(LocalDateTime.of(2026, 12, 1, 14, 30)));
  }

  @Test
  void aFormatOfTheUsersOwnIsADate() {
    assertThat(read(header().row(2, order(2, Workbook.styled("D2", 3, "46357")))).due())
        .isEqualTo(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void daysMayBeCountedFrom1904() {
    assertThat(read(header().from1904().row(2, order(2, Workbook.styled("D2", 1, "44895")))).due())
        .isEqualTo(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void aFormulaIsItsValue() {
    String cell = "<c r=\"D2\" s=\"1\"><f>A1+1</f><v>46357</v></c>";

    assertThat(read(header().row(2, order(2, cell))).due())
        .isEqualTo(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void aDateAsTextIsRead() {
    assertThat(read(header().row(2, order(2, Workbook.text("D2", "2026-12-01")))).due())
        .isEqualTo(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void aWorkbookWithoutStylesIsRead() {
    assertThat(
            read(header().withoutStyles().row(2, order(2, Workbook.text("D2", "2026-12-01"))))
                .quantity())
        .isEqualTo(1200);
  }

  @Test
  void aNumberIsNoDateAndAWordInAFormatMakesItNone() {
    folder.with(
        "orders.xlsx",
        header()
            .row(2, order(2, Workbook.number("D2", "46357")))
            .row(3, order(3, Workbook.styled("D3", 4, "46357")))
            .row(4, order(4, "<c r=\"D4\" t=\"e\"><v>#N/A</v></c>"))
            .bytes());

    assertThat(folder.findings())
        .containsExactly(
            "orders.xlsx:2: due \"46357\" is not a date; expected yyyy-MM-dd",
            "orders.xlsx:3: due \"46357\" is not a date; expected yyyy-MM-dd",
            "orders.xlsx:4: due \"#N/A\" is not a date; expected yyyy-MM-dd");
  }

  @Test
  void aTornSheetLeavesTheRowsBefore() {
    byte[] bytes =
        header()
            .row(2, order(2, Workbook.styled("D2", 1, "46357")))
            .raw("<row r=\"3\"><c t=\"q\"/>")
            .bytes();
    Folder read = folder.with("orders.xlsx", bytes).read();

    assertThat(read.demand().orders()).hasSize(1);
    assertThat(read.findings()).hasSize(1);
    assertThat(read.findings().get(0).toString())
        .startsWith("orders.xlsx:3: the sheet cannot be read from here on");
  }

  @Test
  void aWorkbookCutOffAnywhereThrowsNothing() {
    byte[] whole = header().row(2, order(2, Workbook.styled("D2", 1, "46357"))).bytes();
    for (int length = 0; length < whole.length; length += 13) {
      folder.with("orders.xlsx", Arrays.copyOf(whole, length));
      assertThat(folder.read().errors()).isNotEmpty();
    }
  }
}
