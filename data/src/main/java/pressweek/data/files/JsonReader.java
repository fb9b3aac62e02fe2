package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.TextFile;

/**
 * Reads JSON into a tree that knows its lines; a key that occurs twice in an object is an error.
 */
public final class JsonReader {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final String file;
  private final List<InputError> findings = new ArrayList<>();

  private JsonReader(String file) {
    this.file = file;
  }

  /** Reads a file whose bytes have been looked at. */
  static JsonReading read(Path path, FileScan scan) throws IOException {
    JsonReader reader = new JsonReader(path.getFileName().toString());
    if (!scan.content().text()) {
      return reader.failed(0, "is not text; expected JSON");
    }
    if (scan.content() == FileScan.Content.WINDOWS_1252) {
      reader.add(
          Severity.WARNING, scan.oddLine(), "has bytes that are not UTF-8; read as Windows-1252");
    }
    try (Reader text = TextFile.open(path, scan.content())) {
      return reader.read(text);
    }
  }

  /** Reads a text that is called so in findings. */
  public static JsonReading read(String file, Reader text) throws IOException {
    return new JsonReader(file).read(text);
  }

  private JsonReading read(Reader source) throws IOException {
    BufferedReader text = new BufferedReader(source);
    text.mark(1);
    if (text.read() != '\uFEFF') {
      text.reset();
    }
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        return failed(0, "is empty; expected JSON");
      }
      JsonTree tree = value(parser);
      if (parser.nextToken() != null) {
        return failed(
            line(parser),
            "more text follows the end of the JSON value; expected the end of the file");
      }
      return new JsonReading(Optional.of(tree), findings);
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      String seen =
          e.getOriginalMessage()
              .lines()
              .findFirst()
              .orElse("")
              .replaceAll(" ?\\(start marker.*", "");
      return failed(
          at == null ? 0 : Math.max(0, at.getLineNr()),
          "not JSON: " + seen + "; expected valid JSON");
    }
  }

  private JsonReading failed(int line, String message) {
    add(Severity.ERROR, line, message);
    return new JsonReading(Optional.empty(), findings);
  }

  private void add(Severity severity, int line, String message) {
    findings.add(new InputError(severity, file, line, "", message));
  }

  private static int line(JsonParser parser) {
    return parser.currentTokenLocation().getLineNr();
  }

  private JsonTree value(JsonParser parser) throws IOException {
    int line = line(parser);
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(parser, line);
      case START_ARRAY -> list(parser, line);
      case VALUE_STRING -> new JsonTree.Text(line, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonTree.Num(line, parser.getDecimalValue());
      case VALUE_TRUE, VALUE_FALSE -> new JsonTree.Bool(line, token == JsonToken.VALUE_TRUE);
      case VALUE_NULL -> new JsonTree.Nothing(line);
      case NOT_AVAILABLE, END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT ->
          throw new IllegalStateException("no value begins with " + token);
    };
  }

  private JsonTree.Obj object(JsonParser parser, int line) throws IOException {
    Map<String, JsonTree> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      int keyLine = line(parser);
      parser.nextToken();
      JsonTree value = value(parser);
      JsonTree before = fields.putIfAbsent(key, value);
      if (before != null) {
        add(
            Severity.ERROR,
            keyLine,
            "key \"" + key + "\" is also in line " + before.line() + "; expected it once");
      }
    }
    return new JsonTree.Obj(line, fields);
  }

  private JsonTree.Arr list(JsonParser parser, int line) throws IOException {
    List<JsonTree> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser));
    }
    return new JsonTree.Arr(line, items);
  }
}
