package pressweek.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sends papers: pages to look at and print, all else to keep. */
final class Documents {
  private static final Map<String, String> KINDS =
      Map.of(
          "html", "text/html; charset=utf-8",
          "csv", "text/csv; charset=utf-8",
          "ics", "text/calendar; charset=utf-8",
          "json", "application/json; charset=utf-8",
          "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

  private static final Pattern STYLE = Pattern.compile("<style[^>]*>(.*?)</style>", Pattern.DOTALL);
  private static final Pattern SCRIPT =
      Pattern.compile("<script(?! src)[^>]*>(.*?)</script>", Pattern.DOTALL);

  private Documents() {}

  static void send(Asked asked, String name, byte[] bytes) {
    String ending = name.substring(name.lastIndexOf('.') + 1);
    asked.context().contentType(KINDS.getOrDefault(ending, "application/octet-stream"));
    if (ending.equals("html")) {
      String page = new String(bytes, StandardCharsets.UTF_8);
      asked.context().header("Content-Security-Policy", policy(page));
    } else {
      String plain = name.substring(name.lastIndexOf('/') + 1).replaceAll("[^A-Za-z0-9._-]", "_");
      asked.context().header("Content-Disposition", "attachment; filename=\"" + plain + "\"");
    }
    asked.context().result(bytes);
  }

  /** Only the style and the script that the page itself holds (W3C CSP level 3, hashes). */
  static String policy(String page) {
    return "default-src 'none'; img-src data:; style-src"
        + hashes(STYLE, page)
        + "; script-src"
        + hashes(SCRIPT, page)
        + "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
  }

  private static String hashes(Pattern pattern, String page) {
    StringBuilder all = new StringBuilder();
    Matcher matcher = pattern.matcher(page);
    while (matcher.find()) {
      all.append(" 'sha256-").append(hash(matcher.group(1))).append('\'');
    }
    return all.isEmpty() ? " 'none'" : all.toString();
  }

  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return Base64.getEncoder()
          .encodeToString(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
