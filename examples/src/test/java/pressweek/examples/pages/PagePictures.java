package pressweek.examples.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.User;

/**
 * Takes the pictures of the pages that the documentation shows, on the demo week. Run it from the
 * folder {@code examples}; {@code DEVELOPERS.md} has the command.
 */
public final class PagePictures {
  private static final Instant NOW = Instant.parse("2026-12-01T09:30:00Z");
  private static final Path PICTURES = Path.of("..", "docs", "pictures");

  /** Path of each page, and what stands on it when it is drawn. */
  private static final Map<String, List<String>> PAGES =
      Map.ofEntries(
          Map.entry("wall", List.of("/", ".wall [data-line]")),
          Map.entry("pulls", List.of("/pulls", "li.pull")),
          Map.entry("changes", List.of("/changes", "li.change")),
          Map.entry("crew", List.of("/crew", "section.crew tbody tr")),
          Map.entry("codes", List.of("/codes", "form.question input")),
          Map.entry("figures", List.of("/figures", "table.plans tbody tr")),
          Map.entry("scenarios", List.of("/scenarios", "table.shelf tbody tr")),
          Map.entry("files", List.of("/files", "table.folder tbody tr")),
          Map.entry("history", List.of("/history", "table tbody tr")),
          Map.entry("users", List.of("/users", "form fieldset")),
          Map.entry("login", List.of("/login", "form input[type=password]")));

  private static final Duration PATIENCE = Duration.ofMinutes(4);
  private static final int REST_MS = 600;

  private PagePictures() {}

  /** Takes all of them, or those that are named. */
  public static void main(String[] args) throws IOException, StoreTrouble, InterruptedException {
    Path work = Files.createTempDirectory("pictures");
    List<String> wanted = args.length > 0 ? List.of(args) : List.copyOf(PAGES.keySet());
    try (Served served = new Served(PagesSpeedRun.DEMO, work.resolve("demo.db"), NOW, 2_000)) {
      Change change = Change.of("Ida", NOW);
      served.desk.store().users().add(new User("Bea", "SCHEDULER", "", false), change);
      served.desk.store().users().add(new User("Hana", "HANDLER", "", false), change);
      served.desk.store().users().add(new User("Tom", "SETTER", "", true), change);
      try (Chromium browser = new Chromium()) {
        for (String name : wanted) {
          List<String> page = PAGES.getOrDefault(name, List.of());
          browser.open(served.home().resolve(page.get(0)), page.get(1));
          if (name.equals("scenarios")) {
            compare(browser.driver);
          }
          Files.write(PICTURES.resolve("page-" + name + ".png"), browser.picture());
        }
      }
    }
  }

  /** Compares two scenarios and looks at what comes of it. */
  private static void compare(ChromeDriver driver) throws InterruptedException {
    driver.executeAsyncScript(
        """
        const done = arguments[0];
        const send = async () => {
          const me = await (await fetch('/api/me')).json();
          const body = { scenarios: ['file:second-mold.json', 'file:sunday-shift.json'], seeds: 3, seconds: 5 };
          await fetch('/api/compared', { method: 'POST', headers: { 'X-Pressweek-Token': me.token }, body: JSON.stringify(body) });
        };
        send().then(done);
        """);
    new WebDriverWait(driver, PATIENCE)
        .until(d -> d.findElements(By.cssSelector(".sentences")).isEmpty() ? null : true);
    driver.executeScript("document.querySelector('.compared').scrollIntoView()");
    Thread.sleep(REST_MS);
  }
}
