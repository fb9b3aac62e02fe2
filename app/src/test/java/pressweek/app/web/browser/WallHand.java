package pressweek.app.web.browser;

import java.time.Duration;
import java.util.List;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** Somebody's hand on the week wall: a pointer or the keys. */
final class WallHand {
  private static final Duration GLIDE = Duration.ofMillis(120);
  private static final String POINT =
      """
      const bar = document.querySelector(`.wall [data-line="${arguments[0]}"]`);
      const box = [...bar.querySelectorAll('rect')].filter((r) => r.classList.contains('edge')).pop().getBoundingClientRect();
      const [x, y] = [Math.round(box.left + box.width * arguments[1]), Math.round(box.top + box.height / 2)];
      return [x, y];
      """;

  private final Browser browser;

  WallHand(Browser browser) {
    this.browser = browser;
  }

  /** A point on the last piece of a line's bar, so much of the way from its left end. */
  @SuppressWarnings("unchecked")
  private List<Long> point(String line, double way) {
    browser.present(".wall [data-line='" + line + "']");
    return (List<Long>) browser.script(POINT, line, way);
  }

  /** Takes a line up with the pointer and holds it behind the middle of another line's bar. */
  void dragBehind(String line, String other) {
    List<Long> from = point(line, 0.5);
    List<Long> to = point(other, 0.9);
    new Actions(browser.driver)
        .moveToLocation(from.get(0).intValue(), from.get(1).intValue())
        .clickAndHold()
        .moveByOffset(8, 4)
        .pause(GLIDE)
        .moveToLocation(to.get(0).intValue(), to.get(1).intValue())
        .perform();
  }

  /** Lets go of what the pointer holds. */
  void drop() {
    new Actions(browser.driver).release().perform();
  }

  /** Finds a line by its number with the keys only; its bar has the focus. */
  void goTo(String line) {
    browser.script("document.activeElement.blur()");
    keys("/");
    browser.present("#find:focus");
    new Actions(browser.driver).keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).perform();
    keys(line);
    browser.says(".hits button", line);
    keys(Keys.ENTER);
    browser.present(".wall [data-line='" + line + "']:focus");
  }

  /** Finds a line with the keys only, and takes it up. */
  void takeUpByKeys(String line) {
    goTo(line);
    keys("m");
    browser.present(".ghost:not([hidden])");
  }

  /** Presses keys, one after the other. */
  void keys(CharSequence... keys) {
    new Actions(browser.driver).sendKeys(keys).perform();
  }

  /** What is said about the place over which a line is held, as soon as it is known. */
  String told() {
    browser.present(".ghost:not([hidden]):not(.asking)");
    return browser.until(
        d -> {
          String words = browser.present(".ghost .head").getText();
          return words.isBlank() ? null : words;
        });
  }

  /** Whether something is in the hand. */
  boolean holds() {
    return browser.count(".ghost:not([hidden])") > 0;
  }
}
