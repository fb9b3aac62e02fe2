package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.Headings.Proposal;

class HeadingsTest {
  @TempDir private Path folder;

  private List<Proposal> propose(String file, String text) throws IOException {
    Headings.Proposals proposals =
        Headings.propose(folder, Files.writeString(folder.resolve(file), text));
    assertThat(proposals.findings()).isEmpty();
    return proposals.proposals();
  }

  private static Map<String, String> columns(List<Proposal> proposals) {
    Map<String, String> columns = new LinkedHashMap<>();
    proposals.forEach(p -> columns.put(p.heading(), p.column()));
    return columns;
  }

  @Test
  void anExportInGermanIsUnderstood() throws IOException {
    List<Proposal> proposals =
        propose(
            "orders.csv",
            """
            Auftragsnr.;Pos;Kunde;Artikel-Nr.;Menge;Wunschtermin;Liefertermin;Bemerkung
            4711;10;Müller;LV90;1.200;30.11.2026;01.12.2026;eilt
            """);

    assertThat(columns(proposals))
        .containsExactly(
            Map.entry("Auftragsnr.", "order"),
            Map.entry("Pos", "line"),
            Map.entry("Kunde", "customer"),
            Map.entry("Artikel-Nr.", "item"),
            Map.entry("Menge", "quantity"),
            Map.entry("Wunschtermin", "requested"),
            Map.entry("Liefertermin", "due"),
            Map.entry("Bemerkung", "note"));
    assertThat(proposals).filteredOn(p -> !p.column().equals("quantity")).allMatch(Proposal::sure);
  }

  @ParameterizedTest
  @CsvSource({
    "orders.csv, Order No, order, true",
    "orders.csv, Part Number, item, true",
    "orders.csv, Qty, quantity, true",
    "orders.csv, Due Date, due, true",
    "orders.csv, due, due, true",
    "orders.csv, Ordr No, order, false",
    "orders.csv, Stueckzahl, quantity, true",
    "orders.csv, STÜCKZAHL, quantity, true",
    "molds.csv, Tool, mold, true",
    "molds.csv, Cycle time, cycle_s, true",
    "molds.csv, Part weight (oz), part_oz, true",
    "molds.csv, Part weight, part_g, false",
    "molds.csv, Weight [kg], weight_kg, true",
    "molds.csv, Length (in), length_in, true",
    "molds.csv, Length (cm), '', false",
    "presses.csv, Machine, press, true",
    "presses.csv, Schließkraft (kN), clamp_kn, true",
    "presses.csv, Clamp force (US tons), clamp_ton_us, true",
    "presses.csv, Shot weight PS (g), shot_ps_g, true",
    "resins.csv, Melt temp (°F), melt_f, true",
    "people.csv, Badge No., person, true",
    "people.csv, Qualifikation, may_run, true",
    "people.csv, Schichten, shifts, true",
    "orders.csv, Favourite song, '', false"
  })
  void oneHeadingIsUnderstood(String file, String heading, String column, boolean sure)
      throws IOException {
    Proposal proposal = propose(file, heading + "\n").get(0);

    assertThat(proposal.column()).isEqualTo(column);
    assertThat(proposal.sure()).isEqualTo(sure);
    assertThat(proposal.because()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"Tonnage", "Clamp (tons)", "clamp_ton", "Schließkraft t"})
  void tonsAreAskedBack(String heading) throws IOException {
    Proposal proposal = propose("presses.csv", "press," + heading + "\nP1,50\n").get(1);

    assertThat(proposal.column()).isEmpty();
    assertThat(proposal.choices())
        .containsExactly("clamp_ton_us", "clamp_ton_metric", "clamp_ton_uk");
    assertThat(proposal.sure()).isFalse();
  }

