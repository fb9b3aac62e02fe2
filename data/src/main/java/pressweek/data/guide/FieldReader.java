package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.JsonTree;

/** Reads the key {@code fields} of a guide. */
final class FieldReader {
  private static final String WORDS = "words";

  private final JsonNotes notes;
  private final String separator;
  private final boolean ignoreCase;

  FieldReader(JsonNotes notes, String separator, boolean ignoreCase) {
    this.notes = notes;
    this.separator = separator;
    this.ignoreCase = ignoreCase;
  }

  /** Fields by name. */
  Map<String, Field> read(JsonTree.Obj fields) {
    Map<String, Field> byName = new LinkedHashMap<>();
    fields
        .fields()
        .forEach(
            (name, value) ->
                notes
                    .object(value, name)
                    .flatMap(object -> field(name, object))
                    .ifPresent(field -> byName.put(name, field)));
    return byName;
  }

  private Optional<Field> field(String name, JsonTree.Obj object) {
    notes.onlyKeys(object, Set.of("sets", "table", "number"));
    boolean table = object.field("table").isPresent();
    boolean number = object.field("number").isPresent();
    if (table == number) {
      String seen =
          table ? "has both \"table\" and \"number\"" : "has no \"table\" and no \"number\"";
      notes.error(object.line(), name, "field \"" + name + "\" " + seen + "; expected one of them");
      return Optional.empty();
    }
    String sets = notes.text(object, "sets");
    String attribute = sets.isEmpty() ? name : sets;
    return Optional.of(table ? table(name, attribute, object) : number(name, attribute, object));
  }

  private Field number(String name, String attribute, JsonTree.Obj field) {
    JsonTree.Obj object = notes.object(field, "number");
    notes.onlyKeys(object, Set.of("unit", "min", "max", "step"));
    Optional<BigDecimal> min = notes.number(object, "min");
    Optional<BigDecimal> max = notes.number(object, "max");
    Optional<BigDecimal> step = notes.number(object, "step");
    if (min.isPresent() && max.isPresent() && min.get().compareTo(max.get()) > 0) {
      notes.error(object.line(), "min", "min " + min.get() + " is above max " + max.get());
    }
    if (step.isPresent() && step.get().signum() <= 0) {
      notes.error(object.line(), "step", "step is " + step.get() + "; expected more than 0");
      step = Optional.empty();
    }
    return new Field.Number(
        name, attribute, notes.text(object, "unit"), new Field.Range(min, max, step));
  }

  private Field table(String name, String attribute, JsonTree.Obj field) {
    JsonTree.Obj table = notes.object(field, "table");
    Map<String, Field.Entry> entries = new LinkedHashMap<>();
    Map<String, String> folded = new HashMap<>();
    table
        .fields()
        .forEach(
            (symbol, value) -> {
              checkSymbol(name, symbol, value.line());
              String key = ignoreCase ? symbol.toUpperCase(Locale.ROOT) : symbol;
              String same = folded.putIfAbsent(key, symbol);
              if (same != null) {
                notes.error(
                    value.line(),
                    name,
                    "\"%s\" and \"%s\" are the same where case is ignored".formatted(same, symbol));
              }
              entries.put(symbol, entry(attribute, symbol, value));
            });
    if (entries.isEmpty()) {
      notes.error(table.line(), name, "the table of \"" + name + "\" is empty; expected symbols");
    }
    return new Field.Table(name, attribute, entries);
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

  private Field.Entry entry(String attribute, String symbol, JsonTree value) {
    if (!(value instanceof JsonTree.Obj object)) {
      return new Field.Entry(Map.of(attribute, notes.text(value, symbol)), List.of());
    }
    Map<String, String> sets = new LinkedHashMap<>();
    sets.put(attribute, symbol);
    object
        .fields()
        .forEach(
            (key, said) -> {
              if (!key.equals(WORDS) && !(said instanceof JsonTree.Nothing)) {
                sets.put(key, notes.text(said, key));
              }
            });
    return new Field.Entry(sets, notes.textOrList(object, WORDS));
  }
}
