package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTHeaderFooter;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

/** Workbooks read back by a reader that shares nothing with the one that wrote them. */
class PlanWorkbookTest {
  private static final String MONDAY = "2026-11-30T";

  private static Plan small() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "10:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "13:00")
            .pull("R1", "V1", MONDAY + "07:30", "S0825");
    plan.replaces = "2026-W49/2";
    return plan.plan();
  }

  private static XSSFWorkbook read(Edition edition) throws IOException {
    byte[] bytes = PlanWorkbook.bytes(edition, PlanLists.of(edition));
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  private static XSSFWorkbook read(Plan plan) throws IOException {
    return read(
        new Edition(
            PlanBook.of(plan), Handover.none(), List.of(), SampleWeek.at(MONDAY + "05:45")));
  }

  private static Cell cell(XSSFSheet sheet, int row, String column) {
    for (Cell head : sheet.getRow(0)) {
      if (head.getStringCellValue().equals(column)) {
        return sheet.getRow(row).getCell(head.getColumnIndex());
      }
    }
    throw new AssertionError("no column " + column);
  }

  @Test
  void sheetsAreTheFirstOneAndTheLists() throws IOException {
    List<String> names = new ArrayList<>();
    read(small()).forEach(s -> names.add(s.getSheetName()));
    assertThat(names)
        .containsExactly(
            "plan", "schedule", "pulls", "shortages", "changes", "unplaced", "handover");
  }

  @Test
  void numbersAreNumbersAndTimesAreDatesOfThePlant() throws IOException {
    XSSFSheet schedule = read(small()).getSheet("schedule");
    assertThat(cell(schedule, 1, "quantity").getCellType()).isEqualTo(CellType.NUMERIC);
    assertThat(cell(schedule, 1, "quantity").getNumericCellValue()).isEqualTo(500);
    assertThat(cell(schedule, 1, "late_min").getNumericCellValue()).isEqualTo(180);
    Cell start = cell(schedule, 1, "run_start");
    assertThat(DateUtil.isCellDateFormatted(start)).isTrue();
    assertThat(start.getLocalDateTimeCellValue()).isEqualTo(LocalDateTime.parse(MONDAY + "08:00"));
    assertThat(cell(schedule, 1, "order").getCellType()).isEqualTo(CellType.STRING);
    assertThat(cell(schedule, 1, "order").getStringCellValue()).isEqualTo("4711");
  }

  @Test
  void headerStaysInSightAndFilters() throws IOException {
    for (var each : read(small())) {
      XSSFSheet sheet = (XSSFSheet) each;
      if (!sheet.getSheetName().equals("plan")) {
        assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
        assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
        String filtered = sheet.getCTWorksheet().getAutoFilter().getRef();
        assertThat(filtered).startsWith("A1:");
        assertThat(sheet.getRepeatingRows().getFirstRow()).isZero();
        assertThat(sheet.getColumnWidth(0)).isBetween(4 * 256, 60 * 256);
      }
    }
  }

  @Test
  void firstSheetSaysWhoThePlanIs() throws IOException {
    XSSFSheet first = read(small()).getSheet("plan");
    List<String> labels = new ArrayList<>();
    for (Row row : first) {
      Cell label = row.getCell(0);
      labels.add(label == null ? "" : label.getStringCellValue());
    }
    assertThat(labels.subList(0, 6))
        .containsExactly("plan", "plant", "replaces", "made", "written", "times");
    assertThat(labels)
        .contains("caution", "in short")
        .doesNotContain("BREAKS HARD RULES, do not run");
    assertThat(first.getRow(0).getCell(1).getStringCellValue()).isEqualTo("2026-W49/3");
    assertThat(first.getRow(2).getCell(1).getStringCellValue()).isEqualTo("2026-W49/2");
    assertThat(first.getRow(4).getCell(1).getLocalDateTimeCellValue())
        .isEqualTo(LocalDateTime.parse(MONDAY + "05:45"));
    assertThat(first.getRow(5).getCell(1).getStringCellValue()).contains("Europe/Amsterdam");
  }

  @Test
  void everySheetOnPaperBearsThePlanNumberAndTheTimeOfPrint() throws IOException {
    for (var each : read(Edition.first(small(), List.of("PRESS_ONCE: V1 runs two at once")))) {
      assertThat(each.getHeader().getLeft())
          .endsWith("Plan 2026-W49/3, replaces 2026-W49/2 - BREAKS HARD RULES, do not run");
      assertThat(each.getHeader().getRight()).endsWith("printed &D &T");
      CTHeaderFooter raw = ((XSSFSheet) each).getCTWorksheet().getHeaderFooter();
      assertThat(raw.getOddHeader().length()).isLessThanOrEqualTo(255);
      assertThat(raw.getOddFooter().length()).isLessThanOrEqualTo(255);
    }
  }

  @Test
  void noCellIsAFormulaWhateverTheFieldsHold() throws IOException {
    for (String hostile : List.of("=1+", "+", "@", "\t", "\u0000\uD800&<", "=\r\n&P\"")) {
      XSSFWorkbook book = read(Hostile.of(small(), hostile));
      for (var sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
            if (cell.getCellType() == CellType.STRING) {
              String text = cell.getStringCellValue();
              assertThat(text.matches("[+]\\d+") || !text.matches("(?s)[=+@\\t].*"))
                  .as(text)
                  .isTrue();
            }
          }
        }
      }
    }
  }

  @Test
  void largeAndEmptyPlansAreWorkbooks() throws IOException {
    assertThat(read(SamplePlan.of(14, 150)).getSheet("schedule").getLastRowNum()).isEqualTo(150);
    XSSFWorkbook empty = read(SamplePlan.empty());
    assertThat(empty.getSheet("schedule").getLastRowNum()).isZero();
    assertThat(empty.getNumberOfSheets()).isEqualTo(7);
  }
}
