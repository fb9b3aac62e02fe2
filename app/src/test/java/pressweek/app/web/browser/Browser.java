package pressweek.app.web.browser;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless Chromium with an empty profile, on the pages of one server. */
final class Browser implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private static final int MOST_SAID = 1500;

  final ChromeDriver driver;
  private final URI pages;

  private Browser(ChromeDriver driver, URI pages) {
    this.driver = driver;
    this.pages = pages;
  }

  /** Starts one. */
  static Browser on(URI pages) {
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(BrowserThere.driver().toFile())
            .usingAnyFreePort()
            .build();
    return new Browser(new ChromeDriver(service, options()), pages);
  }

  private static ChromeOptions options() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BrowserThere.browser().toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--disable-background-networking",
        "--disable-component-update",
        "--no-first-run",
        "--lang=en-GB",
        "--window-size=1280,800");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    return options;
  }

  /** Opens a page and waits until it has its heading. */
  void open(String path) {
    driver.get(pages.resolve(path).toString());
    present("main h1");
  }

  /** Waits until something holds, over elements that may be drawn anew meanwhile. */
  <T> T until(ExpectedCondition<T> condition) {
    return new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50))
        .ignoring(StaleElementReferenceException.class)
        .withMessage(() -> "on a page that says: " + text())
        .until(condition);
  }

  private String text() {
    String shown = count("dialog[open]") > 0 ? "dialog[open]" : "body";
    String text = driver.findElement(By.cssSelector(shown)).getText();
    return driver.getCurrentUrl() + " " + text.substring(0, Math.min(text.length(), MOST_SAID));
  }

  /** The first element that a CSS selector finds, as soon as it is there. */
  WebElement present(String css) {
    return until(d -> d.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
  }

  /** Waits until the text of an element contains words; its whole text. */
  String says(String css, String words) {
    return until(
        d ->
            d.findElements(By.cssSelector(css)).stream()
                .map(WebElement::getText)
                .filter(t -> t.contains(words))
                .findFirst()
                .orElse(null));
  }

  /** Presses the button that begins with these words, as soon as it may be pressed. */
  void press(String words) {
    By button = By.xpath("//button[starts-with(normalize-space(.), '" + words + "')]");
    until(
        d ->
            d.findElements(button).stream()
                .filter(b -> b.isDisplayed() && b.isEnabled())
                .findFirst()
                .map(
                    b -> {
                      b.click();
                      return b;
                    })
                .orElse(null));
  }

  /** Writes into a field, in place of what stands there. */
  void write(String css, String text) {
    WebElement field = present(css);
    field.clear();
    field.sendKeys(text);
  }

  /** How many elements a CSS selector finds now. */
  int count(String css) {
    return driver.findElements(By.cssSelector(css)).size();
  }

  /** Logs in where the page asks for it. */
  void logIn(String name, String password) {
    write("input[name=name]", name);
    write("input[name=password]", password);
    press("Log in");
  }

  /** What a script answers. */
  Object script(String script, Object... about) {
    return driver.executeScript(script, about);
  }

  /** Whether the pages are to be dark, as the person's machine would say. */
  void dark(boolean dark) {
    Map<String, String> scheme =
        Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(scheme)));
  }

  /** A screen of this size that is touched, instead of the window. */
  void screen(Dimension size) {
    Map<String, Object> metrics =
        Map.of("width", size.width, "height", size.height, "deviceScaleFactor", 1, "mobile", false);
    driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", metrics);
    driver.executeCdpCommand(
        "Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 5));
  }

  /** The window again, with a mouse. */
  void ownScreen() {
    driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", false));
  }

  /** Cuts the page's connection, or gives it back. */
  void offline(boolean offline) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of("offline", offline, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Refuses the page these addresses from now on, and no others. */
  void block(String... patterns) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand("Network.setBlockedURLs", Map.of("urls", List.of(patterns)));
  }

  /** What the browser has had to complain of since it was asked last: errors, refused content. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
