package pressweek.data.proof;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeReading;
import pressweek.data.guide.CodeReading.Piece;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Encoded;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Part;
import pressweek.data.guide.Pin;
import pressweek.data.problem.Attribute;

/**
 * Reads back codes that were written on purpose: each must mean what it was written for and nothing
 * else, and survive being decoded, encoded and decoded again. Codes that fail alike are told
 * together.
 */
final class ReadBack {
  private final Guide guide;
  private final Map<String, Group> groups = new LinkedHashMap<>();
  private int written;

  /** Codes that fail in the same way. */
  private static final class Group {
    private final int line;
    private final String message;
    private final boolean listed;
    private final Set<Part> parts = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> symbols = new LinkedHashSet<>();
    private int codes;

    Group(int line, String message, boolean listed) {
      this.line = line;
      this.message = message;
      this.listed = listed;
    }
  }

  /**
   * A code that was written on purpose.
   *
   * @param drawn the code
   * @param pins what it was written for; none for a random one
   */
  record Trial(Drawn drawn, List<Pin> pins) {
    Trial {
      pins = List.copyOf(pins);
    }

    Family family() {
      return drawn.family();
    }

    /** Symbols that it was written for. */
    List<Choice> symbols() {
      return pins.stream().flatMap(pin -> pin.choices().values().stream()).toList();
    }

    int line() {
      if (pins.isEmpty()) {
        return family().line();
      }
      Pin pin = pins.get(0);
      return pin.choices().values().stream()
          .findFirst()
          .map(Choice::line)
          .orElseGet(() -> family().parts().get(pin.part()).forms().get(pin.form()).line());
    }

    /** The part that it was written for. */
    String where() {
      return pins.isEmpty()
          ? family().name()
          : "part \"" + family().parts().get(pins.get(0).part()).name() + '"';
    }
  }

  ReadBack(Guide guide) {
    this.guide = guide;
  }

  int written() {
    return written;
  }

  /** Reads a code back; true when it means what it was written for. */
  boolean read(Trial trial) {
    written++;
    Drawn drawn = trial.drawn();
    List<CodeReading> readings = guide.readings(drawn.code());
    if (readings.size() > 1) {
      ambiguous(trial, readings);
      return false;
    }
    if (readings.isEmpty()) {
      String fault = guide.decode(drawn.code()).faults().get(0);
      fail(trial, "unread", "what the guide lets one write cannot be read back: " + fault);
      return false;
    }
    Map<String, String> values = values(readings.get(0).decoded());
    if (!values.equals(drawn.values())) {
      String read = differences(values, drawn.values());
      String message = "code \"%s\" is read as something else: %s".formatted(drawn.code(), read);
      fail(trial, "other", message);
      return false;
    }
    twins(trial);
    roundTrip(trial, values);
    return true;
  }

  /** Two families that give a code the same meaning: harmless for planning, but not for people. */
  private void twins(Trial trial) {
    List<String> families = guide.families(trial.drawn().code());
    if (families.size() > 1) {
      String key = "twins " + families;
      String message =
          "families \"%s\" both read code \"%s\", and as the same item"
              .formatted(String.join("\" and \"", families), trial.drawn().code());
      note(
          trial,
          groups.computeIfAbsent(key, k -> new Group(family(families.get(1)), message, true)));
    }
  }

  private void roundTrip(Trial trial, Map<String, String> values) {
    String code = trial.drawn().code();
    Encoded encoded = guide.encoder().encode(values);
    if (!encoded.good()) {
      String why = String.join("; ", encoded.faults());
      fail(trial, "lost", "no way back from what code \"%s\" means: %s".formatted(code, why));
      return;
    }
    Decoded again = guide.decode(encoded.code());
    if (!again.good() || !values(again).equals(values)) {
      String why =
          again.good() ? differences(values(again), values) : String.join("; ", again.faults());
      fail(
          trial,
          "changed",
          "code \"%s\" comes back as \"%s\", which does not mean the same: %s"
              .formatted(code, encoded.code(), why));
    }
  }

