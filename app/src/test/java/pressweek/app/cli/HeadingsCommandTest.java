package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class HeadingsCommandTest {
  private static final String ORDERS =
      """
      Order No,Part Number,Pieces,Ship by,Colour of the box,Operator
      4711,LV90,100,2026-12-01,red,Ann
      """;

  @TempDir private Path folder;
  private final InputStream terminal = System.in;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void exportOfAnotherProgram() throws IOException {
    Files.writeString(folder.resolve("orders.csv"), ORDERS);
  }

  @AfterEach
  void giveTheTerminalBack() {
    System.setIn(terminal);
  }

  private int run(String answers, String... args) {
    System.setIn(new ByteArrayInputStream(answers.getBytes(Charset.defaultCharset())));
    CommandLine line = new CommandLine(new HeadingsCommand());
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    return line.execute(args);
  }

  private int runOrders(String answers, String... options) {
    String[] args = new String[options.length + 2];
    args[0] = folder.toString();
    args[1] = "orders.csv";
    System.arraycopy(options, 0, args, 2, options.length);
    return run(answers, args);
  }

  @Test
  void doubtfulHeadingsAreAskedOnce() throws IOException {
    assertThat(runOrders("colour\n\n")).isZero();

    assertThat(err.toString())
        .contains("\"Colour of the box\"")
        .contains("\"Operator\"")
        .doesNotContain("\"Order No\"");
    assertThat(out.toString())
        .isEqualToNormalizingNewlines(
            """
            Order No -> order
            Part Number -> item
            Pieces -> quantity
            Ship by -> due
            Colour of the box -> colour
            Operator -> (left out)
            """);
    assertThat(folder.resolve("headings.json"))
        .content()
        .contains("\"Colour of the box\" : \"colour\"");
  }

  @Test
  void anAnswerThatIsNoColumnOrTakenIsAskedAgain() {
    assertThat(runOrders("farbe\nitem\n-\nnote\n")).isZero();

    assertThat(err.toString())
        .contains("\"farbe\" is no column; expected one of order, line")
        .contains("item is \"Part Number\" already");
    assertThat(out.toString())
        .contains("Colour of the box -> (left out)")
        .contains("Operator -> note");
  }

  @Test
  void answersThatEndKeepNothing() {
    assertThat(runOrders("colour\n")).isEqualTo(2);

    assertThat(err.toString())
        .contains("nothing was kept; expected answers at the terminal, --yes");
    assertThat(folder.resolve("headings.json")).doesNotExist();
  }

  @Test
  void yesTakesAllProposals() {
    assertThat(runOrders("", "--yes")).isZero();

    assertThat(err.toString()).isEmpty();
    assertThat(folder.resolve("headings.json")).exists();
  }

  @Test
  void yesDoesNotGuessWhichTon() throws IOException {
    Files.writeString(
        folder.resolve("presses.csv"), "Machine,orientation,Tonnage\nP1,vertical,100\n");

    assertThat(run("", folder.toString(), "presses.csv", "--yes")).isEqualTo(2);

    assertThat(err.toString())
        .contains(
            "\"Tonnage\": which ton?; expected an answer, one of clamp_ton_us, clamp_ton_metric, clamp_ton_uk");
    assertThat(folder.resolve("headings.json"))
        .content()
        .contains("Machine")
        .doesNotContain("Tonnage");
  }

  @Test
  void theTonIsAsked() throws IOException {
    Files.writeString(
        folder.resolve("presses.csv"), "Machine,orientation,Tonnage\nP1,vertical,100\n");

    assertThat(run("\nclamp_ton_us\n", folder.toString(), "presses.csv")).isZero();

    assertThat(folder.resolve("headings.json"))
        .content()
        .contains("\"Tonnage\" : \"clamp_ton_us\"");
  }

  @Test
  void aFileFromElsewhereIsMappedByItsName(@TempDir Path elsewhere) throws IOException {
    Path export = Files.writeString(elsewhere.resolve("stock.csv"), "Artikel,Bestand\nLV90,3\n");

    assertThat(run("", folder.toString(), export.toString())).isZero();

    assertThat(folder.resolve("headings.json"))
        .content()
        .contains("stock.csv", "\"Bestand\" : \"on_hand\"");
  }

  @Test
  void requiredColumnsWithoutAHeadingAreNamed() throws IOException {
    Files.writeString(folder.resolve("stock.csv"), "Artikel\nLV90\n");

    assertThat(run("", folder.toString(), "stock.csv")).isEqualTo(2);

    assertThat(err.toString())
        .contains("stock.csv: no heading stands for on_hand; expected one for each");
  }

  @Test
  void badArgumentsAreNamed() throws IOException {
    Files.writeString(folder.resolve("export.csv"), "a\n");

    assertThat(run("", folder.toString(), "nothing.csv")).isEqualTo(2);
    assertThat(run("", folder.resolve("nowhere").toString(), "orders.csv")).isEqualTo(2);
    assertThat(run("", folder.toString(), "export.csv")).isEqualTo(2);
    assertThat(run("", folder.toString())).isEqualTo(2);
    assertThat(err.toString())
        .contains("nothing.csv: no file is there")
        .contains("nowhere: no folder is there")
        .contains("export.csv: the name is not that of a table");
  }

  @Test
  void theProgramKnowsTheCommand() {
    assertThat(RootCommand.run("headings", folder.toString(), "orders.csv", "--yes")).isZero();
  }
}
