package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Scenario;

/** What would it bring? Scenarios are compared, written and kept on their page. */
@NeedsBrowser
class ScenariosTest {
  private static final String TEXT = "#scenario-text";
  private static final String MORE =
      """
      {"schema": "pressweek-scenario/1", "name": "More", "words": "A tenth more.",
      "scale": [{"file": "orders.csv", "scale": {"quantity": 1.1}}]}""";

  @TempDir private Path folder;

  private Plant plant;
  private Browser browser;

  @BeforeEach
  void open() throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    browser = Browser.on(plant.pages());
  }

  @AfterEach
  void close() {
    browser.close();
    plant.close();
  }

  /** Compares the scenario of the small plant with as little effort as there is. */
  static void compare(Browser browser) {
    Page.SCENARIOS.openIn(browser);
    browser.says(".effort", "Choose at least one scenario.");
    browser.present(".shelf input[type=checkbox]").click();
    put(browser, ".effort input[name=seeds]", "1");
    put(browser, ".effort input[name=seconds]", "1");
    browser.says(".effort", "2 plans of 1 s take 2 s");
    browser.press("Compare");
    browser.says(".going", "is comparing");
    browser.says(".sentences", "A Saturday shift: ");
    browser.until(d -> browser.count(".going") == 0 ? true : null);
  }

  /** What stands in a field is chosen first: an empty number would be asked for meanwhile. */
  private static void put(Browser browser, String css, String text) {
    browser.present(css).sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
  }

  @Test
  void aComparisonSaysASentenceAndAllFiguresAndHasPapers() {
    browser.complaints();
    compare(browser);
    assertThat(browser.says(".compared .lead", "As it stands: ")).contains("order lines on time");
    assertThat(browser.says(".sentences li", "A Saturday shift: "))
        .contains("with 1 seed nobody can say whether that is chance");
    assertThat(browser.says(".sides", "Figures side by side"))
        .contains("lines on time (due)", "As it stands", "A Saturday shift");
    browser.open("/scenarios");
    browser.says(".compared .identity", "for tester");
    String paper = browser.present(".links a[href$='compare.html']").getDomProperty("href");
    browser.driver.get(String.valueOf(paper));
    browser.says("main", "A Saturday shift: ");
    browser.present("nav a[href='meeting.html']").click();
    browser.says("main", "A Saturday shift: ");
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void aWeekThatIsSolvedMeanwhileIsSaid() {
    Page.WALL.openIn(browser);
    put(browser, ".solve input", "600");
    browser.press("Solve");
    browser.present(".progress");
    Page.SCENARIOS.openIn(browser);
    browser.says(".notice", "tester is solving the week already");
    browser.present(".shelf input[type=checkbox]").click();
    WebElement compare = browser.driver.findElement(By.cssSelector(".effort button"));
    assertThat(compare.isEnabled()).isFalse();
    Page.WALL.openIn(browser);
    browser.press("Stop");
    browser.says(".proposal", "Another week is proposed");
    Page.SCENARIOS.openIn(browser);
    browser.present(".shelf input[type=checkbox]").click();
    browser.until(d -> d.findElement(By.cssSelector(".effort button")).isEnabled() ? true : null);
  }

  @Test
  void aScenarioIsWrittenCheckedKeptAndNotOverwritten() throws StoreTrouble {
    Page.SCENARIOS.openIn(browser);
    browser.press("Write a scenario");
    browser.says("#scenario-found", "Nothing is wrong.");
    assertThat(browser.driver.switchTo().activeElement().getDomAttribute("id"))
        .isEqualTo("scenario-text");
    browser.write(TEXT, MORE.replace("quantity", "quantitty"));
    assertThat(browser.says("#scenario-found", "line 2")).contains("did you mean quantity?");
    assertThat(keep().isEnabled()).isFalse();
    browser.write(TEXT, "{\n\"name\": ");
    browser.says("#scenario-found", "not JSON");
    browser.write(TEXT, MORE);
    browser.press("Keep it");
    browser.says(".shelf", "A tenth more.");
    assertThat(plant.store.scenarios().find("More").orElseThrow().text()).isEqualTo(MORE);

    browser.press("Edit");
    browser.says(".editor", "Edit More, version 1");
    Scenario other = new Scenario("More", 1, MORE + "\n", Change.of("Bea", Plant.NOW));
    plant.store.scenarios().put(other);
    browser.present(TEXT).sendKeys(Keys.chord(Keys.CONTROL, Keys.END), "\n\n");
    browser.press("Keep it");
    browser.says("#scenario-found", "Bea has written \"More\" meanwhile");
    assertThat(plant.store.scenarios().find("More").orElseThrow().text()).isEqualTo(MORE + "\n");
    browser.press("Leave");
    browser.until(d -> browser.count(".editor") == 0 ? true : null);
  }

  private WebElement keep() {
    List<WebElement> buttons = browser.driver.findElements(By.cssSelector(".editor button"));
    return buttons.stream().filter(b -> b.getText().equals("Keep it")).findFirst().orElseThrow();
  }
}
