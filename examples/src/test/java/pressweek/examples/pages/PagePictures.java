package pressweek.examples.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
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
      Map.of(
          "wall", List.of("/", ".wall [data-line]"),
          "pulls", List.of("/pulls", "li.pull"),
          "changes", List.of("/changes", "li.change"),
          "crew", List.of("/crew", "section.crew tbody tr"),
          "codes", List.of("/codes", "form.question input"),
          "figures", List.of("/figures", "table.plans tbody tr"),
          "files", List.of("/files", "table.folder tbody tr"),
          "history", List.of("/history", "table tbody tr"),
          "users", List.of("/users", "form fieldset"),
          "login", List.of("/login", "form input[type=password]"));

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
          Files.write(PICTURES.resolve("page-" + name + ".png"), browser.picture());
        }
      }
    }
  }
}
