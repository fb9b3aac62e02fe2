package pressweek.data.files.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * What a first pass over a file's bytes tells.
 *
 * @param sha256 SHA-256 of the file, hexadecimal
 * @param content what the bytes are
 * @param oddLine the first line with bytes that are not UTF-8, from 1; 0 for none
 * @param size bytes
 */
public record FileScan(String sha256, Content content, int oddLine, long size) {
  /** What the bytes of a file are. */
  public enum Content {
    /** UTF-8, with or without a byte order mark. */
    UTF_8,
    UTF_16LE,
    UTF_16BE,
    /** Text that is not UTF-8. */
    WINDOWS_1252,
    /** A ZIP archive, such as an XLSX workbook. */
    ZIP,
    /** Not text. */
    BINARY;

    /** True for text in two bytes a character. */
    public boolean wide() {
      return this == UTF_16LE || this == UTF_16BE;
    }

    /** True for text. */
    public boolean text() {
      return this != ZIP && this != BINARY;
    }
  }

  private static final int CHUNK = 1 << 16;

  /** Reads the file once. */
  public static FileScan of(Path file) throws IOException {
    MessageDigest digest = newDigest();
    Utf8Check utf8 = new Utf8Check();
    byte[] head = new byte[0];
    long size = 0;
    try (InputStream in = Files.newInputStream(file)) {
      byte[] chunk = new byte[CHUNK];
      for (int n = in.readNBytes(chunk, 0, CHUNK); n > 0; n = in.readNBytes(chunk, 0, CHUNK)) {
        if (size == 0) {
          head = Arrays.copyOf(chunk, Math.min(n, 4));
        }
        size += n;
        digest.update(chunk, 0, n);
        utf8.feed(ByteBuffer.wrap(chunk, 0, n));
      }
    }
    utf8.end();
    String hash = HexFormat.of().formatHex(digest.digest());
    return new FileScan(hash, content(head, utf8), utf8.oddLine(), size);
  }

  private static Content content(byte[] head, Utf8Check utf8) {
    if (starts(head, 0xFF, 0xFE)) {
      return Content.UTF_16LE;
    }
    if (starts(head, 0xFE, 0xFF)) {
      return Content.UTF_16BE;
    }
    if (starts(head, 'P', 'K', 3, 4)) {
      return Content.ZIP;
    }
    if (utf8.controls()) {
      return Content.BINARY;
    }
    return utf8.oddLine() == 0 ? Content.UTF_8 : Content.WINDOWS_1252;
  }

  private static boolean starts(byte[] head, int... bytes) {
    if (head.length < bytes.length) {
      return false;
    }
    for (int i = 0; i < bytes.length; i++) {
      if ((head[i] & 0xFF) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  private static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
