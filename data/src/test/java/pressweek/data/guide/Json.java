package pressweek.data.guide;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.files.JsonTree;

/** JSON written in a test, as a tree with its lines. */
final class Json {
  private Json() {}

  /** The object that a text holds. */
  static JsonTree.Obj object(String text) {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      parser.nextToken();
      return (JsonTree.Obj) value(parser);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonTree value(JsonParser parser) throws IOException {
    int line = parser.currentTokenLocation().getLineNr();
    switch (parser.currentToken()) {
      case START_OBJECT:
        Map<String, JsonTree> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String key = parser.currentName();
          parser.nextToken();
          fields.put(key, value(parser));
        }
        return new JsonTree.Obj(line, fields);
      case START_ARRAY:
        List<JsonTree> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          items.add(value(parser));
        }
        return new JsonTree.Arr(line, items);
      case VALUE_NUMBER_INT:
      case VALUE_NUMBER_FLOAT:
        return new JsonTree.Num(line, parser.getDecimalValue());
      case VALUE_TRUE:
      case VALUE_FALSE:
        return new JsonTree.Bool(line, parser.getBooleanValue());
      case VALUE_NULL:
        return new JsonTree.Nothing(line);
      default:
        return new JsonTree.Text(line, parser.getText());
    }
  }
}
