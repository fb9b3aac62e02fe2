package pressweek.data.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.JsonTree;
import pressweek.data.files.Nearest;

/** Reads the key {@code parts} of a guide. */
final class PartsReader {
  private static final int MOST_REPEATS = 15;

  private final JsonNotes notes;
  private final Map<String, Field> fields;
  private final String separator;
  private final boolean ignoreCase;
  private final Set<String> unused;

  PartsReader(JsonNotes notes, Map<String, Field> fields, String separator, boolean ignoreCase) {
    this.notes = notes;
    this.fields = fields;
    this.separator = separator;
    this.ignoreCase = ignoreCase;
    this.unused = new LinkedHashSet<>(fields.keySet());
  }

  /** Parts by name. */
  Map<String, Part> read(JsonTree.Obj parts) {
    Map<String, Part> byName = new LinkedHashMap<>();
    parts
        .fields()
        .forEach(
            (name, value) ->
                notes
                    .object(value, name)
                    .ifPresent(object -> byName.put(name, part(name, object))));
    unused.forEach(
        name -> notes.warning(parts.line(), "fields", "field \"" + name + "\" is in no part"));
    return byName;
  }

  private Part part(String name, JsonTree.Obj object) {
    notes.onlyKeys(object, Set.of("forms", "optional", "any_order", "repeat"));
    List<Form> forms = new ArrayList<>();
    for (JsonTree value : notes.list(object, "forms")) {
      if (value instanceof JsonTree.Obj form) {
        notes.onlyKeys(form, Set.of("form", "sets"));
        Map<String, String> sets = notes.texts(notes.object(form, "sets"));
        forms.add(form(form.line(), notes.text(form, "form"), sets));
      } else {
        forms.add(form(value.line(), notes.text(value, "forms"), Map.of()));
      }
    }
    if (forms.isEmpty()) {
      notes.error(object.line(), "forms", "part \"" + name + "\" has no forms; expected a list");
    }
    return new Part(
        name,
        forms,
        notes.flag(object, "optional"),
        notes.flag(object, "any_order"),
        Math.max(1, notes.whole(object, "repeat", MOST_REPEATS)),
        object.line());
  }

  private Form form(int line, String text, Map<String, String> sets) {
    List<Form.Piece> pieces = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int open = text.indexOf('{', at);
      int end = open < 0 ? text.length() : open;
      if (end > at) {
        literal(line, text.substring(at, end), pieces);
      }
      at = end;
      if (open >= 0) {
        int close = text.indexOf('}', open);
        if (close < 0) {
          notes.error(line, "form", "form \"" + text + "\" has no \"}\" for its \"{\"");
          close = text.length() - 1;
        } else {
          slot(line, text.substring(open + 1, close), pieces);
        }
        at = close + 1;
      }
    }
    if (text.isEmpty()) {
      notes.error(line, "form", "an empty form; expected text and fields in braces");
    }
    return new Form(text, pieces, sets, line);
  }

  private void literal(int line, String text, List<Form.Piece> pieces) {
    if (!separator.isEmpty() && text.contains(separator)) {
      notes.error(
          line,
          "form",
          "\"%s\" in a form holds the separator \"%s\" and can never be read"
              .formatted(text, separator));
    }
    pieces.add(new Form.Literal(text, Symbols.fold(text, ignoreCase)));
  }

  private void slot(int line, String name, List<Form.Piece> pieces) {
    Field field = fields.get(name);
    if (field == null) {
      String nearest = String.join(", ", Nearest.to(name, fields.keySet(), 3));
      notes.error(line, "form", "unknown field \"" + name + "\"; nearest: " + nearest);
    } else {
      unused.remove(name);
      pieces.add(new Form.Slot(field));
    }
  }
}
