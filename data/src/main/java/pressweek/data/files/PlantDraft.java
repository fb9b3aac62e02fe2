package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.TextFile;

/**
 * What {@code plant.json} would be with a figure exchanged. The file itself stays as it is; in the
 * draft all else is as in the file, to the byte, keys that nobody knows among it.
 */
public final class PlantDraft {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final Path path;
  private final Charset charset;
  private final boolean there;
  private final boolean wide;
  private final StringBuilder text;
  private boolean changed;

  private PlantDraft(Path path) throws IOException {
    this.path = path;
    there = Files.isRegularFile(path);
    FileScan.Content content = there ? FileScan.of(path).content() : FileScan.Content.UTF_8;
    charset = there ? TextFile.charset(content) : StandardCharsets.UTF_8;
    wide = content.wide();
    text = new StringBuilder(there ? new String(Files.readAllBytes(path), charset) : "{\n}\n");
  }

  /**
   * A draft of a folder's file that can be read without an error, or of a new one.
   *
   * @throws IOException when it cannot be read
   */
  public static PlantDraft of(Folder folder) throws IOException {
    return new PlantDraft(folder.path().resolve(InputFile.PLANT.fileName()));
  }

  /** The file that it is a draft of, whether it is there or not. */
  public Path path() {
    return path;
  }

  /** What it comes from. */
  public DraftOrigin origin() {
    return !there ? DraftOrigin.NONE : wide ? DraftOrigin.WIDE_TEXT : DraftOrigin.TEXT;
  }

  /** True when a figure was exchanged. */
  public boolean isChanged() {
    return changed;
  }

  /** The draft as a file. */
  public byte[] bytes() {
    return text.toString().getBytes(charset);
  }

  /**
   * Exchanges a figure that stands in the file itself; one that is not there comes first.
   *
   * @param key its key
   * @param value the figure
   */
  public void set(String key, String value) throws IOException {
    int mark = text.indexOf("\uFEFF") == 0 ? 1 : 0;
    try (JsonParser parser = FACTORY.createParser(text.substring(mark))) {
      parser.nextToken();
      int open = mark + (int) parser.currentTokenLocation().getCharOffset() + 1;
      int first = open;
      boolean empty = parser.nextToken() != JsonToken.FIELD_NAME;
      if (!empty) {
        first = mark + (int) parser.currentTokenLocation().getCharOffset();
      }
      while (parser.currentToken() == JsonToken.FIELD_NAME) {
        boolean wanted = parser.currentName().equals(key);
        parser.nextToken();
        if (wanted) {
          int from = mark + (int) parser.currentTokenLocation().getCharOffset();
          text.replace(from, from + parser.getTextLength(), value);
          changed = true;
          return;
        }
        parser.skipChildren();
        parser.nextToken();
      }
      String lead = empty ? "\n  " : text.substring(open, first);
      text.insert(open, lead + "\"" + key + "\": " + value + (empty ? "" : ","));
      changed = true;
    }
  }
}
