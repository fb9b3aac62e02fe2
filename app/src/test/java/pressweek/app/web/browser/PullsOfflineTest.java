package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Tick;

/** Pulls are ticked off without a connection: each tick arrives, and once. */
@NeedsBrowser
class PullsOfflineTest {
  private static final int MOST = 100;

  private Plant plant;
  private Browser browser;

  @BeforeEach
  void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    browser = Browser.on(plant.pages());
    Page.PULLS.openIn(browser);
  }

  @AfterEach
  void close() {
    browser.close();
    plant.close();
  }

  private List<Tick> arrived() {
    try {
      return plant.store.ticks().latest(MOST);
    } catch (StoreTrouble trouble) {
      throw new AssertionError(trouble);
    }
  }

  /** Ticks off the pull that is next; its key. */
  private String bring() {
    String key = browser.present("li.pull").getDomAttribute("data-key");
    browser.present("li.pull [data-brought]").click();
    browser.until(d -> browser.count("li.pull[data-key='" + key + "']") == 0 ? true : null);
    return key;
  }

  private void waitForTicks(int count) {
    browser.until(d -> arrived().size() >= count ? true : null);
    browser.until(d -> browser.count(".unsent") == 0 ? true : null);
  }

  @Test
  void ticksMadeWithoutAConnectionArriveOnce() {
    String first = bring();
    waitForTicks(1);
    browser.offline(true);
    String second = bring();
    String third = bring();
    browser.says(".unsent", "2 ticks are not sent yet");
    assertThat(arrived()).extracting(Tick::pull).containsExactly(first);
    browser.offline(false);
    waitForTicks(3);
    Page.PULLS.openIn(browser);
    browser.says("details.donelist", "Brought: 3");
    assertThat(arrived()).extracting(Tick::pull).containsExactlyInAnyOrder(first, second, third);
    assertThat(arrived()).extracting(Tick::id).doesNotHaveDuplicates();
  }

  @Test
  void thePageOpensAndTicksWhileTheServerIsAway() throws IOException {
    browser.until(
        d ->
            Boolean.TRUE.equals(browser.script("return !!navigator.serviceWorker.controller"))
                ? true
                : null);
    Page.PULLS.openIn(browser);
    int port = plant.shut();
    Page.PULLS.openIn(browser);
    String key = bring();
    browser.says(".unsent", "1 tick is not sent yet");
    Page.PULLS.openIn(browser);
    browser.says(".unsent", "1 tick is not sent yet");
    assertThat(arrived()).isEmpty();
    plant.openAgain(port);
    waitForTicks(1);
    assertThat(arrived()).extracting(Tick::pull).containsExactly(key);
  }

  @Test
  void aShortPullIsToldWithItsReason() {
    String key = browser.present("li.pull").getDomAttribute("data-key");
    browser.press("Short ...");
    browser.write("dialog.short input[inputmode=none]", "7");
    browser.present("dialog.short input[value='The lot is held']").click();
    browser.press("Tell the scheduler");
    waitForTicks(1);
    Tick tick = arrived().get(0);
    assertThat(tick.pull()).isEqualTo(key);
    assertThat(tick.reason()).isEqualTo("The lot is held");
  }

  @Test
  void aScannedLabelShowsItsPullToBeTicked() {
    String key = browser.present("li.pull").getDomAttribute("data-key");
    WallHand scanner = new WallHand(browser);
    scanner.keys(key, Keys.ENTER);
    browser.says(".foot [role=status]", "Scan it again or press Brought");
    browser.present("li.pull.marked[data-key='" + key + "']");
    assertThat(arrived()).isEmpty();
    browser.press("Brought");
    waitForTicks(1);
    assertThat(arrived()).extracting(Tick::pull).containsExactly(key);
  }
}
