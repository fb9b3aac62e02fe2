package pressweek.data.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.ScenarioEdit.Condition;
import pressweek.data.files.ScenarioEdit.Verb;

/**
 * Reads a scenario's own form. Whether its columns, keys and rows are there is found out where they
 * are changed.
 */
final class ScenarioReader {
  static final List<String> KEYS =
      List.of("schema", "name", "words", "set", "add", "drop", "scale");

  private final String file;
  private final Findings findings = new Findings();
  private final List<ScenarioEdit> edits = new ArrayList<>();

  ScenarioReader(String file) {
    this.file = file;
  }

  /** The scenario, with whatever is wrong with it. */
  Scenario read(JsonReading reading, String sha256) {
    findings.addAll(reading.findings());
    if (reading.tree().isPresent() && reading.object().isEmpty()) {
      JsonTree tree = reading.tree().get();
      error(tree.line(), "the file is " + tree.kind() + "; expected an object");
    }
    Map<String, JsonTree> fields = reading.object().map(JsonTree.Obj::fields).orElse(Map.of());
    if (reading.object().isPresent()) {
      head(reading.object().get());
    }
    for (Verb verb : Verb.values()) {
      JsonTree list = fields.get(verb.key());
      if (list instanceof JsonTree.Arr items) {
        items.items().forEach(item -> edit(verb, item));
      } else if (list != null) {
        error(list.line(), verb.key() + " is " + list.kind() + "; expected a list of changes");
      }
    }
    if (reading.object().isPresent() && edits.isEmpty() && findings.list().isEmpty()) {
      error(0, "the scenario changes nothing; expected set, add, drop or scale");
    }
    return new Scenario(
        file, sha256, text(fields, "name"), text(fields, "words"), edits, findings.list());
  }

  private void head(JsonTree.Obj object) {
    known(object, KEYS, "");
    String schema = text(object.fields(), "schema");
    if (!schema.equals(Scenario.SCHEMA)) {
      error(
          line(object, "schema"),
          "schema is \"" + schema + "\"; expected \"" + Scenario.SCHEMA + "\"");
    }
    if (text(object.fields(), "name").isEmpty()) {
      error(line(object, "name"), "the scenario has no name; expected \"name\": \"...\"");
    }
  }

  private static int line(JsonTree.Obj object, String key) {
    return object.field(key).map(JsonTree::line).orElse(object.line());
  }

  private static String text(Map<String, JsonTree> fields, String key) {
    return fields.get(key) instanceof JsonTree.Text text ? text.value().strip() : "";
  }

  private boolean known(JsonTree.Obj object, List<String> keys, String in) {
    boolean all = true;
    for (Map.Entry<String, JsonTree> field : object.fields().entrySet()) {
      if (!keys.contains(field.getKey())) {
        all = false;
        error(
            field.getValue().line(),
            "key \"" + field.getKey() + "\"" + in + " is not known; " + nearest(field, keys));
      }
    }
    return all;
  }

  private static String nearest(Map.Entry<String, JsonTree> field, List<String> keys) {
    return Nearest.of(field.getKey(), keys)
        .map(n -> "did you mean \"" + n + "\"?")
        .orElse("expected one of " + String.join(", ", keys));
  }

  private void edit(Verb verb, JsonTree item) {
    if (!(item instanceof JsonTree.Obj object)) {
      error(item.line(), verb.key() + " has " + item.kind() + "; expected an object");
      return;
    }
    List<String> keys = new ArrayList<>(List.of("file", "in"));
    keys.addAll(verb == Verb.ADD ? List.of("row") : List.of("where"));
    if (verb == Verb.SET || verb == Verb.SCALE) {
      keys.add(verb.valueKey());
    }
    int before = findings.list().size();
    known(object, keys, " of a change to " + verb.key());
    Optional<InputFile> target = target(object);
    List<Condition> where = where(object);
    Map<String, JsonTree> values = verb == Verb.DROP ? Map.of() : values(verb, object);
    if (target.isPresent()) {
      form(verb, object, target.get(), where);
    }
    if (findings.list().size() == before && target.isPresent()) {
      String list = text(object.fields(), "in");
      edits.add(new ScenarioEdit(verb, target.get(), object.line(), list, where, values));
    }
  }

