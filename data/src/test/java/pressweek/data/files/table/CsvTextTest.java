package pressweek.data.files.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells exchanged in a text, held against what the reader of the folder makes of it. */
final class CsvTextTest {
  private static final int TABLES = 400;
  private static final List<String> CELLS =
      List.of(
          "a", "", " b ", "\"c\"", "\"d;,e\"", "\"f\"\"g\"", "\"two\nlines\"", "4,5", "\"\"", "ü");

  private static List<RawLine.Cells> read(String text) throws IOException {
    List<RawLine.Cells> rows = new ArrayList<>();
    try (CsvTable table = CsvTable.of(new StringReader(text))) {
      for (Optional<RawLine> row = table.next(); row.isPresent(); row = table.next()) {
        rows.add((RawLine.Cells) row.get());
      }
    }
    return rows;
  }

  private static String drawn(Random random) {
    char separator = ",;\t".charAt(random.nextInt(3));
    String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    StringBuilder text = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
    if (random.nextInt(4) == 0) {
      text.append("sep=").append(separator).append(end);
    }
    text.append("one").append(separator).append("two").append(separator).append("three");
    for (int row = 0; row < random.nextInt(5); row++) {
      text.append(end).append(random.nextInt(4) == 0 ? end : "");
      for (int i = 0; i < 3; i++) {
        String cell = CELLS.get(random.nextInt(CELLS.size()));
        boolean bare = cell.indexOf(separator) >= 0 && !cell.startsWith("\"");
        text.append(i == 0 ? "" : separator).append(bare ? "x" : cell);
      }
    }
    return text.append(random.nextBoolean() ? end : "").toString();
  }

  @Test
  void drawnTablesAreReadAsTheFolderReadsThemAndOneCellChanges() throws IOException {
    int changed = 0;
    for (int seed = 0; seed < TABLES; seed++) {
      Random random = new Random(seed);
      String text = drawn(random);
      List<RawLine.Cells> rows = read(text);
      CsvText csv = CsvText.of(text);
      assertThat(csv.toString()).isEqualTo(text);
      assertThat(csv.headerLine()).as("%s", text).isEqualTo(rows.get(0).line());
      assertThat(csv.lines())
          .as("%s", text)
          .isEqualTo(rows.stream().skip(1).map(RawLine.Cells::line).toList());
      for (RawLine.Cells row : rows) {
        assertThat(csv.cells(row.line())).as("%s", text).isEqualTo(row.cells());
      }
      if (rows.size() > 1) {
        RawLine.Cells row = rows.get(1 + random.nextInt(rows.size() - 1));
        int column = random.nextInt(3);
        String value = List.of("7.5", "7,5", "say \"x\"").get(random.nextInt(3));
        csv.set(row.line(), column, value);
        assertThat(read(csv.toString()).stream().map(RawLine.Cells::cells).toList())
            .isEqualTo(with(rows, row, column, value));
        changed++;
      }
    }
    assertThat(changed).isGreaterThan(TABLES / 2);
  }

  private static List<List<String>> with(
      List<RawLine.Cells> rows, RawLine.Cells changed, int column, String value) {
    return rows.stream()
        .map(
            row -> {
              List<String> cells = new ArrayList<>(row.cells());
              if (row.equals(changed)) {
                cells.set(column, value);
              }
              return List.copyOf(cells);
            })
        .toList();
  }

  @Test
  void allElseStaysToTheCharacter() {
    CsvText csv = CsvText.of("mold; cycle_s ;note\r\n\r\nM1; \"40\" ;\"a;b\"\r\nM2;30;");
    csv.set(3, 1, "44");
    assertThat(csv).hasToString("mold; cycle_s ;note\r\n\r\nM1; \"44\" ;\"a;b\"\r\nM2;30;");
    csv.set(4, 1, "3;1");
    assertThat(csv).hasToString("mold; cycle_s ;note\r\n\r\nM1; \"44\" ;\"a;b\"\r\nM2;\"3;1\";");
    csv.add(List.of("M3", "5", ""));
    assertThat(csv.toString()).endsWith("M2;\"3;1\";\r\nM3;5;\r\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a,b\n1,2\n", "a,b\n1,2", "a,b\n\"1\n\",2\n"})
  void aCellBeyondARowGetsEmptyOnesBefore(String text) {
    CsvText csv = CsvText.of(text);
    csv.set(2, 3, "x");
    assertThat(csv.cells(2)).hasSize(4).endsWith("2", "", "x");
  }

  @Test
  void aNewTableBeginsWithItsHeader() {
    CsvText csv = CsvText.of(List.of("mold", "cycle_s"));
    csv.add(List.of("M,1", "44"));
    assertThat(csv).hasToString("mold,cycle_s\n\"M,1\",44\n");
  }
}
