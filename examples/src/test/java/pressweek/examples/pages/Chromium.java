package pressweek.examples.pages;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A Chromium without a head, where Debian puts it. */
final class Chromium implements AutoCloseable {
  private static final Dimension SIZE = new Dimension(1280, 720);
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** For what is drawn in a frame of its own. */
  private static final int REST_MS = 600;

  final ChromeDriver driver;

  Chromium() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(Path.of("/usr/bin/chromium").toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--no-first-run",
        "--hide-scrollbars",
        "--lang=en-GB");
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile())
            .usingAnyFreePort()
            .build();
    driver = new ChromeDriver(service, options);
    driver.manage().window().setSize(SIZE);
  }

  /** Opens a page and waits until something stands on it. */
  void open(URI page, String css) throws InterruptedException {
    driver.get(page.toString());
    new WebDriverWait(driver, PATIENCE)
        .until(d -> d.findElements(By.cssSelector(css)).isEmpty() ? null : true);
    Thread.sleep(REST_MS);
  }

  /** What is seen of the page, as PNG. */
  byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
