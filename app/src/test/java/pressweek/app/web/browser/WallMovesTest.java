package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;

/** Runs are moved on the wall by pointer and by keys, and stay where Esc leaves them. */
@NeedsBrowser
class WallMovesTest {
  private static Plant plant;
  private static Browser browser;
  private static WallHand hand;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    browser = Browser.on(plant.pages());
    hand = new WallHand(browser);
  }

  @BeforeEach
  void openTheWall() {
    Page.WALL.openIn(browser);
  }

  @AfterAll
  static void close() {
    browser.close();
    plant.close();
  }

  private static void waitForVersion(long version) {
    browser.until(d -> standing() == version ? true : null);
    browser.says(".sentence", "version " + version);
  }

  private static long standing() {
    try {
      return plant.version();
    } catch (StoreTrouble trouble) {
      throw new AssertionError(trouble);
    }
  }

  private static void assertMoved(Goal goal) throws StoreTrouble {
    Plan plan = plant.plan();
    assertThat(plant.run(goal.line()).press()).isEqualTo(goal.press());
    assertThat(Goal.last(plan.runs(), goal.press())).isEqualTo(goal.line());
    assertThat(
            browser
                .present(".wall [data-line='" + goal.line() + "']")
                .getDomAttribute("aria-label"))
        .startsWith(goal.press() + ", order " + goal.line());
  }

  @Test
  void aRunIsDraggedToAnotherPressAndBackByKey() throws Exception {
    Goal goal = Goal.in(plant);
    long version = plant.version();
    Plan before = plant.plan();
    hand.dragBehind(goal.line(), goal.after());
    assertThat(hand.told()).matches("costs as much|(costs|saves) .*[0-9].*");
    assertThat(plant.version()).as("nothing is done before it is put down").isEqualTo(version);
    hand.drop();
    waitForVersion(version + 1);
    assertMoved(goal);
    hand.keys("z");
    waitForVersion(version + 2);
    assertThat(plant.plan().runs()).isEqualTo(before.runs());
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void aRunIsMovedByKeysAlone() throws Exception {
    Goal goal = Goal.in(plant);
    long version = plant.version();
    List<String> presses =
        plant.plan().problem().floor().presses().stream().map(p -> p.id()).toList();
    int down = presses.indexOf(goal.press()) - presses.indexOf(goal.from());
    hand.takeUpByKeys(goal.line());
    for (int i = 0; i < Math.abs(down); i++) {
      hand.keys(down > 0 ? Keys.ARROW_DOWN : Keys.ARROW_UP);
    }
    hand.keys(Keys.END);
    assertThat(hand.told()).matches("costs as much|(costs|saves) .*[0-9].*");
    hand.keys(Keys.ENTER);
    waitForVersion(version + 1);
    assertMoved(goal);
    hand.keys("z");
    waitForVersion(version + 2);
  }

  @Test
  void escapeLeavesARunWhereItIs() throws Exception {
    Goal goal = Goal.in(plant);
    long version = plant.version();
    Plan before = plant.plan();
    hand.dragBehind(goal.line(), goal.after());
    hand.told();
    hand.keys(Keys.ESCAPE);
    assertThat(hand.holds()).isFalse();
    hand.drop();
    hand.takeUpByKeys(goal.line());
    hand.keys(Keys.END, Keys.ESCAPE);
    assertThat(hand.holds()).isFalse();
    browser.open("/");
    browser.says(".sentence", "version " + version);
    assertThat(plant.version()).isEqualTo(version);
    assertThat(plant.plan()).isEqualTo(before);
  }

  @Test
  void aRunThatIsPromisedStays() throws Exception {
    Goal goal = Goal.in(plant);
    long version = plant.version();
    hand.goTo(goal.line());
    hand.keys("p");
    waitForVersion(version + 1);
    hand.dragBehind(goal.line(), goal.after());
    browser.says("[role=status]", goal.line() + " is promised to the floor; let it go first");
    assertThat(hand.holds()).isFalse();
    hand.drop();
    hand.keys("p");
    waitForVersion(version + 2);
  }
}
