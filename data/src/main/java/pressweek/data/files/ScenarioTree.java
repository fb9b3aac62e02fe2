package pressweek.data.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.ScenarioEdit.Condition;
import pressweek.data.files.ScenarioEdit.Verb;

/**
 * {@code plant.json} as a scenario changes it. The scenario's lines count on after the last one of
 * the file, so that what is found in its values can be told from what is found in the plant's own:
 * {@link #located}.
 */
final class ScenarioTree {
  private static final String FILE = InputFile.PLANT.fileName();

  /** Objects whose keys are names of the plant's own. */
  private static final List<String> FREE = List.of("calendars");

  private final Scenario scenario;
  private final Findings findings;
  private final JsonTree.Obj defaults = PlantReader.defaults();
  private final int lines;
  private Optional<JsonTree.Obj> tree;

  /**
   * Changes the plant's file.
   *
   * @param given the file; empty when there is none
   * @param findings where faults of the scenario go
   */
  ScenarioTree(Scenario scenario, Optional<JsonTree.Obj> given, Findings findings) {
    this.scenario = scenario;
    this.findings = findings;
    this.tree = given;
    this.lines = given.map(JsonLines::last).orElse(0);
    List<ScenarioEdit> edits = scenario.of(InputFile.PLANT);
    for (Verb verb : Verb.values()) {
      edits.stream().filter(e -> e.verb() == verb).forEach(this::apply);
    }
  }

  /** The changed file; empty when there is none and nothing is changed. */
  Optional<JsonTree.Obj> tree() {
    return tree;
  }

  /** A finding where it really is. */
  InputError located(InputError finding) {
    return finding.line() <= lines || !finding.file().equals(FILE) || !scenario.given()
        ? finding
        : new InputError(
            finding.severity(),
            scenario.file(),
            finding.line() - lines,
            finding.column(),
            finding.message());
  }

  private void apply(ScenarioEdit edit) {
    if (edit.list().isEmpty()) {
      JsonTree.Obj changed = root();
      for (Map.Entry<String, JsonTree> value : edit.values().entrySet()) {
        changed = known(value) ? put(edit.verb(), changed, value, value.getKey()) : changed;
      }
      tree = Optional.of(changed);
      return;
    }
    List<String> path = path(edit.list());
    Optional<JsonTree> there = JsonLines.at(root(), path).or(() -> JsonLines.at(defaults, path));
    if (there.isEmpty() || !(there.get() instanceof JsonTree.Arr list)) {
      if (known(Map.entry(edit.list(), new JsonTree.Nothing(edit.line())))) {
        String seen = there.map(JsonTree::kind).orElse("not there");
        error(edit.line(), edit.list() + " of " + FILE + " is " + seen + "; expected a list");
      }
      return;
    }
    JsonTree.Arr changed = new JsonTree.Arr(list.line(), entries(edit, list.items()));
    tree = Optional.of(JsonLines.with(root(), path, changed));
  }

  private JsonTree.Obj root() {
    return tree.orElseGet(() -> new JsonTree.Obj(0, Map.of()));
  }

  private static List<String> path(String key) {
    return Arrays.asList(key.split("\\.", -1));
  }

  private List<JsonTree> entries(ScenarioEdit edit, List<JsonTree> items) {
    List<JsonTree> entries = new ArrayList<>();
    boolean fitted = false;
    for (JsonTree item : items) {
      boolean fits = edit.verb() != Verb.ADD && edit.where().stream().allMatch(c -> fits(c, item));
      fitted |= fits;
      if (!fits) {
        entries.add(item);
      } else if (edit.verb() != Verb.DROP) {
        entries.add(changed(edit, item));
      }
    }
    if (edit.verb() == Verb.ADD) {
      JsonTree entry = edit.values().get("");
      entries.add(moved(entry != null ? entry : new JsonTree.Obj(edit.line(), edit.values())));
    } else if (!fitted) {
      error(
          edit.line(),
          "no entry of "
              + edit.list()
              + " in "
              + FILE
              + " has "
              + edit.whereText()
              + near(edit, items));
    }
    return entries;
  }

