package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileRoutesTest {
  private static final String ORDERS = "orders.csv";

  @TempDir private static Path dir;
  private static OpenPages pages;
  private String orders = "";

  @BeforeAll
  static void open() throws Exception {
    pages = new OpenPages(dir, true);
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  @BeforeEach
  void remember() throws Exception {
    orders = pages.read(ORDERS);
  }

  @AfterEach
  void restore() throws Exception {
    pages.post("/api/files/discard", "{}");
    Files.writeString(pages.folder.resolve(ORDERS), orders);
    Files.deleteIfExists(pages.folder.resolve("orders.xlsx"));
    Files.deleteIfExists(pages.folder.resolve("headings.json"));
  }

  private static OpenPages.Sent file(String name, String text) {
    return OpenPages.Sent.file(name, text);
  }

  @Test
  void filesComeWithTheirRowsAndWhatIsWrong() throws Exception {
    Files.writeString(
        pages.folder.resolve(ORDERS), orders + "799,1,Tarnbeck Galleys,ZZ99/Ü,100,2026-12-01,1,\n");
    JsonNode json = pages.get("/api/files").json();
    assertThat(json.path("folder").asText()).isEqualTo("plant");
    JsonNode file = named(json.path("files"), ORDERS);
    assertThat(file.path("rows").asInt()).isEqualTo((int) orders.lines().count());
    assertThat(file.path("changed").asBoolean()).isTrue();
    assertThat(named(json.path("files"), "molds.csv").path("changed").asBoolean()).isFalse();
    assertThat(json.path("unplaced").findValuesAsText("order")).contains("799");
    assertThat(json.path("changed").toString()).contains("orders.csv changed");
    JsonNode plant = named(json.path("files"), "plant.json");
    assertThat(plant.has("rows")).isFalse();
    assertThat(plant.path("sha").asText()).hasSize(64);
  }

  private static JsonNode named(JsonNode files, String name) {
    for (JsonNode file : files) {
      if (file.path("name").asText().equals(name)) {
        return file;
      }
    }
    throw new AssertionError(name + " is not among " + files);
  }

  @Test
  void findingsOfTheWholeComeBesideTheirLines() throws Exception {
    String bad = orders.replaceFirst(",1200,", ",twelve hundred,");
    OpenPages.Answer answer = pages.upload(List.of(file(ORDERS, bad)));
    assertThat(answer.status()).isEqualTo(200);
    JsonNode stored = answer.json().path("stored");
    assertThat(stored).hasSize(1);
    assertThat(stored.get(0).path("changed").asBoolean()).isTrue();
    JsonNode finding = named(answer.json().path("findings"), "severity", "ORDER_LINE");
    assertThat(finding.path("file").asText()).isEqualTo(ORDERS);
    assertThat(finding.path("line").asInt()).isEqualTo(2);
    assertThat(finding.path("column").asText()).isEqualTo("quantity");
    assertThat(finding.path("text").asText()).contains("twelve hundred");
    assertThat(pages.read(ORDERS)).isEqualTo(orders);
    assertThat(pages.get("/api/files").json().path("staged").path("stored")).hasSize(1);
  }

  private static JsonNode named(JsonNode all, String field, String value) {
    for (JsonNode one : all) {
      if (one.path(field).asText().equals(value)) {
        return one;
      }
    }
    throw new AssertionError(value + " is not among " + all);
  }

  @Test
  void takingReplacesFilesAndKeepsWhatWasThere() throws Exception {
    String more = orders + "799,1,Tarnbeck Galleys,KB32/M8-B/PP-BLK/ZN,100,2026-12-01,1,\n";
    pages.upload(List.of(file(ORDERS, more)));
    pages.upload(List.of(file("events.csv", "event,what,at\n")));
    OpenPages.Answer taken = pages.post("/api/files/take", "{\"why\":\"new orders\"}");
    assertThat(taken.status()).isEqualTo(200);
    assertThat(taken.json().path("taken").toString()).isEqualTo("[\"events.csv\",\"orders.csv\"]");
    assertThat(pages.read(ORDERS)).isEqualTo(more);
    assertThat(kept(ORDERS)).contains(orders);
    JsonNode last = pages.get("/api/history").json().get(0);
    assertThat(last.path("what").asText()).isEqualTo("put events.csv, orders.csv into the folder");
    assertThat(last.path("why").asText()).isEqualTo("new orders");
    assertThat(last.path("by").asText()).isEqualTo("tester");
    JsonNode files = pages.get("/api/files").json();
    assertThat(files.path("staged").isNull()).isTrue();
    assertThat(files.path("findings").toString()).doesNotContain("replaced");
    assertThat(pages.post("/api/files/take", "{}").status()).isEqualTo(409);
    Files.delete(pages.folder.resolve("events.csv"));
  }

  /** What was kept of a file. */
  private static List<String> kept(String name) throws Exception {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> all = Files.walk(pages.folder.resolve(Staging.REPLACED))) {
      for (Path path : all.filter(p -> p.endsWith(name)).toList()) {
        texts.add(Files.readString(path));
      }
    }
    return texts;
  }

  @Test
  void workbookTakesThePlaceOfItsText() throws Exception {
    OpenPages.Answer laid = pages.upload(List.of(file("orders.xlsx", "no workbook")));
    assertThat(laid.json().path("findings").toString()).contains("orders.xlsx").contains("ERROR");
    assertThat(laid.json().path("plannable").asBoolean()).isFalse();
    pages.post("/api/files/take", "{}");
    assertThat(pages.folder.resolve("orders.xlsx")).exists();
    assertThat(pages.folder.resolve(ORDERS)).doesNotExist();
    assertThat(kept(ORDERS)).contains(orders);
  }

  @Test
  void discardingLeavesTheFolderAsItWas() throws Exception {
    pages.upload(List.of(file(ORDERS, "order\n")));
    assertThat(pages.post("/api/files/discard", "{}").status()).isEqualTo(200);
    assertThat(pages.get("/api/files").json().path("staged").isNull()).isTrue();
    assertThat(pages.read(ORDERS)).isEqualTo(orders);
  }

  @Test
  void unknownNamesNeverReachTheFolder() throws Exception {
    for (String name :
        List.of(
            "../orders.csv", "/etc/passwd", "..\\\\orders.csv", "replaced/orders.csv", "x.csv")) {
      OpenPages.Answer answer = pages.upload(List.of(file(name, "a\n")));
      assertThat(answer.status()).as(name).isEqualTo(422);
      assertThat(answer.words()).as(name).contains("no file of a plant's folder came");
    }
    OpenPages.Answer some =
        pages.upload(
            List.of(file("README.md", "hello"), file(ORDERS, orders), file("Molds.csv", "")));
    assertThat(some.status()).isEqualTo(200);
    assertThat(some.json().path("left").findValuesAsText("name"))
        .containsExactly("README.md", "Molds.csv");
    assertThat(some.json().path("left").toString()).contains("expected molds.csv");
    assertThat(some.json().path("stored").get(0).path("changed").asBoolean()).isFalse();
    try (Stream<Path> around = Files.list(dir)) {
      assertThat(around.map(p -> String.valueOf(p.getFileName())))
          .allMatch(n -> n.equals("plant") || n.startsWith("store.db") || n.startsWith("."));
    }
  }

  @Test
  void whatIsNoUploadIsRefused() throws Exception {
    assertThat(pages.post("/api/files", "{}").status()).isEqualTo(415);
    byte[] torn = "no parts here".getBytes(StandardCharsets.UTF_8);
    assertThat(pages.post("/api/files", "multipart/form-data; boundary=xyz", torn).status())
        .isEqualTo(400);
    assertThat(pages.post("/api/files", "multipart/form-data", torn).status()).isEqualTo(400);
    OpenPages.Sent other = new OpenPages.Sent("other", ORDERS, "a");
    assertThat(pages.upload(List.of(other)).status()).isEqualTo(400);
    OpenPages.Answer twice = pages.upload(List.of(file(ORDERS, "a"), file(ORDERS, "b")));
    assertThat(twice.status()).isEqualTo(400);
    assertThat(twice.words()).contains("came twice");
  }

  @Test
  void whatIsTooLargeIsRefused() throws Exception {
    String large = "x".repeat(20_000_001);
    OpenPages.Answer one = pages.upload(List.of(file(ORDERS, large)));
    assertThat(one.status()).isEqualTo(413);
    assertThat(one.words()).contains("20 MB");
    String part = "x".repeat(19_000_000);
    OpenPages.Answer all =
        pages.upload(
            List.of(file(ORDERS, part), file("molds.csv", part), file("presses.csv", part)));
    assertThat(all.status()).isEqualTo(413);
    List<OpenPages.Sent> many = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      many.add(file("file" + i + ".csv", "a"));
    }
    OpenPages.Answer tooMany = pages.upload(many);
    assertThat(tooMany.status()).isEqualTo(413);
    assertThat(tooMany.words()).contains("at most 60");
    assertThat(pages.get("/api/files").json().path("staged").isNull()).isTrue();
  }

  @Test
  void headingsAreProposedAndKept() throws Exception {
    String own =
        orders.replaceFirst(
            "order,line,customer,item,quantity", "Auftrag,line,customer,item,Stück");
    Files.writeString(pages.folder.resolve(ORDERS), own);
    JsonNode found = pages.get("/api/headings?file=orders.csv").json();
    assertThat(found.path("required").toString()).contains("\"order\"");
    assertThat(found.path("columns").toString()).contains("\"quantity\"");
    JsonNode first = found.path("proposals").get(0);
    assertThat(first.path("heading").asText()).isEqualTo("Auftrag");
    assertThat(first.path("samples").get(0).asText()).isEqualTo("701");
    String mapping =
        "{\"file\":\"orders.csv\",\"mapping\":{\"Auftrag\":\"order\",\"line\":\"line\","
            + "\"customer\":\"customer\",\"item\":\"item\",\"Stück\":\"quantity\",\"due\":\"due\"}}";
    assertThat(pages.post("/api/headings", mapping).status()).isEqualTo(200);
    assertThat(pages.read("headings.json")).contains("\"Auftrag\" : \"order\"");
    JsonNode files = pages.get("/api/files").json();
    assertThat(files.path("findings").toString()).doesNotContain("Auftrag");
    assertThat(pages.get("/api/history").json().get(0).path("what").asText())
        .isEqualTo("said which heading of orders.csv is which column");
  }

  @Test
  void headingsOfAFileBesideTheFolderComeWithIt() throws Exception {
    String own = orders.replaceFirst("order,", "Auftrag,");
    pages.upload(List.of(file(ORDERS, own)));
    String mapping =
        "{\"file\":\"orders.csv\",\"mapping\":{\"Auftrag\":\"order\",\"line\":\"line\",\"item\":\"item\","
            + "\"customer\":\"\",\"quantity\":\"quantity\",\"due\":\"due\"}}";
    assertThat(pages.post("/api/headings", mapping).status()).isEqualTo(200);
    assertThat(pages.folder.resolve("headings.json")).doesNotExist();
    JsonNode staged = pages.get("/api/files").json().path("staged");
    assertThat(staged.path("stored").findValuesAsText("name"))
        .containsExactly("headings.json", ORDERS);
    assertThat(staged.path("findings").toString()).doesNotContain("Auftrag");
    pages.post("/api/files/take", "{}");
    assertThat(pages.read("headings.json")).contains("Auftrag");
  }

  @Test
  void headingsThatCannotBeAreRefused() throws Exception {
    assertThat(pages.get("/api/headings?file=../orders.csv").status()).isEqualTo(404);
    assertThat(pages.get("/api/headings?file=plant.json").status()).isEqualTo(404);
    assertThat(pages.get("/api/headings?file=people.csv").status()).isEqualTo(404);
    assertThat(pages.get("/api/headings").status()).isEqualTo(400);
    String begin = "{\"file\":\"orders.csv\",\"mapping\":";
    for (String mapping :
        List.of(
            "[]}",
            "{}}",
            "{\"a\":1}}",
            "{\"a\":\"no_column\"}}",
            "{\"a\":\"order\"}}",
            "{\"a\":\"order\",\"b\":\"order\"}}")) {
      assertThat(pages.post("/api/headings", begin + mapping).status()).as(mapping).isEqualTo(400);
    }
    assertThat(pages.folder.resolve("headings.json")).doesNotExist();
  }
}
