package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.JsonTree;

/** Reads the key {@code fields} of a guide. */
final class FieldReader {
  private static final Set<String> KEYS =
      Set.of("sets", "table", "number", "special", "mixed", "width", "fill");
  private static final List<String> KINDS = List.of("table", "number", "special");
  private static final int MOST_WIDTH = 60;
  private static final int MOST_DECIMALS = 6;

  private final JsonNotes notes;
  private final boolean ignoreCase;
  private final Fill fill;
  private final TableReader tables;

  FieldReader(JsonNotes notes, String separator, boolean ignoreCase, Fill fill) {
    this.notes = notes;
    this.ignoreCase = ignoreCase;
    this.fill = fill;
    this.tables = new TableReader(notes, separator);
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
    notes.onlyKeys(object, KEYS);
    List<String> kinds = KINDS.stream().filter(kind -> object.field(kind).isPresent()).toList();
    if (kinds.size() != 1) {
      String seen =
          kinds.isEmpty()
              ? "has no \"table\", no \"number\" and no \"special\""
              : "has both \"" + String.join("\" and \"", kinds) + "\"";
      notes.error(object.line(), name, "field \"" + name + "\" " + seen + "; expected one of them");
      return Optional.empty();
    }
    Field.Frame frame = frame(name, object);
    return Optional.of(
        switch (kinds.get(0)) {
          case "table" -> table(frame, object);
          case "number" -> number(frame, object);
          default -> special(frame, object);
        });
  }

  private Field.Frame frame(String name, JsonTree.Obj object) {
    boolean mixed = notes.flag(object, "mixed");
    String sets = notes.text(object, "sets");
    if (mixed && (!sets.isEmpty() || object.field("table").isEmpty())) {
      notes.error(
          object.line(), "mixed", "\"mixed\" is for a table without \"sets\"; expected no mixed");
    }
    int width = notes.whole(object, "width", MOST_WIDTH);
    String attribute = mixed ? "" : sets.isEmpty() ? name : sets;
    Fill usual = width > 0 ? fill : Fill.NOTHING;
    Fill own = object.field("fill").isPresent() ? fill(object, usual) : usual;
    if (width > 0 && own.shorter().isEmpty() && object.field("number").isPresent()) {
      own = new Fill("0", true, own.none(), own.standard());
    }
    return new Field.Frame(name, attribute, width, own, object.line());
  }

  /** The key {@code fill} of the guide or of a field; what it does not say is as usual. */
  Fill fill(JsonTree.Obj parent, Fill usual) {
    return fill(notes, ignoreCase, parent, usual);
  }

  /** The key {@code fill} of an object. */
  static Fill fill(JsonNotes notes, boolean ignoreCase, JsonTree.Obj parent, Fill usual) {
    JsonTree.Obj object = notes.object(parent, "fill");
    notes.onlyKeys(object, Set.of("short", "side", "none", "standard"));
    String side = notes.text(object, "side");
    if (!side.isEmpty() && !side.equals("left") && !side.equals("right")) {
      notes.error(object.line(), "side", "side is \"" + side + "\"; expected left or right");
    }
    Fill read =
        new Fill(
            character(notes, object, "short", usual.shorter()),
            side.isEmpty() ? usual.left() : side.equals("left"),
            character(notes, object, "none", usual.none()),
            character(notes, object, "standard", usual.standard()));
    if (!read.none().isEmpty() && read.none().equals(read.standard())) {
      notes.error(
          object.line(), "fill", "\"none\" and \"standard\" are both \"" + read.none() + "\"");
    }
    return new Fill(
        Symbols.fold(read.shorter(), ignoreCase),
        read.left(),
        Symbols.fold(read.none(), ignoreCase),
        Symbols.fold(read.standard(), ignoreCase));
  }

  private static String character(
      JsonNotes notes, JsonTree.Obj object, String key, String otherwise) {
    if (object.field(key).isEmpty()) {
      return otherwise;
    }
    String text = notes.text(object, key);
    if (text.length() > 1) {
      notes.error(
          object.line(), key, "\"" + key + "\" is \"" + text + "\"; expected one character");
      return otherwise;
    }
    return text;
  }

  private Field number(Field.Frame frame, JsonTree.Obj field) {
    JsonTree.Obj object = notes.object(field, "number");
    notes.onlyKeys(object, Set.of("unit", "min", "max", "step", "decimals"));
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
    int decimals = notes.whole(object, "decimals", MOST_DECIMALS);
    Fill fill = frame.fill();
    boolean digit = !fill.shorter().isEmpty() && Character.isDigit(fill.shorter().charAt(0));
    if (frame.width() > 0 && digit && !(fill.left() && fill.shorter().equals("0"))) {
      notes.error(
          frame.line(),
          frame.name(),
          "what fills up the number cannot be told from its digits; expected zeros on the left, or"
              + " no digit");
    }
    return new Field.Number(
        frame, notes.text(object, "unit"), decimals, new Field.Range(min, max, step));
  }

  private Field special(Field.Frame frame, JsonTree.Obj field) {
    JsonTree.Obj object = notes.object(field, "special");
    notes.onlyKeys(object, Set.of("from", "to", "skip"));
    String from = notes.text(object, "from");
    String to = notes.text(object, "to");
    Optional<String> fault = Marks.fault(from, to);
    fault.ifPresent(text -> notes.error(object.line(), "special", text));
    if (frame.width() > 0 && frame.width() < from.length()) {
      notes.error(object.line(), "width", "marks are longer than the width " + frame.width());
    } else if (frame.width() > from.length() && frame.fill().shorter().isEmpty()) {
      String seen = "marks are shorter than the width " + frame.width() + " and nothing fills them";
      notes.error(object.line(), "width", seen);
    }
    return new Field.Special(
        frame,
        fault.isPresent()
            ? new Marks("0", "0", "")
            : new Marks(from, to, notes.text(object, "skip")));
  }

  private Field table(Field.Frame frame, JsonTree.Obj field) {
    JsonTree.Obj table = notes.object(field, "table");
    Map<String, Field.Entry> entries = tables.entries(frame, table);
    Map<String, String> folded = new HashMap<>();
    entries.forEach(
        (symbol, entry) -> {
          String same = folded.putIfAbsent(Symbols.fold(symbol, ignoreCase), symbol);
          if (same != null) {
            notes.error(
                entry.line(),
                frame.name(),
                "\"%s\" and \"%s\" are the same where case is ignored".formatted(same, symbol));
          }
          tables.checkWidth(frame, symbol, entry.line(), ignoreCase);
        });
    if (entries.isEmpty()) {
      notes.error(
          table.line(),
          frame.name(),
          "the table of \"" + frame.name() + "\" is empty; expected symbols");
    }
    return new Field.Table(frame, entries, new Symbols(entries.keySet(), ignoreCase));
  }
}
