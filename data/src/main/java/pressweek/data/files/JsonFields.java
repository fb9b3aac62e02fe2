package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pressweek.data.files.InputError.Severity;

/**
 * An object of {@code plant.json} read key by key. What the plant does not give, or gives wrongly,
 * is taken from the defaults, which hold every key there is.
 */
final class JsonFields {
  private static final BigDecimal CENT_THOUSANDTHS = BigDecimal.valueOf(100_000);

  private final Notes notes;
  private final String path;
  private final JsonTree.Obj given;
  private final JsonTree.Obj defaults;

  /**
   * Where findings go.
   *
   * @param file the file
   * @param findings findings
   * @param given line of every key that was given, by its path; grows
   */
  record Notes(String file, Findings findings, Map<String, Integer> given) {
    void error(int line, String key, String message) {
      findings.add(new InputError(Severity.ERROR, file, line, key, message));
    }

    void warning(int line, String key, String message) {
      findings.add(new InputError(Severity.WARNING, file, line, key, message));
    }
  }

  /**
   * The fields of an object.
   *
   * @param notes where findings go
   * @param path path of the object with a dot at its end; empty for the file itself
   * @param given what the plant gives
   * @param defaults every key with its default
   */
  JsonFields(Notes notes, String path, JsonTree.Obj given, JsonTree.Obj defaults) {
    this.notes = notes;
    this.path = path;
    this.given = given;
    this.defaults = defaults;
    given.fields().forEach(this::note);
  }

  private void note(String key, JsonTree value) {
    if (defaults.fields().containsKey(key)) {
      if (!(value instanceof JsonTree.Nothing)) {
        notes.given().put(path + key, value.line());
      }
      return;
    }
    String cure =
        Nearest.of(key, defaults.fields().keySet())
            .map(n -> "did you mean \"" + n + "\"?")
            .orElse("expected one of " + String.join(", ", defaults.fields().keySet()));
    notes.warning(
        value.line(), path + key, "key \"" + path + key + "\" is not known and not used; " + cure);
  }

  Notes notes() {
    return notes;
  }

  /** The path of a key. */
  String path(String key) {
    return path + key;
  }

  /** True when the plant gives the key. */
  boolean gave(String key) {
    return given.field(key).isPresent();
  }

  /** The value that the plant gives, else the default. */
  JsonTree value(String key) {
    return given.field(key).orElseGet(() -> fallback(key));
  }

  private JsonTree fallback(String key) {
    return defaults
        .field(key)
        .orElseThrow(() -> new IllegalStateException("no default for " + path + key));
  }

  /** Says that the value of a key is not what it should be. */
  void wrong(String key, JsonTree seen, String expected) {
    notes.error(
        seen.line(), path + key, path + key + " is " + seen.kind() + "; expected " + expected);
  }

  /** The value read by a function, or the default read by it when it cannot read the value. */
  <T> T read(String key, String expected, Function<JsonTree, Optional<T>> reader) {
    JsonTree value = value(key);
    Optional<T> read = reader.apply(value);
    if (read.isPresent()) {
      return read.get();
    }
    wrong(key, value, expected);
    return reader
        .apply(fallback(key))
        .orElseThrow(() -> new IllegalStateException("bad default " + path + key));
  }

  String text(String key) {
    return read(key, "a text", JsonFields::asText);
  }

  static Optional<String> asText(JsonTree value) {
    return value instanceof JsonTree.Text text
        ? Optional.of(text.value().strip())
        : Optional.empty();
  }

  boolean flag(String key) {
    return read(
        key,
        "true or false",
        v -> v instanceof JsonTree.Bool b ? Optional.of(b.value()) : Optional.empty());
  }

  int whole(String key, int least, int most) {
    String expected = "a whole number from " + Numbers.show(least) + " to " + Numbers.show(most);
    return read(
        key,
        expected,
        v ->
            number(v, least, most)
                .filter(n -> n.stripTrailingZeros().scale() <= 0)
                .map(BigDecimal::intValueExact));
  }

  double decimal(String key, double least, double most) {
    return exact(key, least, most).doubleValue();
  }

  /** A number times a factor, rounded. */
  int scaled(String key, int factor, double most, RoundingMode rounding) {
    return exact(key, 0, most)
        .multiply(BigDecimal.valueOf(factor))
        .setScale(0, rounding)
        .intValueExact();
  }

  /** Money, thousandths of a cent. */
  long money(String key) {
    return exact(key, 0, 100_000_000)
        .multiply(CENT_THOUSANDTHS)
        .setScale(0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private BigDecimal exact(String key, double least, double most) {
    String expected = "a number from " + Numbers.show(least) + " to " + Numbers.show(most);
    return read(key, expected, v -> number(v, least, most));
  }

  private static Optional<BigDecimal> number(JsonTree value, double least, double most) {
    if (!(value instanceof JsonTree.Num num)
        || num.value().compareTo(BigDecimal.valueOf(least)) < 0
        || num.value().compareTo(BigDecimal.valueOf(most)) > 0) {
      return Optional.empty();
    }
    // A number such as 1e-99999 is within any range and yet too long to calculate with.
    return Optional.of(
        num.value().setScale(Math.min(Math.max(num.value().scale(), 0), 12), RoundingMode.HALF_UP));
  }

  LocalTime time(String key) {
    return read(key, "a time of day such as \"06:00\"", JsonFields::asTime);
  }

  /** A time of day; {@code 24:00} is midnight. */
  static Optional<LocalTime> asTime(JsonTree value) {
    return asText(value)
        .flatMap(
            text -> {
              try {
                return Optional.of(
                    text.equals("24:00") ? LocalTime.MIDNIGHT : LocalTime.parse(text));
              } catch (DateTimeException e) {
                return Optional.empty();
              }
            });
  }

  /** The values of a list; a single value counts as a list of one. */
  List<JsonTree> items(String key) {
    JsonTree value = value(key);
    return value instanceof JsonTree.Arr list ? list.items() : List.of(value);
  }

  /** The objects of a list; what is no object is an error. */
  List<JsonTree.Obj> objects(String key) {
    List<JsonTree.Obj> objects = new ArrayList<>();
    for (JsonTree item : items(key)) {
      if (item instanceof JsonTree.Obj object) {
        objects.add(object);
      } else {
        wrong(key, item, "a list of objects");
      }
    }
    return objects;
  }

  /** The texts of a list; what is no text is an error. */
  List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    for (JsonTree item : items(key)) {
      asText(item).ifPresentOrElse(texts::add, () -> wrong(key, item, "a list of texts"));
    }
    return texts;
  }

  /** The fields of an object within. */
  JsonFields within(String key) {
    JsonTree.Obj inner =
        read(
            key, "an object", v -> v instanceof JsonTree.Obj o ? Optional.of(o) : Optional.empty());
    boolean theirs = given.field(key).filter(inner::equals).isPresent();
    JsonTree.Obj nothing = new JsonTree.Obj(inner.line(), Map.of());
    return new JsonFields(
        notes, path + key + ".", theirs ? inner : nothing, (JsonTree.Obj) fallback(key));
  }
}
