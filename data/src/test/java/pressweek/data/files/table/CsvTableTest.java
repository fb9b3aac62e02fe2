package pressweek.data.files.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.files.table.RawLine.Cells;

class CsvTableTest {
  private static List<RawLine> read(String text) throws IOException {
    List<RawLine> lines = new ArrayList<>();
    try (CsvTable table = CsvTable.of(new StringReader(text))) {
      for (Optional<RawLine> line = table.next(); line.isPresent(); line = table.next()) {
        lines.add(line.get());
      }
    }
    return lines;
  }

  private static Cells row(int line, String... cells) {
    return new Cells(line, List.of(cells));
  }

  @Test
  void cellsAreTrimmedAndEmptyOnesKept() throws IOException {
    assertThat(read("a, b ,\u00a0c\u00a0,,\n")).containsExactly(row(1, "a", "b", "c", "", ""));
  }

  @Test
  void quotesHoldSeparatorsLineEndsAndQuotes() throws IOException {
    assertThat(read("\"a,b\",\"c\nd\",\"say \"\"x\"\"\"\ne,f,g\n"))
        .containsExactly(row(1, "a,b", "c\nd", "say \"x\""), row(3, "e", "f", "g"));
  }

  @Test
  void blanksRoundQuotesAreNothing() throws IOException {
    assertThat(read("a, \"b, c\" ,d\n")).containsExactly(row(1, "a", "b, c", "d"));
  }

  @Test
  void aQuoteWithinAPlainCellIsText() throws IOException {
    assertThat(read("knob 3/4\",b\n")).containsExactly(row(1, "knob 3/4\"", "b"));
  }

  @Test
  void everyLineEndCounts() throws IOException {
    assertThat(read("a\r\nb\rc\nd"))
        .containsExactly(row(1, "a"), row(2, "b"), row(3, "c"), row(4, "d"));
  }

  @Test
  void blankRowsAreLeftOut() throws IOException {
    assertThat(read("\n \na,b\n\n,\nc,d\n")).containsExactly(row(3, "a", "b"), row(6, "c", "d"));
  }

  @Test
  void theSeparatorIsTheOneThatTheHeaderHasMost() throws IOException {
    assertThat(read("a;b;\"c,d,e,f\"\n")).containsExactly(row(1, "a", "b", "c,d,e,f"));
    assertThat(read("a\tb,c\td\n")).containsExactly(row(1, "a", "b,c", "d"));
    assertThat(read("alone\n")).containsExactly(row(1, "alone"));
  }

  @Test
  void aFirstLineMayNameTheSeparator() throws IOException {
    assertThat(read("sep=;\na;b,c,d\n")).containsExactly(row(2, "a", "b,c,d"));
  }

  @Test
  void decimalsMayHaveACommaWhereItDoesNotSeparate() throws IOException {
    try (CsvTable commas = CsvTable.of(new StringReader("a,b"));
        CsvTable semicolons = CsvTable.of(new StringReader("a;b"))) {
      assertThat(commas.decimalComma()).isFalse();
      assertThat(semicolons.decimalComma()).isTrue();
    }
  }

  @Test
  void anUnclosedQuoteCostsItsOwnLineOnly() throws IOException {
    assertThat(read("a,b\n1,\"x\n2,y\n3,z\n"))
        .containsExactly(
            row(1, "a", "b"),
            new RawLine.Fault(2, "a quote in cell 2 is not closed; expected a closing \""),
            row(3, "2", "y"),
            row(4, "3", "z"));
  }

  @Test
  void aQuoteOpenForTooLongCountsAsUnclosed() throws IOException {
    String rows = "2,y\n".repeat(20_000);

    List<RawLine> lines = read("a,b\n1,\"x\n" + rows);

    assertThat(lines).hasSize(20_002);
    assertThat(lines.get(1)).isInstanceOf(RawLine.Fault.class);
  }

  @Test
  void textAfterAClosingQuoteCostsItsOwnLineOnly() throws IOException {
    assertThat(read("a,b\n1,\"x\"y\n2,z\n"))
        .containsExactly(
            row(1, "a", "b"),
            new RawLine.Fault(
                2,
                "text follows the closing quote of cell 2; expected a separator, or the quote doubled"),
            row(3, "2", "z"));
  }

  @Test
  void aLineWithoutEndIsAFault() throws IOException {
    assertThat(read("a\n" + "x".repeat(TextLines.LONGEST + 1) + "\nb\n"))
        .containsExactly(
            row(1, "a"),
            new RawLine.Fault(2, "the line is longer than a million characters; expected a row"),
            row(3, "b"));
  }
}
