package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;

/** Two people at the same week: neither writes over what the other has done. */
@NeedsBrowser
class TwoSchedulersTest {
  private static Plant plant;
  private static Browser ada;
  private static Browser ben;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.network(folder, Map.of("ada", "scheduler", "ben", "scheduler"));
    ada = Browser.on(plant.pages());
    ben = Browser.on(plant.pages());
    for (Browser browser : List.of(ada, ben)) {
      browser.open("/login");
      browser.logIn(browser == ada ? "ada" : "ben", Plant.PASSWORD);
      browser.present("main .wall [data-line]");
    }
  }

  @AfterAll
  static void close() {
    ada.close();
    ben.close();
    plant.close();
  }

  private static String free() throws StoreTrouble {
    return plant.plan().runs().get(plant.plan().runs().size() - 1).job();
  }

  /** Holds the line where it is, or releases it. */
  private static void hold(Browser browser, String line) {
    WallHand hand = new WallHand(browser);
    hand.goTo(line);
    hand.keys("h");
  }

  @Test
  void whatOneDoesTheOtherSees() throws Exception {
    Page.WALL.openIn(ada);
    Page.WALL.openIn(ben);
    long version = plant.version();
    String line = free();
    hold(ada, line);
    ada.says(".sentence", "version " + (version + 1));
    ben.says(".sentence", "version " + (version + 1));
    assertThat(ben.says(".notices", "ada changed the week: ")).contains(line);
  }

  @Test
  void aChangeThatComesLateIsRefusedInWords() throws Exception {
    Page.WALL.openIn(ada);
    ben.block("*/api/live");
    Page.WALL.openIn(ben);
    long version = plant.version();
    String line = free();
    hold(ada, line);
    ada.says(".sentence", "version " + (version + 1));
    ben.says(".sentence", "version " + version);
    hold(ben, line);
    String refusal = ben.says("[role=alert]", "ada was first: ");
    assertThat(refusal).contains(line).contains("What you asked for was not done");
    ben.says(".sentence", "version " + (version + 1));
    assertThat(plant.version()).isEqualTo(version + 1);
    ben.block();
    hold(ben, line);
    ben.says(".sentence", "version " + (version + 2));
    assertThat(plant.version()).isEqualTo(version + 2);
  }
}
