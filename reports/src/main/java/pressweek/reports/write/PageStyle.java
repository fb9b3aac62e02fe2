package pressweek.reports.write;

import pressweek.reports.markup.Element;
import pressweek.reports.markup.PageResource;

/**
 * The style and the script of a page, and the policy that lets these two through and nothing else.
 */
final class PageStyle {
  private static final PageResource STYLE = PageResource.beside(PageStyle.class, "page.css");
  private static final PageResource SCRIPT = PageResource.beside(PageStyle.class, "page.js");

  private PageStyle() {}

  static Element style() {
    return Element.verbatim("style", STYLE.text());
  }

  static Element script() {
    return Element.verbatim("script", SCRIPT.text());
  }

  /**
   * Content-Security-Policy: nothing is fetched, and only this style and this script count, by
   * their SHA-256.
   */
  static String policy() {
    return "default-src 'none'; style-src "
        + STYLE.hash()
        + "; script-src "
        + SCRIPT.hash()
        + "; base-uri 'none'; form-action 'none'";
  }
}
