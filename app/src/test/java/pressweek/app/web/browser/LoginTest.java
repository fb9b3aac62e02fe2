package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.WebElement;
import pressweek.app.store.StoreTrouble;

/** On the network one logs in, and sees what one's work needs. */
@NeedsBrowser
class LoginTest {
  private static Plant plant;
  private static Browser browser;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant =
        Plant.network(
            folder,
            Map.of("sue", "scheduler", "hal", "handler", "vic", "viewer", "ody", "order_desk"));
    browser = Browser.on(plant.pages());
  }

  @AfterEach
  void forget() {
    browser.driver.manage().deleteAllCookies();
  }

  @AfterAll
  static void close() {
    browser.close();
    plant.close();
  }

  private static List<String> links() {
    browser.present("nav a");
    return browser.driver.findElements(By.cssSelector("nav a")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static void come(String path, String name) {
    browser.driver.get(plant.pages().resolve(path).toString());
    browser.logIn(name, Plant.PASSWORD);
    browser.present("nav a");
  }

  @Test
  void whoIsNotKnownLogsInAndComesBack() {
    browser.driver.get(plant.pages().resolve("/crew").toString());
    browser.logIn("hal", "wrong horse");
    browser.says("[role=alert]", "name or password is wrong");
    browser.logIn("hal", Plant.PASSWORD);
    browser.present("section.crew");
    assertThat(browser.driver.getCurrentUrl()).endsWith("/crew");
    Cookie cookie = browser.driver.manage().getCookieNamed("pressweek");
    assertThat(cookie.isHttpOnly()).isTrue();
    assertThat(cookie.isSecure()).isTrue();
    assertThat(cookie.getSameSite()).isEqualTo("Strict");
    browser.press("Log out");
    browser.present("input[name=password]");
    browser.driver.get(plant.pages().resolve("/crew").toString());
    browser.present("input[name=password]");
    assertThat(browser.driver.getCurrentUrl()).contains("/login");
  }

  @Test
  void aHandlerSeesWhatHeBrings() {
    come("/pulls", "hal");
    assertThat(links()).containsExactly("Pulls", "Changes", "Crew", "Scenarios");
    browser.present("li.pull [data-brought]");
    for (String path : List.of("/", "/figures", "/files", "/history", "/users")) {
      browser.open(path);
      browser.says("main [role=alert]", "that is not for the role handler");
    }
  }

  @Test
  void aViewerChangesNothing() {
    come("/", "vic");
    assertThat(links())
        .containsExactly(
            "Week wall", "Pulls", "Changes", "Crew", "Figures", "Scenarios", "History");
    Page.WALL.openIn(browser);
    assertThat(browser.count(".solve, .step")).isZero();
    Page.PULLS.openIn(browser);
    assertThat(browser.count("[data-brought]")).isZero();
  }

  @Test
  void theSchedulerLetsSomebodyIn() {
    come("/users", "sue");
    assertThat(links()).hasSize(10);
    browser.write("fieldset input[autocomplete=off]", "new");
    browser.write("fieldset input[type=password]", Plant.PASSWORD);
    browser.press("Add");
    browser.says("[role=status]", "new may log in now");
    browser.driver.manage().deleteAllCookies();
    come("/pulls", "new");
    browser.present("li.pull [data-brought]");
  }
}
