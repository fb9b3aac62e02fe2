package pressweek.app.web;

import io.javalin.http.util.MultipartUtil;
import jakarta.servlet.MultipartConfigElement;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Files that came with a request, in parts called {@code files} (RFC 7578).
 *
 * @param files content by name, each known by {@link FileNames}
 * @param left why a file was left out, by the name that it came with
 */
record Upload(SortedMap<String, byte[]> files, Map<String, String> left) {
  private static final int MOST_FILES = 60;
  private static final long MOST_BYTES_OF_FILE = 20_000_000;
  private static final long MOST_READ_AWAY = 200_000_000;
  private static final int LONGEST_NAME = 100;

  /** What is wrong with an upload. */
  static final class Faulty extends Exception {
    private static final long serialVersionUID = 1;
    private final int status;

    Faulty(int status, String words) {
      super(words);
      this.status = status;
    }

    int status() {
      return status;
    }
  }

  /** Reads what came with a request; nothing of it reaches the disk. */
  static Upload of(HttpServletRequest request) throws Faulty, IOException {
    String type = Optional.ofNullable(request.getContentType()).orElse("");
    if (!type.toLowerCase(Locale.ROOT).startsWith("multipart/form-data")) {
      throw new Faulty(415, "the request brings no files; expected multipart/form-data");
    }
    if (request.getContentLengthLong() > Staging.MOST_BYTES) {
      readAway(request);
      throw tooLarge();
    }
    Collection<Part> parts = parts(request);
    if (parts.size() > MOST_FILES) {
      throw new Faulty(413, parts.size() + " files came; expected at most " + MOST_FILES);
    }
    SortedMap<String, byte[]> files = new TreeMap<>();
    Map<String, String> left = new LinkedHashMap<>();
    for (Part part : parts) {
      put(part, files, left);
    }
    return new Upload(files, left);
  }

  /**
   * A browser hears the answer only when it could send all it had; beyond a limit it is cut off.
   */
  private static void readAway(HttpServletRequest request) throws IOException {
    request.getInputStream().skip(MOST_READ_AWAY);
  }

  private static void put(Part part, SortedMap<String, byte[]> files, Map<String, String> left)
      throws Faulty, IOException {
    String name = Optional.ofNullable(part.getSubmittedFileName()).orElse("");
    if (!part.getName().equals("files") || name.isEmpty()) {
      throw new Faulty(400, "a part is no file; expected files in parts called \"files\"");
    }
    if (FileNames.known(name).isEmpty()) {
      String seen = name.substring(0, Math.min(name.length(), LONGEST_NAME));
      left.put(seen, FileNames.whyNot(name));
    } else if (files.containsKey(name)) {
      throw new Faulty(400, name + " came twice; expected it once");
    } else if (part.getSize() > MOST_BYTES_OF_FILE) {
      throw tooLarge();
    } else {
      try (InputStream in = part.getInputStream()) {
        files.put(name, in.readAllBytes());
      }
    }
  }

  private static Collection<Part> parts(HttpServletRequest request) throws Faulty, IOException {
    long most = Staging.MOST_BYTES;
    MultipartConfigElement limits =
        new MultipartConfigElement(
            System.getProperty("java.io.tmpdir", ""), most, most, Math.toIntExact(most));
    request.setAttribute(MultipartUtil.MULTIPART_CONFIG_ATTRIBUTE, limits);
    try {
      return request.getParts();
    } catch (ServletException | IllegalStateException | IOException e) {
      throw isTooLarge(e)
          ? tooLarge()
          : new Faulty(400, "the files cannot be read from the request; expected them whole");
    }
  }

  /** Whether a limit was met, which the server tells by the words of what lies beneath. */
  private static boolean isTooLarge(Throwable trouble) {
    for (Throwable t = trouble; t != null; t = t.getCause()) {
      if (String.valueOf(t.getMessage()).contains("exceed")) {
        return true;
      }
    }
    return false;
  }

  private static Faulty tooLarge() {
    return new Faulty(413, "the files are too large; expected at most 20 MB each and 50 MB in all");
  }
}
