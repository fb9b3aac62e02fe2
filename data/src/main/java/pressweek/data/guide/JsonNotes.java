package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.InputFile;
import pressweek.data.files.JsonTree;
import pressweek.data.files.Nearest;

/** Reads values out of {@code guide.json} and notes what is wrong with them. */
final class JsonNotes {
  private final List<InputError> findings = new ArrayList<>();

  /** What has been noted so far. */
  List<InputError> findings() {
    return List.copyOf(findings);
  }

  /** True when an error, not only a warning, has been noted. */
  boolean hasErrors() {
    return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }

  void error(int line, String key, String message) {
    findings.add(new InputError(Severity.ERROR, InputFile.GUIDE.fileName(), line, key, message));
  }

  void warning(int line, String key, String message) {
    findings.add(new InputError(Severity.WARNING, InputFile.GUIDE.fileName(), line, key, message));
  }

  /** Notes every key that is none of the known ones. */
  void onlyKeys(JsonTree.Obj object, Set<String> known) {
    for (Map.Entry<String, JsonTree> field : object.fields().entrySet()) {
      if (!known.contains(field.getKey())) {
        String nearest =
            String.join(", ", Nearest.to(field.getKey(), known.stream().sorted().toList(), 3));
        error(
            field.getValue().line(),
            field.getKey(),
            "unknown key \"" + field.getKey() + "\"; nearest: " + nearest);
      }
    }
  }

  /** The object of a key; an empty one when it is not there. */
  JsonTree.Obj object(JsonTree.Obj parent, String key) {
    return parent
        .field(key)
        .flatMap(value -> object(value, key))
        .orElseGet(() -> new JsonTree.Obj(parent.line(), Map.of()));
  }

  Optional<JsonTree.Obj> object(JsonTree value, String key) {
    if (value instanceof JsonTree.Obj object) {
      return Optional.of(object);
    }
    wrong(value, key, "an object");
    return Optional.empty();
  }

  /** The items of the list of a key; none when it is not there. */
  List<JsonTree> list(JsonTree.Obj parent, String key) {
    Optional<JsonTree> value = parent.field(key);
    if (value.isPresent() && value.get() instanceof JsonTree.Arr list) {
      return list.items();
    }
    value.ifPresent(other -> wrong(other, key, "a list"));
    return List.of();
  }

  /**
   * The text of a key; empty when it is not there. Numbers and true or false are taken as they are
   * written.
   */
  String text(JsonTree.Obj parent, String key) {
    return parent.field(key).map(value -> text(value, key)).orElse("");
  }

  String text(JsonTree value, String key) {
    if (value instanceof JsonTree.Text text) {
      return text.value().strip();
    }
    if (value instanceof JsonTree.Num number) {
      return number.value().toPlainString();
    }
    if (value instanceof JsonTree.Bool bool) {
      return bool.value() ? "yes" : "no";
    }
    wrong(value, key, "a text");
    return "";
  }

  boolean flag(JsonTree.Obj parent, String key) {
    Optional<JsonTree> value = parent.field(key);
    if (value.isPresent() && value.get() instanceof JsonTree.Bool bool) {
      return bool.value();
    }
    value.ifPresent(other -> wrong(other, key, "true or false"));
    return false;
  }

  Optional<BigDecimal> number(JsonTree.Obj parent, String key) {
    Optional<JsonTree> value = parent.field(key);
    if (value.isPresent() && value.get() instanceof JsonTree.Num number) {
      return Optional.of(number.value());
    }
    value.ifPresent(other -> wrong(other, key, "a number"));
    return Optional.empty();
  }

  /** A whole number from 1 to {@code most}; 0 when it is not there. */
  int whole(JsonTree.Obj parent, String key, int most) {
    Optional<BigDecimal> number = number(parent, key);
    if (number.isEmpty()) {
      return 0;
    }
    BigDecimal value = number.get().stripTrailingZeros();
    boolean inRange = value.signum() > 0 && value.compareTo(BigDecimal.valueOf(most)) <= 0;
    if (value.scale() > 0 || !inRange) {
      error(
          parent.line(),
          key,
          key + " is " + number.get() + "; expected a whole number 1 to " + most);
      return 0;
    }
    return value.intValueExact();
  }

  /** Texts by key; keys in the order of the file. */
  Map<String, String> texts(JsonTree.Obj object) {
    Map<String, String> texts = new LinkedHashMap<>();
    object
        .fields()
        .forEach(
            (key, value) -> {
              if (!(value instanceof JsonTree.Nothing)) {
                texts.put(key, text(value, key));
              }
            });
    return texts;
  }

  /** A text, or a list of texts. */
  List<String> textOrList(JsonTree.Obj parent, String key) {
    Optional<JsonTree> value = parent.field(key);
    if (value.isPresent() && value.get() instanceof JsonTree.Arr list) {
      return list.items().stream().map(item -> text(item, key)).toList();
    }
    return value.map(one -> List.of(text(one, key))).orElse(List.of());
  }

  private void wrong(JsonTree value, String key, String expected) {
    error(value.line(), key, "\"" + key + "\" is " + value.kind() + "; expected " + expected);
  }
}