  @Test
  void cellsTellWhatTheHeadingDoesNot() throws IOException {
    List<Proposal> proposals =
        propose("presses.csv", "press,Ausführung,Anlagentyp\nP1,old,vertical\nP2,new,horizontal\n");

    assertThat(columns(proposals))
        .containsEntry("Ausführung", "")
        .containsEntry("Anlagentyp", "orientation");
    assertThat(proposals.get(2).sure()).isFalse();
  }

  @Test
  void cellsThatDoNotFitMakeANameDoubtful() throws IOException {
    assertThat(propose("orders.csv", "Termin\n01.12.2026\n").get(0).sure()).isTrue();
    assertThat(propose("orders.csv", "Termin\nasap\n").get(0).sure()).isFalse();
  }

  @Test
  void aColumnIsProposedOnce() throws IOException {
    List<Proposal> proposals = propose("orders.csv", "Qty,quantity\n1,2\n");

    assertThat(columns(proposals))
        .containsExactly(Map.entry("Qty", ""), Map.entry("quantity", "quantity"));
  }

  @Test
  void whatIsKeptIsAppliedAndOtherFilesStay() throws IOException {
    PlantFolder plant = new PlantFolder(folder);
    plant
        .with("headings.json", "{\"molds.csv\": {\"Form\": \"mold\"}}")
        .with("molds.csv", "Form,makes,live_cavities,runs_on,cycle_s\nM1,KNOB,2,P1,40\n")
        .with("presses.csv", "Maschine,orientation,Tonnage,Halle\nP1,vertical,100,2\n");
    Map<String, String> mapping = new LinkedHashMap<>();
    mapping.put("Maschine", "press");
    mapping.put("orientation", "orientation");
    mapping.put("Tonnage", "clamp_ton_metric");
    mapping.put("Halle", "");

    assertThat(Headings.keep(folder, InputFile.PRESSES, mapping)).isEmpty();

    assertThat(plant.findings()).isEmpty();
    assertThat(plant.read().floor().presses().get(0).size().clampKn()).hasValue(980.665);
    assertThat(Files.readString(folder.resolve("headings.json")))
        .contains("\"Maschine\" : \"press\"", "\"Halle\" : \"\"", "\"Form\" : \"mold\"")
        .doesNotContain("orientation");
  }

  @Test
  void aTornFileOfHeadingsIsNotOverwritten() throws IOException {
    Files.writeString(folder.resolve("headings.json"), "{");

    assertThat(Headings.keep(folder, InputFile.ORDERS, Map.of("A", "order"))).isNotEmpty();
    assertThat(folder.resolve("headings.json")).hasContent("{");
  }

  @Test
  void requiredColumnsWithoutAHeadingAreNamed() {
    assertThat(Headings.missing(InputFile.PRESSES, List.of("press", "clamp_ton_us")))
        .containsExactly("orientation");
  }

  @Test
  void aFileOfAnotherNameIsNone() throws IOException {
    Path file = Files.writeString(folder.resolve("export.csv"), "a\n");

    assertThat(Headings.propose(folder, file).findings())
        .extracting(InputError::toString)
        .containsExactly(
            "export.csv: the name is not that of a table; expected one such as orders.csv or orders.xlsx");
  }

  @Test
  void anEmptyFileHasNoHeadings() throws IOException {
    Path file = Files.writeString(folder.resolve("orders.csv"), "");

    assertThat(Headings.propose(folder, file).findings())
        .extracting(InputError::toString)
        .containsExactly("orders.csv: the file is empty; expected a header row");
  }

  @Test
  void everyLineOfTheWordListIsForAColumnThatThereIs() {
    List<String> keys = new ArrayList<>();
    for (InputFile file : InputFile.values()) {
      if (file.table()) {
        Tables.columns(file).list().forEach(c -> keys.add(HeadingWords.key(file, c)));
      }
    }
    assertThat(keys).containsAll(HeadingWords.keys());
    assertThat(HeadingWords.keys()).hasSizeGreaterThan(100);
  }
}
