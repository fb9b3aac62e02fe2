package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.InputError.Severity;

class FolderFaultsTest {
  @TempDir private Path path;
  private PlantFolder folder;

  @BeforeEach
  void smallestFolder() {
    folder = new PlantFolder(path);
  }

  @Test
  void aFaultyOrderLineLeavesTheOthers() {
    Folder read =
        folder
            .with(
                "orders.csv",
                """
                order,line,item,quantity,due
                4711,1,KNOB,100,31.02.2026
                4711,2,KNOB,-5,soon
                4712,1,KNOB,100,2026-12-01
                """)
            .read();

    assertThat(read.demand().orders()).extracting(OrderRow::id).containsExactly("4712/1");
    assertThat(read.demand().faulty())
        .containsExactly(
            new FaultyOrder(
                new At("orders.csv", 2),
                "4711",
                "1",
                "KNOB",
                100,
                "due \"31.02.2026\" is not a date; expected yyyy-MM-dd"),
            new FaultyOrder(
                new At("orders.csv", 3),
                "4711",
                "2",
                "KNOB",
                0,
                "quantity \"-5\" is out of range; expected a whole number from 1 to 10,000,000; and "
                    + "due \"soon\" is not a date; expected yyyy-MM-dd"));
    assertThat(read.errors()).isEmpty();
    assertThat(read.findings()).extracting(InputError::severity).containsOnly(Severity.ORDER_LINE);
  }

  @Test
  void theSecondRowOfAnOrderLineIsFaulty() {
    Folder read =
        folder.with("orders.csv", PlantFolder.ORDERS + "4711,1,KNOB,7,2026-12-02\n").read();

    assertThat(read.demand().orders()).extracting(OrderRow::quantity).containsExactly(100);
    assertThat(read.demand().faulty().get(0).message())
        .isEqualTo("order line \"4711/1\" is also in line 2; expected it once");
  }