  private JsonTree changed(ScenarioEdit edit, JsonTree item) {
    if (!(item instanceof JsonTree.Obj object)) {
      error(edit.line(), edit.list() + " has " + item.kind() + "; expected objects to change");
      return item;
    }
    JsonTree.Obj changed = object;
    for (Map.Entry<String, JsonTree> value : edit.values().entrySet()) {
      if (edit.list().equals("shifts") && !ShiftReader.SHAPE.fields().containsKey(value.getKey())) {
        unknown(value.getValue().line(), "a shift", value.getKey(), ShiftReader.SHAPE);
      } else {
        changed = put(edit.verb(), changed, value, edit.list() + "." + value.getKey());
      }
    }
    return changed;
  }

  private JsonTree.Obj put(
      Verb verb, JsonTree.Obj object, Map.Entry<String, JsonTree> value, String name) {
    List<String> path = path(value.getKey());
    if (verb == Verb.SET) {
      return JsonLines.with(object, path, moved(value.getValue()));
    }
    Optional<JsonTree> there = JsonLines.at(object, path).or(() -> JsonLines.at(defaults, path));
    if (there.isPresent()
        && there.get() instanceof JsonTree.Num figure
        && value.getValue() instanceof JsonTree.Num factor) {
      BigDecimal scaled = ScenarioValue.scaled(figure.value(), factor.value(), false);
      return JsonLines.with(
          object, path, new JsonTree.Num(lines + factor.line(), scaled.stripTrailingZeros()));
    }
    String seen = there.map(JsonTree::kind).orElse("not there");
    error(value.getValue().line(), name + " of " + FILE + " is " + seen + "; expected a number");
    return object;
  }

  /** Whether the plant's file may have the key; an unknown one is said. */
  private boolean known(Map.Entry<String, JsonTree> value) {
    JsonTree level = defaults;
    String above = "";
    for (String key : path(value.getKey())) {
      if (!(level instanceof JsonTree.Obj object) || FREE.contains(above)) {
        return true;
      }
      Optional<JsonTree> next = object.field(key);
      if (next.isEmpty()) {
        String where = above.isEmpty() ? FILE : above + " of " + FILE;
        unknown(value.getValue().line(), where, key, object);
        return false;
      }
      above = above.isEmpty() ? key : above + "." + key;
      level = FREE.contains(above) ? object : next.get();
    }
    return true;
  }

  private void unknown(int line, String where, String key, JsonTree.Obj object) {
    String cure =
        Nearest.of(key, object.fields().keySet())
            .map(n -> "did you mean \"" + n + "\"?")
            .orElse("expected one of " + String.join(", ", object.fields().keySet()));
    error(line, where + " has no key \"" + key + "\"; " + cure);
  }

  private static boolean fits(Condition condition, JsonTree item) {
    Optional<JsonTree> value =
        condition.key().isEmpty()
            ? Optional.of(item)
            : item instanceof JsonTree.Obj object
                ? JsonLines.at(object, path(condition.key()))
                : Optional.empty();
    String text = value.flatMap(v -> ScenarioValue.text(v, false)).orElse("");
    return condition.patterns().stream().anyMatch(p -> ScenarioValue.fits(p, text));
  }

  private static String near(ScenarioEdit edit, List<JsonTree> items) {
    Condition first = edit.where().get(0);
    List<String> texts = new ArrayList<>();
    for (JsonTree item : items) {
      Optional<JsonTree> value =
          item instanceof JsonTree.Obj object
              ? JsonLines.at(object, path(first.key()))
              : Optional.of(item);
      value.flatMap(v -> ScenarioValue.text(v, false)).ifPresent(texts::add);
    }
    return Nearest.of(first.patterns().get(0), texts)
        .map(n -> "; did you mean \"" + n + "\"?")
        .orElse("; expected one of " + String.join(", ", texts));
  }

  private JsonTree moved(JsonTree value) {
    return JsonLines.moved(value, lines);
  }

  private void error(int line, String message) {
    findings.add(new InputError(Severity.ERROR, scenario.file(), line, "", message));
  }
}
