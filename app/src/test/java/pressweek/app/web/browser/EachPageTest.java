package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.print.PrintOptions;
import pressweek.app.store.StoreTrouble;

/** What holds for every page: it loads without complaint, everybody can use it, it prints. */
@NeedsBrowser
class EachPageTest {
  private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21aa", "wcag22aa");
  private static final Dimension NOTEBOOK = new Dimension(1280, 720);

  /** A tablet of 10 inches, upright and lying. */
  private static final List<Dimension> TABLET =
      List.of(new Dimension(800, 1280), new Dimension(1280, 800));

  /** Least width and height of what is touched, CSS pixels: WCAG 2.2, success criterion 2.5.8. */
  private static final int FINGER = 24;

  private static final String SMALL =
      """
      const shown = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      return [...document.querySelectorAll('main button, main select, main input, main summary, nav a')].filter(shown)
        .map((e) => [e, (e.closest('label') || e).getBoundingClientRect()])
        .filter(([e, box]) => box.width > 0 && (box.width < arguments[0] || box.height < arguments[0]))
        .map(([e]) => e.outerHTML.slice(0, 120));
      """;

  /** A page among the objects of a PDF. */
  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b(?!s)");

  private static Plant plant;
  private static Browser browser;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    browser = Browser.on(plant.pages());
    ScenariosTest.compare(browser);
  }

  @AfterAll
  static void close() {
    browser.close();
    plant.close();
  }

  @ParameterizedTest
  @EnumSource
  void loadsWithoutComplaint(Page page) {
    browser.complaints();
    page.openIn(browser);
    assertThat(text("main h1")).contains(page.heading);
    assertThat(browser.driver.getTitle()).endsWith("Pressweek");
    assertThat(browser.complaints()).isEmpty();
    assertThat(fetched()).as("fetched").isNotEmpty().allMatch(u -> u.startsWith(home()));
  }

  @ParameterizedTest
  @EnumSource
  void everybodyCanUseItInLightAndInDark(Page page) {
    page.openIn(browser);
    for (boolean dark : List.of(false, true)) {
      browser.dark(dark);
      assertThat(browser.script("return matchMedia('(prefers-color-scheme: dark)').matches"))
          .isEqualTo(dark);
      assertThat(violations()).as("dark: %s", dark).isEmpty();
    }
    browser.dark(false);
  }

  @ParameterizedTest
  @EnumSource
  void fitsTheWidthOfANotebook(Page page) {
    browser.driver.manage().window().setSize(NOTEBOOK);
    page.openIn(browser);
    assertThat(over()).isEqualTo(false);
  }

  private static Object over() {
    return browser.script(
        "const e = document.documentElement; return e.scrollWidth > e.clientWidth + 1");
  }

  @ParameterizedTest
  @EnumSource
  void isUsedWithAFingerOnATablet(Page page) {
    for (Dimension tablet : TABLET) {
      browser.screen(tablet);
      page.openIn(browser);
      assertThat(over()).as("over the edge of %s", tablet).isEqualTo(false);
      assertThat((List<?>) browser.script(SMALL, FINGER)).as("small on %s", tablet).isEmpty();
      assertThat(violations()).as("on %s", tablet).isEmpty();
    }
    browser.ownScreen();
  }

  @ParameterizedTest
  @EnumSource
  void dialogsOfTheWallAreForEverybody(Wanted wanted) {
    Page.WALL.openIn(browser);
    wanted.open(browser);
    browser.present("dialog[open]");
    for (boolean dark : List.of(false, true)) {
      browser.dark(dark);
      assertThat(violations()).as("dark: %s", dark).isEmpty();
    }
    browser.dark(false);
    new WallHand(browser).keys(Keys.ESCAPE);
    browser.until(d -> browser.count("dialog[open]") == 0 ? true : null);
  }

  /** The dialogs of the wall. */
  enum Wanted {
    HELP("?"),
    HAPPENED("What happened"),
    GIVE_OUT("Give out");

    private final String button;

    Wanted(String button) {
      this.button = button;
    }

    void open(Browser browser) {
      browser.press(button);
    }
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "LOGIN")
  void prints(Page page) throws IOException {
    page.openIn(browser);
    byte[] pdf = Base64.getDecoder().decode(browser.driver.print(new PrintOptions()).getContent());
    Path kept = Path.of("target", "printed", page.name().toLowerCase(Locale.ROOT) + ".pdf");
    Files.createDirectories(kept.getParent());
    Files.write(kept, pdf);
    String inside = new String(pdf, StandardCharsets.ISO_8859_1);
    assertThat(inside).startsWith("%PDF-");
    assertThat(SHEET.matcher(inside).results().count()).isPositive();
  }

  private static String text(String css) {
    return String.valueOf(browser.present(css).getDomProperty("textContent"));
  }

  private static String home() {
    return plant.pages().toString();
  }

  @SuppressWarnings("unchecked")
  private static List<String> fetched() {
    return (List<String>)
        browser.script("return performance.getEntriesByType('resource').map((e) => e.name)");
  }

  private static List<String> violations() {
    return new AxeBuilder()
        .withTags(WCAG).setLegacyMode(true).analyze(browser.driver).getViolations().stream()
            .map(EachPageTest::words)
            .toList();
  }

  private static String words(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getNodes().stream()
            .limit(4)
            .map(
                n ->
                    n.getTarget()
                        + " "
                        + n.getHtml()
                        + " "
                        + n.getAny().stream().map(c -> c.getMessage()).toList())
            .toList();
  }
}
