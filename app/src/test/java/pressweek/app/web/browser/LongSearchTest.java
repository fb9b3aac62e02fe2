package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;

/** A search that would take an hour ends when somebody says so, and what it found can be taken. */
@NeedsBrowser
class LongSearchTest {
  @Test
  void stops(@TempDir Path folder) throws IOException, StoreTrouble {
    try (Plant plant = Plant.local("quillback-week", folder);
        Browser browser = Browser.on(plant.pages())) {
      Page.WALL.openIn(browser);
      long version = plant.version();
      long cost = plant.plan().figures().avoidableCost();
      browser.write(".solve input", "3600");
      browser.press("Solve");
      browser.says(".progress", "avoidable cost");
      browser.press("Stop");
      browser.says(".proposal", "Another week is proposed");
      browser.press("Take these moves");
      browser.says(".sentence", "version " + (version + 1));
      assertThat(plant.plan().figures().avoidableCost()).isLessThan(cost);
    }
  }
}
