package pressweek.reports.markup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A style or a script that is part of a page, and its hash, by which the page's policy lets it
 * through.
 *
 * @param text its text
 */
public record PageResource(String text) {
  /** The file of this name beside a class. */
  public static PageResource beside(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing beside " + owner.getName());
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new PageResource(text.replace("\r\n", "\n"));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }

  /** Its SHA-256 as a Content-Security-Policy names it. */
  public String hash() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }
}
