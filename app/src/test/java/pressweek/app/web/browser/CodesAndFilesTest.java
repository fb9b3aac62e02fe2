package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import pressweek.app.store.StoreTrouble;

/** The order desk reads codes and words, and sees what is wrong with the files. */
@NeedsBrowser
class CodesAndFilesTest {
  private static final String ROW = "799,1,Nobody,KB32/M8-B/PP-BLK/ZN,many,2026-12-01,1,";

  private static Plant plant;
  private static Browser browser;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    browser = Browser.on(plant.pages());
  }

  @AfterAll
  static void close() {
    browser.close();
    plant.close();
  }

  @Test
  void aCodeIsTakenApart() {
    Page.CODES.openIn(browser);
    browser.write("#code", "ST50/M8-T/PP-WHT/A2/FC");
    browser.press("Decode");
    browser.says("ol.parts", "white");
    assertThat(browser.count("ol.parts li")).isGreaterThanOrEqualTo(5);
    browser.says("[aria-live] table", "WHT code: part 3");
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void aCodeWithAFaultSaysWhereAndWhatElse() {
    Page.CODES.openIn(browser);
    browser.write("#code", "ST50/M8-T/PP-WHX/A2/FC");
    browser.press("Decode");
    browser.says("[role=alert]", "Cannot be read:");
    assertThat(browser.present(".bigcode mark").getText()).contains("WHX");
    browser
        .driver
        .findElement(By.cssSelector("button[aria-label='Decode ST50/M8-T/PP-WHT/A2/FC']"))
        .click();
    browser.says("ol.parts", "white");
  }

  @Test
  void wordsAreRead() {
    Page.CODES.openIn(browser);
    browser.write("#words", "lever 90 mm, M10 brass insert, red");
    browser.press("Read");
    browser.says("[role=status]", "reading");
    assertThat(browser.count("ol.readings li.reading")).isPositive();
  }

  @Test
  void aFindingStandsBesideItsLine() throws IOException {
    Path orders = plant.folder.resolve("orders.csv");
    String before = Files.readString(orders);
    int line = (int) before.lines().count() + 1;
    Files.writeString(orders, before.stripTrailing() + "\n" + ROW + "\n", StandardCharsets.UTF_8);
    try {
      Page.FILES.openIn(browser);
      String finding = browser.says("li.finding", "line " + line);
      assertThat(finding).contains("quantity").contains(ROW);
      assertThat(browser.present("li.finding mark").getText()).isEqualTo("many");
      browser.says("main", "Changed since the week on the wall was read: orders.csv");
      Page.WALL.openIn(browser);
      browser.says(".notice.files", "orders.csv");
    } finally {
      Files.writeString(orders, before, StandardOpenOption.TRUNCATE_EXISTING);
    }
  }

  @Test
  void filesAreCheckedBeforeTheyAreTaken(@TempDir Path elsewhere) throws IOException {
    Path kept = plant.folder.resolve("orders.csv");
    String before = Files.readString(kept);
    Path fresh = elsewhere.resolve("orders.csv");
    Files.writeString(
        fresh,
        before.replace(
            "701,1,Tarnbeck Galleys,KB32/M8-B/PP-BLK/ZN,1200",
            "701,1,Tarnbeck Galleys,KB32/M8-B/PP-BLK/ZN,1300"));
    Page.FILES.openIn(browser);
    browser
        .driver
        .findElement(By.cssSelector("input[type=file][aria-label=Files]"))
        .sendKeys(fresh.toString());
    browser.says("section.staged", "orders.csv");
    assertThat(Files.readString(kept)).isEqualTo(before);
    browser.press("Take these files into the folder");
    browser.says("[role=status]", "The files are in the folder now");
    assertThat(Files.readString(kept)).isEqualTo(Files.readString(fresh));
    Files.writeString(kept, before);
  }
}