  private Optional<InputFile> target(JsonTree.Obj object) {
    String name = text(object.fields(), "file");
    List<InputFile> files =
        Arrays.stream(InputFile.values())
            .filter(f -> f.table() && f != InputFile.EVENTS || f == InputFile.PLANT)
            .toList();
    Optional<InputFile> found =
        files.stream()
            .filter(f -> name.equals(f.fileName()) || name.equals(f.workbookName()))
            .findFirst();
    if (found.isEmpty()) {
      List<String> names = files.stream().map(InputFile::fileName).toList();
      String cure =
          Nearest.of(name, names)
              .map(n -> "did you mean \"" + n + "\"?")
              .orElse("expected plant.json or a table of the folder such as orders.csv");
      String seen = name.isEmpty() ? "a change names no file" : "file \"" + name + "\" is none";
      error(line(object, "file"), seen + " that a scenario changes; " + cure);
    }
    return found;
  }

  /** What a change must say depends on what it does and on the kind of file. */
  private void form(Verb verb, JsonTree.Obj object, InputFile target, List<Condition> where) {
    boolean list = object.field("in").isPresent();
    if (target.table() && list) {
      error(line(object, "in"), "\"in\" is for plant.json; expected it left out for a table");
    }
    if (!target.table() && !list && (verb == Verb.ADD || verb == Verb.DROP || !where.isEmpty())) {
      error(
          object.line(),
          "the change names no list of plant.json; expected \"in\", for example \"in\": \"shifts\"");
    }
    if (verb == Verb.DROP && where.isEmpty() && object.field("where").isEmpty()) {
      error(object.line(), "a drop has no \"where\"; expected the rows that are left out");
    }
    boolean row = object.field("row").filter(r -> !(r instanceof JsonTree.Obj)).isPresent();
    if (target.table() && row) {
      error(line(object, "row"), "row is no object; expected its cells by column");
    }
  }

  private List<Condition> where(JsonTree.Obj object) {
    Optional<JsonTree> where = object.field("where");
    if (where.isEmpty()) {
      return List.of();
    }
    if (!(where.get() instanceof JsonTree.Obj conditions)) {
      return condition("", where.get()).map(List::of).orElse(List.of());
    }
    List<Condition> read = new ArrayList<>();
    conditions.fields().forEach((key, value) -> condition(key, value).ifPresent(read::add));
    if (conditions.fields().isEmpty()) {
      error(conditions.line(), "where says nothing; expected a column and what it holds");
    }
    return read;
  }

  private Optional<Condition> condition(String key, JsonTree value) {
    List<String> patterns = new ArrayList<>();
    for (JsonTree each : value instanceof JsonTree.Arr list ? list.items() : List.of(value)) {
      Optional<String> text = ScenarioValue.text(each, false);
      if (text.isEmpty() || each instanceof JsonTree.Arr) {
        error(each.line(), "where has " + each.kind() + "; expected a text or a list of texts");
        return Optional.empty();
      }
      patterns.add(text.get());
    }
    if (patterns.isEmpty()) {
      error(value.line(), "where has an empty list; expected at least one text");
      return Optional.empty();
    }
    return Optional.of(new Condition(key, value.line(), patterns));
  }

  private Map<String, JsonTree> values(Verb verb, JsonTree.Obj object) {
    String key = verb.valueKey();
    JsonTree values = object.fields().get(key);
    if (verb == Verb.ADD && values != null && !(values instanceof JsonTree.Obj)) {
      return Map.of("", values);
    }
    if (!(values instanceof JsonTree.Obj cells) || cells.fields().isEmpty()) {
      error(
          values == null ? object.line() : values.line(),
          "a change to "
              + verb.key()
              + " has no \""
              + key
              + "\"; expected an object such as "
              + (verb == Verb.SCALE ? "{\"quantity\": 1.2}" : "{\"column\": \"value\"}"));
      return Map.of();
    }
    if (verb == Verb.SCALE) {
      cells.fields().values().forEach(this::factor);
    }
    return new LinkedHashMap<>(cells.fields());
  }

  private void factor(JsonTree value) {
    boolean good = value instanceof JsonTree.Num n && ScenarioValue.factor(n.value());
    if (!good) {
      error(
          value.line(),
          "the factor is " + value.kind() + "; expected a number from 0.001 to 1,000");
    }
  }

  private void error(int line, String message) {
    findings.add(new InputError(Severity.ERROR, file, line, "", message));
  }
}
