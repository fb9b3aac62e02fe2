package pressweek.examples.pages;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * The week wall in a headless Chromium: how soon it is painted, and how long frames take while a
 * run is dragged over it.
 */
final class WallSpeed implements AutoCloseable {
  private static final int PATIENCE_MS = 30_000;
  private static final int STEPS = 240;
  private static final int STEP_MS = 12;

  /** Notes when the first bar of the wall stands, by a frame that was painted with it. */
  private static final String STANDS =
      """
      new MutationObserver((all, watch) => {
        if (!document.querySelector('.wall [data-line]')) return;
        watch.disconnect();
        requestAnimationFrame(() => setTimeout(() => { window.wallStood = performance.now(); }));
      }).observe(document, { childList: true, subtree: true });
      """;

  private static final String PAINTED =
      """
      const paint = performance.getEntriesByName('first-contentful-paint')[0];
      return paint && window.wallStood ? [paint.startTime, window.wallStood] : null;
      """;

  /** The middle of the n-th bar that lies wholly in the window and may be moved. */
  private static final String BAR =
      """
      const seen = [...document.querySelectorAll('.wall [data-line]')].filter((bar) => {
        const { left, right, top, bottom } = bar.getBoundingClientRect();
        return left > 250 && right < innerWidth - 80 && top > 150 && bottom < innerHeight - 120 && right - left > 16
          && !/, running|, promised/.test(bar.getAttribute('aria-label'));
      });
      const box = seen[Math.floor(seen.length * arguments[0])].getBoundingClientRect();
      return [Math.round(box.left + box.width / 2), Math.round(box.top + box.height / 2), seen.length];
      """;

  /** The middle of the strips that are seen, and half their width and height. */
  private static final String MIDDLE =
      """
      const { left, right, top, bottom } = document.querySelector('.wall').getBoundingClientRect();
      const [names, axis] = ['.names', '.axis'].map((css) => document.querySelector(css).getBoundingClientRect());
      return [(names.right + right) / 2, (axis.bottom + bottom) / 2, (right - names.right) / 2, (bottom - axis.bottom) / 2];
      """;

  private static final String FRAMES =
      """
      window.frames60 = [];
      let last = 0;
      const note = (at) => {
        if (last) window.frames60.push(at - last);
        last = at;
        window.noting = requestAnimationFrame(note);
      };
      window.noting = requestAnimationFrame(note);
      """;

  private final Chromium chromium = new Chromium();
  private final ChromeDriver driver = chromium.driver;
  private final URI home;

  /**
   * How soon a page is there.
   *
   * @param firstMs first contentful paint (W3C Paint Timing), milliseconds after it was asked for
   * @param wallMs when the bars of the wall are painted
   */
  record Painted(double firstMs, double wallMs) {}

  WallSpeed(URI home) {
    this.home = home;
    cdp("Page.addScriptToEvaluateOnNewDocument", Map.of("source", STANDS));
  }

  /** The browser, as it calls itself. */
  String browser() {
    return driver.getCapabilities().getBrowserName()
        + " "
        + driver.getCapabilities().getBrowserVersion();
  }

  /** Opens the wall anew. */
  Painted open() throws InterruptedException {
    driver.get(home.toString());
    for (int waited = 0; waited < PATIENCE_MS; waited += STEP_MS) {
      if (driver.executeScript(PAINTED) instanceof List<?> found) {
        return new Painted(number(found.get(0)), number(found.get(1)));
      }
      Thread.sleep(STEP_MS);
    }
    throw new IllegalStateException("the wall was not painted");
  }

  /** Bars of the wall that are in the page now. */
  int bars() {
    return (int)
        number(
            driver.executeScript("return document.querySelectorAll('.wall [data-line]').length"));
  }

  /**
   * Takes a run up, carries it about for some three seconds and leaves it where it was.
   *
   * @param which which of the bars that are seen, from 0 to 1
   * @param reach how far from the middle of the wall towards its edges, 0 to 1; near an edge the
   *     wall scrolls by itself
   * @return milliseconds of each frame meanwhile
   */
  List<Double> drag(double which, double reach) throws InterruptedException {
    List<?> at = (List<?>) driver.executeScript(BAR, which);
    int x = (int) number(at.get(0));
    int y = (int) number(at.get(1));
    mouse("mouseMoved", x, y, 0);
    mouse("mousePressed", x, y, 1);
    mouse("mouseMoved", x + 8, y + 4, 1);
    if (!driver
        .executeScript("return Boolean(document.querySelector('.ghost:not([hidden])'))")
        .equals(true)) {
      throw new IllegalStateException("no run was taken up at " + x + ", " + y);
    }
    List<?> wall = (List<?>) driver.executeScript(MIDDLE);
    driver.executeScript(FRAMES);
    for (int i = 0; i < STEPS; i++) {
      double turn = 2 * Math.PI * i / STEPS;
      mouse(
          "mouseMoved",
          (int) (number(wall.get(0)) + reach * number(wall.get(2)) * Math.sin(3 * turn)),
          (int) (number(wall.get(1)) + reach * number(wall.get(3)) * Math.sin(2 * turn)),
          1);
      Thread.sleep(STEP_MS);
    }
    driver.executeScript("cancelAnimationFrame(window.noting)");
    List<Double> frames = new ArrayList<>();
    for (Object frame : (List<?>) driver.executeScript("return window.frames60")) {
      frames.add(number(frame));
    }
    key("Escape");
    mouse("mouseReleased", x, y, 0);
    return frames;
  }

  private void mouse(String type, int x, int y, int buttons) {
    cdp(
        "Input.dispatchMouseEvent",
        Map.of(
            "type",
            type,
            "x",
            x,
            "y",
            y,
            "button",
            type.equals("mouseMoved") && buttons == 0 ? "none" : "left",
            "buttons",
            buttons,
            "clickCount",
            type.equals("mouseMoved") ? 0 : 1));
  }

  private void key(String key) {
    cdp("Input.dispatchKeyEvent", Map.of("type", "keyDown", "key", key, "code", key));
    cdp("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", key, "code", key));
  }

  private void cdp(String command, Map<String, Object> about) {
    driver.executeCdpCommand(command, about);
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  @Override
  public void close() {
    chromium.close();
  }
}
