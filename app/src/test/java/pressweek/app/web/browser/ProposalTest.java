package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.support.ui.Select;
import pressweek.app.desk.Edit;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;

/** The week is solved from the page, and repaired after something happened on the floor. */
@NeedsBrowser
class ProposalTest {
  /** Notes what the page says of a search, which may last no longer than a blink. */
  private static final String NOTES =
      """
      window.progressSaid = [];
      new MutationObserver(() => {
        const line = document.querySelector('.progress');
        if (line) window.progressSaid.push(line.textContent);
      }).observe(document.body, { childList: true, subtree: true, characterData: true });
      """;

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

  private static void makeWorse() throws Exception {
    Goal goal = Goal.in(plant);
    plant.edit(new Edit.Move(goal.line(), goal.press(), goal.place()));
  }

  private static void take(long version) {
    browser.press("Take these moves");
    browser.says(".sentence", "version " + (version + 1));
    browser.until(d -> browser.count(".proposal") == 0 ? true : null);
  }

  @Test
  void aBetterWeekIsFoundAndTaken() throws Exception {
    makeWorse();
    Page.WALL.openIn(browser);
    long version = plant.version();
    long cost = plant.plan().figures().avoidableCost();
    browser.write(".solve input", "2");
    browser.script(NOTES);
    browser.press("Solve");
    browser.says(".proposal", "Another week is proposed");
    assertThat((List<?>) browser.script("return window.progressSaid"))
        .as("progress, however short the search")
        .isNotEmpty()
        .allMatch(words -> String.valueOf(words).startsWith("Searching"));
    assertThat(plant.version()).as("nothing is done before it is taken").isEqualTo(version);
    assertThat(browser.count(".proposal .moves tbody tr")).isPositive();
    take(version);
    assertThat(plant.plan().figures().avoidableCost()).isLessThan(cost);
  }

  @Test
  void aPressThatIsAwayIsRepairedAround() throws Exception {
    Page.WALL.openIn(browser);
    long version = plant.version();
    String press = "V1";
    assertThat(plant.plan().runs()).extracting(Run::press).contains(press);
    browser.press("What happened");
    browser.press("a press is away");
    new Select(browser.present("dialog form select")).selectByVisibleText(press);
    browser.press("Repair the week");
    browser.says(".proposal", "A repair is proposed");
    browser.says(".proposal .moves", press);
    take(version);
    assertThat(plant.plan().runs())
        .filteredOn(r -> r.press().equals(press))
        .allMatch(r -> r.startMin() < Plant.NOW.getEpochSecond() / 60);
  }

  @Test
  void aProposalIsLeft() throws Exception {
    makeWorse();
    Page.WALL.openIn(browser);
    long version = plant.version();
    Plan before = plant.plan();
    browser.write(".solve input", "1");
    browser.press("Solve");
    browser.says(".proposal", "Another week is proposed");
    browser.press("Keep the old week");
    browser.until(d -> browser.count(".proposal") == 0 ? true : null);
    assertThat(plant.version()).isEqualTo(version);
    assertThat(plant.plan().runs()).isEqualTo(before.runs());
  }
}
