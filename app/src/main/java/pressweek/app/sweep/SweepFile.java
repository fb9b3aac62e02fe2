package pressweek.app.sweep;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.JsonReader;
import pressweek.data.files.JsonReading;
import pressweek.data.files.JsonTree;

/**
 * Which plans a sweep makes, {@code sweep.json}: every scenario with every seed.
 *
 * <pre>
 * {"steps": 2000, "seeds": {"from": 1, "count": 20}, "scenarios": ["", "third-shift.json"],
 *  "replays": 200}
 * </pre>
 *
 * @param steps steps of each search, so that the same task gives the same plan everywhere
 * @param seeds seeds of the search
 * @param scenarios scenario files, paths from the sweep's own folder; empty text for the folder as
 *     it is
 * @param replaying how often each plan is replayed under uncertain times
 */
public record SweepFile(int steps, List<Long> seeds, List<String> scenarios, Replaying replaying) {
  private static final int MOST_SEEDS = 100_000;
  private static final int MOST_STEPS = 100_000_000;
  private static final Set<String> KEYS =
      Set.of("steps", "seeds", "scenarios", "replays", "replay_seed");
  private static final int MOST_REPLAYS = 10_000;

  public SweepFile {
    seeds = List.copyOf(seeds);
    scenarios = List.copyOf(scenarios);
  }

  /**
   * What was read.
   *
   * @param sweep the sweep; empty when there is an error
   * @param errors what was wrong
   */
  public record Reading(Optional<SweepFile> sweep, List<InputError> errors) {
    public Reading {
      errors = List.copyOf(errors);
    }
  }

  /** Reads a sweep. */
  public static Reading read(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    byte[] bytes = Files.readAllBytes(file);
    JsonReading json =
        JsonReader.read(name, new StringReader(new String(bytes, StandardCharsets.UTF_8)));
    List<InputError> errors = new ArrayList<>(json.findings());
    Keys keys = new Keys(name, errors);
    Optional<JsonTree.Obj> object = json.tree().flatMap(keys::object);
    if (object.isEmpty()) {
      return new Reading(Optional.empty(), errors);
    }
    SweepFile sweep =
        new SweepFile(
            keys.steps(object.get()),
            keys.seeds(object.get()),
            keys.scenarios(object.get()),
            keys.replaying(object.get()));
    boolean sound = errors.stream().noneMatch(e -> e.severity() == Severity.ERROR);
    return new Reading(sound ? Optional.of(sweep) : Optional.empty(), errors);
  }

  /** The keys of the file; what is wrong is added to the errors. */
  private record Keys(String file, List<InputError> errors) {
    Optional<JsonTree.Obj> object(JsonTree tree) {
      if (!(tree instanceof JsonTree.Obj object)) {
        wrong(tree, "the file", "an object with steps, seeds and scenarios");
        return Optional.empty();
      }
      object
          .fields()
          .forEach(
              (key, value) -> {
                if (!KEYS.contains(key)) {
                  error(
                      value.line(),
                      key,
                      "key \""
                          + key
                          + "\" is not known; expected steps, seeds, scenarios, replays, replay_seed");
                }
              });
      return Optional.of(object);
    }

    int steps(JsonTree.Obj object) {
      Optional<JsonTree> value = object.field("steps");
      if (value.isEmpty()) {
        error(
            object.line(),
            "steps",
            "key \"steps\" missing; expected the steps of each search, as 2000");
        return 1;
      }
      return (int) number(value.get(), "steps", 1, MOST_STEPS);
    }

    List<Long> seeds(JsonTree.Obj object) {
      Optional<JsonTree> value = object.field("seeds");
      if (value.isEmpty()) {
        return List.of(1L);
      }
      Set<Long> seeds = new LinkedHashSet<>();
      if (value.get() instanceof JsonTree.Arr list) {
        list.items().forEach(item -> seeds.add(number(item, "seeds", 0, Integer.MAX_VALUE)));
      } else if (value.get() instanceof JsonTree.Obj range) {
        long from =
            range.field("from").map(v -> number(v, "from", 0, Integer.MAX_VALUE)).orElse(1L);
        if (range.field("count").isEmpty()) {
          error(
              range.line(),
              "seeds",
              "count of seeds is missing; expected as in {\"from\": 1, \"count\": 20}");
          return List.of();
        }
        long count = range.field("count").map(v -> number(v, "count", 1, MOST_SEEDS)).orElse(0L);
        for (long seed = from; seed < from + count; seed++) {
          seeds.add(seed);
        }
      }
      if (seeds.isEmpty() || seeds.size() > MOST_SEEDS) {
        wrong(
            value.get(),
            "seeds",
            "1 to " + MOST_SEEDS + " seeds, or as {\"from\": 1, \"count\": 20}");
      }
      return List.copyOf(seeds);
    }

    List<String> scenarios(JsonTree.Obj object) {
      Optional<JsonTree> value = object.field("scenarios");
      if (value.isEmpty()) {
        return List.of("");
      }
      Set<String> scenarios = new LinkedHashSet<>();
      if (value.get() instanceof JsonTree.Arr list) {
        for (JsonTree item : list.items()) {
          if (item instanceof JsonTree.Text text) {
            scenarios.add(text.value());
          } else {
            wrong(
                item, "scenarios", "the path of a scenario file, or \"\" for the folder as it is");
          }
        }
      }
      if (scenarios.isEmpty()) {
        wrong(value.get(), "scenarios", "a list of scenario files");
      }
      return List.copyOf(scenarios);
    }

    Replaying replaying(JsonTree.Obj object) {
      long count =
          object.field("replays").map(v -> number(v, "replays", 0, MOST_REPLAYS)).orElse(0L);
      long seed =
          object
              .field("replay_seed")
              .map(v -> number(v, "replay_seed", 0, Integer.MAX_VALUE))
              .orElse(Replaying.NONE.seed());
      return count == 0 ? Replaying.NONE : new Replaying((int) count, seed);
    }

    private long number(JsonTree value, String key, long least, long most) {
      if (value instanceof JsonTree.Num number
          && number.value().compareTo(BigDecimal.valueOf(least)) >= 0
          && number.value().compareTo(BigDecimal.valueOf(most)) <= 0
          && number.value().stripTrailingZeros().scale() <= 0) {
        return number.value().longValue();
      }
      wrong(value, key, "a whole number from " + least + " to " + most);
      return least;
    }

    private void wrong(JsonTree seen, String key, String expected) {
      error(seen.line(), key, key + " is " + seen.kind() + "; expected " + expected);
    }

    private void error(int line, String key, String message) {
      errors.add(new InputError(Severity.ERROR, file, line, key, message));
    }
  }
}
