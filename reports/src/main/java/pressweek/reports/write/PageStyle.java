package pressweek.reports.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import pressweek.reports.markup.Element;

/**
 * The style and the script of a page, and the policy that lets these two through and nothing else.
 */
final class PageStyle {
  private static final String STYLE = resource("page.css");
  private static final String SCRIPT = resource("page.js");

  private PageStyle() {}

  static Element style() {
    return Element.verbatim("style", STYLE);
  }

  static Element script() {
    return Element.verbatim("script", SCRIPT);
  }

  /**
   * Content-Security-Policy: nothing is fetched, and only this style and this script count, by
   * their SHA-256.
   */
  static String policy() {
    return "default-src 'none'; style-src '"
        + hash(STYLE)
        + "'; script-src '"
        + hash(SCRIPT)
        + "'; base-uri 'none'; form-action 'none'";
  }

  private static String hash(String content) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = PageStyle.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing beside " + PageStyle.class.getName());
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }
}