  /** Random codes that fail add nothing to symbols that fail in the same way. */
  private void fail(Trial trial, String kind, String message) {
    String byFamily = kind + " " + trial.family().name();
    String key = trial.pins().isEmpty() ? byFamily : byFamily + " " + trial.where();
    boolean known =
        trial.pins().isEmpty()
            && groups.keySet().stream().anyMatch(other -> other.startsWith(byFamily + " part"));
    if (!known) {
      note(trial, groups.computeIfAbsent(key, k -> new Group(trial.line(), message, true)));
    }
  }

  private static void note(Trial trial, Group group) {
    group.codes++;
    trial.pins().forEach(pin -> group.parts.add(trial.family().parts().get(pin.part())));
    trial.symbols().forEach(choice -> group.symbols.add(choice.text()));
  }

  private void ambiguous(Trial trial, List<CodeReading> readings) {
    Decoded first = readings.get(0).decoded();
    String fault = guide.decode(trial.drawn().code()).faults().get(0);
    for (CodeReading other : readings.subList(1, readings.size())) {
      String family = other.decoded().family();
      if (!family.equals(first.family())) {
        String key = "families " + first.family() + " | " + family;
        String message =
            "families \"%s\" and \"%s\" cannot be told apart: %s"
                .formatted(first.family(), family, fault);
        note(trial, groups.computeIfAbsent(key, k -> new Group(family(family), message, false)));
        return;
      }
    }
    Piece one = differing(readings.get(0), readings.get(1));
    Piece two = differing(readings.get(1), readings.get(0));
    String key = "pieces " + first.family() + " | " + one.part() + " | " + two.part();
    String where =
        one.part().equals(two.part())
            ? "part \"" + one.part() + "\" can be read in two ways: "
            : "parts \"" + one.part() + "\" and \"" + two.part() + "\" cannot be told apart: ";
    int line = Places.line(trial.family(), guide, one);
    note(trial, groups.computeIfAbsent(key, k -> new Group(line, where + fault, false)));
  }

  /** The first piece of a reading that is not the same in another reading. */
  private static Piece differing(CodeReading reading, CodeReading other) {
    for (int i = 0; i < reading.pieces().size(); i++) {
      Piece piece = reading.pieces().get(i);
      if (i >= other.pieces().size() || !piece.equals(other.pieces().get(i))) {
        return piece;
      }
    }
    return reading.pieces().get(reading.pieces().size() - 1);
  }

  private int family(String name) {
    return guide.families().stream()
        .filter(family -> family.name().equals(name))
        .mapToInt(Family::line)
        .findFirst()
        .orElse(1);
  }

  /** Tells what failed; parts that are never read as themselves are told elsewhere. */
  void tell(Bench bench, Set<Part> neverRead) {
    for (Group group : groups.values()) {
      if (!group.parts.isEmpty() && neverRead.containsAll(group.parts)) {
        continue;
      }
      int more = group.codes - 1;
      String also = "";
      if (group.listed && group.symbols.size() > 1) {
        also = "; so do others with " + Bench.few(List.copyOf(group.symbols));
      } else if (more > 0) {
        also = "; so do %d more of the codes tried".formatted(more);
      }
      bench.error(group.line, group.message + also);
    }
  }

  static Map<String, String> values(Decoded decoded) {
    Map<String, String> values = new HashMap<>();
    for (Attribute attribute : decoded.attributes()) {
      values.put(attribute.name(), attribute.value());
    }
    return values;
  }

  /** What one says otherwise than the other was meant. */
  private static String differences(Map<String, String> read, Map<String, String> meant) {
    Set<String> names = new TreeSet<>(read.keySet());
    names.addAll(meant.keySet());
    return names.stream()
        .filter(name -> !read.getOrDefault(name, "").equals(meant.getOrDefault(name, "")))
        .map(
            name ->
                "%s \"%s\" instead of \"%s\""
                    .formatted(name, read.getOrDefault(name, ""), meant.getOrDefault(name, "")))
        .collect(Collectors.joining(", "));
  }
}
