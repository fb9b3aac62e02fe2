package pressweek.data.files.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file whose bytes have been found to be text. */
public final class TextFile {
  private TextFile() {}

  /** Its characters; those that the character set does not have are replaced. */
  public static Reader open(Path file, FileScan.Content content) throws IOException {
    return new BufferedReader(new InputStreamReader(Files.newInputStream(file), charset(content)));
  }

  /** The character set of a text. */
  public static Charset charset(FileScan.Content content) {
    return switch (content) {
      case UTF_16LE -> StandardCharsets.UTF_16LE;
      case UTF_16BE -> StandardCharsets.UTF_16BE;
      case WINDOWS_1252 -> Charset.forName("windows-1252");
      case UTF_8 -> StandardCharsets.UTF_8;
      case ZIP, BINARY -> throw new IllegalArgumentException("not text");
    };
  }
}
