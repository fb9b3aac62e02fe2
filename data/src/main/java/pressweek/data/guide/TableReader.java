package pressweek.data.guide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.files.JsonTree;

/** Reads the tables of fields. */
final class TableReader {
  private static final String WORDS = "words";

  private final JsonNotes notes;
  private final String separator;

  TableReader(JsonNotes notes, String separator) {
    this.notes = notes;
    this.separator = separator;
  }

  /** What each symbol of a table means, in the order of the guide. */
  Map<String, Field.Entry> entries(Field.Frame frame, JsonTree.Obj table) {
    Map<String, Field.Entry> entries = new LinkedHashMap<>();
    table
        .fields()
        .forEach(
            (symbol, value) -> {
              checkSymbol(frame.name(), symbol, value.line());
              entries.put(symbol, entry(frame.attribute(), symbol, value));
            });
    return entries;
  }

  private void checkSymbol(String field, String symbol, int line) {
    if (symbol.isEmpty()) {
      notes.error(line, field, "an empty symbol in \"" + field + "\"; expected text");
    } else if (!separator.isEmpty() && symbol.contains(separator)) {
      notes.error(
          line,
          field,
          "symbol \"%s\" holds the separator \"%s\" and can never be read"
              .formatted(symbol, separator));
    }
  }

  /** Notes a symbol that does not go with the width of its field and what fills it. */
  void checkWidth(Field.Frame frame, String symbol, int line, boolean ignoreCase) {
    int width = frame.width();
    Fill fill = frame.fill();
    String folded = Symbols.fold(symbol, ignoreCase);
    if (width > 0 && symbol.length() > width) {
      note(frame, symbol, line, "is longer than the width " + width);
    } else if (width > 0 && symbol.length() < width && fill.shorter().isEmpty()) {
      note(frame, symbol, line, "is shorter than the width " + width + " and nothing fills it");
    } else if (width > symbol.length()
        && (fill.left() ? folded.startsWith(fill.shorter()) : folded.endsWith(fill.shorter()))) {
      note(frame, symbol, line, "cannot be told from the fill character \"" + fill.shorter() + '"');
    } else if (is(folded, fill.none(), width) || is(folded, fill.standard(), width)) {
      note(frame, symbol, line, "is what the fill characters already mean");
    }
  }

  private static boolean is(String folded, String fill, int width) {
    return !fill.isEmpty() && folded.equals(Fill.whole(fill, width));
  }

  private void note(Field.Frame frame, String symbol, int line, String what) {
    notes.error(line, frame.name(), "symbol \"" + symbol + "\" " + what);
  }

  private Field.Entry entry(String attribute, String symbol, JsonTree value) {
    Map<String, String> sets = new LinkedHashMap<>();
    if (!(value instanceof JsonTree.Obj object)) {
      if (attribute.isEmpty()) {
        notes.error(
            value.line(),
            symbol,
            "\"" + symbol + "\" of a mixed table is a text; expected an object with attributes");
      }
      sets.put(attribute, notes.text(value, symbol));
      return new Field.Entry(sets, List.of(), value.line());
    }
    if (!attribute.isEmpty()) {
      sets.put(attribute, symbol);
    }
    object
        .fields()
        .forEach(
            (key, said) -> {
              if (!key.equals(WORDS) && !(said instanceof JsonTree.Nothing)) {
                sets.put(key, notes.text(said, key));
              }
            });
    return new Field.Entry(sets, notes.textOrList(object, WORDS), value.line());
  }
}