  @Test
  void aByteOrderMarkAndCarriageReturnsAreNothing() {
    folder.with("orders.csv", "\uFEFF" + PlantFolder.ORDERS.replace("\n", "\r\n"));

    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void semicolonsBringDecimalCommas() {
    folder.with(
        "molds.csv", "mold;makes;live_cavities;runs_on;cycle_s;part_g\nM1;KNOB;2;P1;40,5;3.25\n");

    MoldRow mold = folder.read().floor().molds().get(0);
    assertThat(mold.cycleS()).hasValue(40.5);
    assertThat(mold.cavities().partG()).hasValue(3.25);
  }

  @Test
  void tabsAndUtf16AreTaken() {
    folder.with(
        "orders.csv", "\uFEFF" + PlantFolder.ORDERS.replace(',', '\t'), StandardCharsets.UTF_16LE);

    assertThat(folder.read().demand().orders()).extracting(OrderRow::item).containsExactly("KNOB");
    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void windows1252IsTakenWithAWarning() {
    folder.with(
        "orders.csv",
        "order,item,quantity,due,customer\n1,KNOB,5,2026-12-01,plain\n2,KNOB,5,2026-12-01,Müller\n",
        Charset.forName("windows-1252"));

    Folder read = folder.read();
    assertThat(read.demand().orders().get(1).customer()).isEqualTo("Müller");
    assertThat(folder.findings())
        .containsExactly(
            "orders.csv:3: the line has bytes that are not UTF-8; the file is read as Windows-1252");
    assertThat(read.warnings()).hasSize(1);
  }

  @Test
  void thePlantsDateFormatIsTakenBesideIso() {
    folder
        .with("plant.json", "{\"date_format\": \"dd.MM.yyyy\"}")
        .with(
            "orders.csv",
            "order,item,quantity,due\n1,KNOB,5,01.12.2026\n2,KNOB,5,2026-12-02\n3,KNOB,5,03.12.2026 14:30\n4,KNOB,5,31.02.2026\n");

    Folder read = folder.read();

    assertThat(read.demand().orders())
        .extracting(OrderRow::due)
        .containsExactly(
            new When.Day(LocalDate.of(2026, 12, 1)),
            new When.Day(LocalDate.of(2026, 12, 2)),
            new When.Local(LocalDateTime.of(2026, 12, 3, 14, 30)));
    assertThat(read.demand().faulty().get(0).message())
        .isEqualTo("due \"31.02.2026\" is not a date; expected dd.MM.yyyy or yyyy-MM-dd");
  }

  @Test
  void headingsOfTheirOwnAreMapped() {
    folder
        .with(
            "orders.csv",
            "Auftrag,Artikel,Menge,Termin,Sachbearbeiter\n4711,KNOB,100,2026-12-01,me\n4712,KNOB,none,2026-12-01,me\n")
        .with(
            "headings.json",
            """
            {"orders.csv": {"Auftrag": "order", "Artikel": "item", "Menge": "quantity", "Termin": "due", "Sachbearbeiter": ""}}
            """);

    assertThat(folder.read().demand().orders()).extracting(OrderRow::quantity).containsExactly(100);
    assertThat(folder.findings())
        .containsExactly(
            "orders.csv:3: \"Menge\" (quantity) \"none\" is not a number; expected digits");
  }

  @Test
  void headersAreTakenInAnyCaseAndWithSpaces() {
    folder.with("molds.csv", "Mold,Makes,Live Cavities,Runs on,Cycle-s\nM1,KNOB,2,P1,40\n");

    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void thousandsOfOneKindAreCounted() {
    StringBuilder orders = new StringBuilder("order,item,quantity,due\n");
    for (int i = 0; i < 1254; i++) {
      orders.append(i).append(",KNOB,5,tomorrow\n");
    }
    Folder read = folder.with("orders.csv", orders.toString()).read();

    assertThat(read.findings()).hasSize(21);
    assertThat(read.findings().get(20).toString())
        .isEqualTo("orders.csv:22: due: and 1,234 more of the same kind from here on");
    assertThat(read.demand().faulty()).hasSize(1254);
  }

  @Test
  void headingsOfTheirOwnThatAreNotMappedNameTheCommand() {
    folder.with("stock.csv", "Artikel,on_hand\nKNOB,5\n");

    assertThat(folder.findings())
        .contains(
            "stock.csv: column \"item\" missing; found Artikel, on_hand",
            "stock.csv: the file has headings of its own; expected \"pressweek headings FOLDER"
                + " stock.csv\" once, to map them");
  }

  @Test
  void whatProgramsLeaveBesideATableIsNothing() {
    folder.with("~$orders.xlsx", "x").with("._orders.csv", "x").with("notes.txt", "x");

    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void findingsAreInTheOrderOfFilesAndLines() {
    folder
        .with("orders.csv", PlantFolder.ORDERS + "1,1,K,5,x\n1,2,K,x,2026-12-01\n")
        .with("plant.json", "{\n\"zoen\": 1}")
        .with("running.csv", "press,mold\nP7,M9\nP1,M1\n");

    assertThat(folder.read().findings())
        .extracting(InputError::at)
        .extracting(At::toString)
        .containsExactly(
            "plant.json:2", "orders.csv:3", "orders.csv:4", "running.csv:2", "running.csv:2");
  }

  @Test
  void aFolderThatIsNoneCannotBeRead() {
    assertThatThrownBy(() -> FolderReader.read(path.resolve("nowhere")))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(() -> FolderReader.read(path.resolve("orders.csv")))
        .isInstanceOf(IOException.class);
  }

  @Test
  void aGuideIsReadWithItsLines() {
    folder.with("guide.json", "{\n  \"families\": [\n    {\"name\": \"knob\"}\n  ]\n}\n");

    JsonTree.Obj guide = folder.read().guide().orElseThrow();
    assertThat(guide.field("families").map(JsonTree::line)).contains(2);
    assertThat(folder.read().has(InputFile.GUIDE)).isTrue();
  }
}
