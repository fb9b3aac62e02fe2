package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import pressweek.data.problem.Break;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Shift;

/** Reads shifts, calendars and closed days of {@code plant.json}. */
final class ShiftReader {
  /** A shift before its own values are read: what each key would hold. */
  static final JsonTree.Obj SHAPE = shape();

  private static final int DAY_LETTERS = 3;

  private final JsonFields plant;
  private final Times times;
  private final List<Shift> shifts = new ArrayList<>();
  private final OpeningReader opening = new OpeningReader();
  private final Map<String, Integer> lines = new LinkedHashMap<>();
  private boolean gaveSetters;
  private boolean gaveOperators;

  ShiftReader(JsonFields plant, Times times) {
    this.plant = plant;
    this.times = times;
    for (JsonTree.Obj shift : plant.objects("shifts")) {
      read(shift);
    }
    if (plant.items("shifts").isEmpty()) {
      plant.wrong("shifts", plant.value("shifts"), "at least one shift");
    }
    if (shifts.isEmpty()) {
      shifts.add(
          new Shift(
              "day",
              Set.of(DayOfWeek.MONDAY),
              LocalTime.MIN,
              LocalTime.NOON,
              List.of(),
              0,
              0,
              OptionalInt.empty()));
    }
  }

  private static JsonTree.Obj shape() {
    Map<String, JsonTree> fields = new LinkedHashMap<>();
    fields.put("name", new JsonTree.Text(0, ""));
    fields.put("days", new JsonTree.Arr(0, List.of(new JsonTree.Text(0, "MON"))));
    fields.put("from", new JsonTree.Text(0, "00:00"));
    fields.put("to", new JsonTree.Text(0, "00:00"));
    fields.put("breaks", new JsonTree.Arr(0, List.of()));
    fields.put("setters", new JsonTree.Num(0, BigDecimal.ZERO));
    fields.put("operators", new JsonTree.Num(0, BigDecimal.ZERO));
    fields.put("inspectors", new JsonTree.Num(0, BigDecimal.ZERO));
    fields.put("overtime_h", new JsonTree.Num(0, BigDecimal.ZERO));
    fields.put("unattended", new JsonTree.Bool(0, false));
    return new JsonTree.Obj(0, fields);
  }

  /** The shifts; at least one. */
  List<Shift> shifts() {
    return shifts;
  }

  boolean gaveSetters() {
    return gaveSetters;
  }

  boolean gaveOperators() {
    return gaveOperators;
  }

  /** Where findings go; what the default shifts say was not given by the plant. */
  private JsonFields.Notes notes() {
    JsonFields.Notes notes = plant.notes();
    return plant.gave("shifts")
        ? notes
        : new JsonFields.Notes(notes.file(), notes.findings(), new HashMap<>());
  }

  private void read(JsonTree.Obj object) {
    JsonFields.Notes notes = notes();
    JsonFields fields = new JsonFields(notes, "shifts.", object, SHAPE);
    for (String key : List.of("name", "days", "from", "to")) {
      if (!fields.gave(key)) {
        notes.error(
            object.line(),
            "shifts." + key,
            "a shift has no \"" + key + "\"; expected name, days, from and to");
        return;
      }
    }
    gaveSetters |= fields.gave("setters");
    gaveOperators |= fields.gave("operators");
    String name = fields.text("name");
    Integer before = lines.putIfAbsent(name, object.line());
    if (name.isEmpty() || before != null) {
      String seen =
          before == null
              ? "a shift has an empty name"
              : "shift \"" + name + "\" is also in line " + before;
      notes.error(object.line(), "shifts.name", seen + "; expected a name for each");
      return;
    }
    Shift shift =
        new Shift(
            name,
            fields.read("days", "a list of days such as [\"MON\", \"TUE\"]", ShiftReader::days),
            fields.time("from"),
            fields.time("to"),
            breaks(fields),
            fields.whole("setters", 0, 10_000),
            fields.scaled("operators", 1000, 10_000, RoundingMode.HALF_UP),
            fields.gave("inspectors")
                ? OptionalInt.of(fields.whole("inspectors", 0, 10_000))
                : OptionalInt.empty());
    new BreakCheck(notes, object.line()).check(shift);
    shifts.add(shift);
    opening.take(fields, shift);
  }

  /** Shifts that are not worked as others are. */
  Opening opening() {
    return opening.opening();
  }

  private static List<Break> breaks(JsonFields fields) {
    List<Break> breaks = new ArrayList<>();
    for (JsonTree item : fields.items("breaks")) {
      breakOf(item)
          .ifPresentOrElse(
              breaks::add,
              () ->
                  fields.wrong(
                      "breaks",
                      item,
                      "a list of breaks such as {\"from\": \"10:00\", \"to\": \"10:15\"}"));
    }
    return breaks;
  }

  private static Optional<Break> breakOf(JsonTree value) {
    if (!(value instanceof JsonTree.Obj object)) {
      return Optional.empty();
    }
    Optional<LocalTime> from = object.field("from").flatMap(JsonFields::asTime);
    Optional<LocalTime> to = object.field("to").flatMap(JsonFields::asTime);
    boolean only = object.fields().keySet().equals(Set.of("from", "to"));
    return only ? from.flatMap(f -> to.map(t -> new Break(f, t))) : Optional.empty();
  }

  /**
   * Days of the week by their English names or the first three letters of these; empty when one of
   * them is none.
   */
  static Optional<Set<DayOfWeek>> days(JsonTree value) {
    if (!(value instanceof JsonTree.Arr list) || list.items().isEmpty()) {
      return Optional.empty();
    }
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (JsonTree item : list.items()) {
      Optional<DayOfWeek> day = JsonFields.asText(item).flatMap(ShiftReader::day);
      if (day.isEmpty()) {
        return Optional.empty();
      }
      days.add(day.get());
    }
    return Optional.of(days);
  }

  private static Optional<DayOfWeek> day(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (upper.equals(day.name()) || upper.equals(day.name().substring(0, DAY_LETTERS))) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /** Names of shifts by name of calendar; no shift of a calendar runs into another. */
  Map<String, List<String>> calendars() {
    Map<String, List<String>> calendars = new LinkedHashMap<>();
    boolean defaults = plant.gave("shifts") && !plant.gave("calendars");
    JsonTree value = plant.value("calendars");
    if (!(value instanceof JsonTree.Obj object)) {
      plant.wrong(
          "calendars",
          value,
          "an object of calendars such as {\"two-shift\": [\"early\", \"late\"]}");
      return calendars;
    }
    if (!defaults) {
      object.fields().forEach((name, list) -> calendars.put(name, calendar(name, list)));
    }
    if (calendars.isEmpty()) {
      int line = plant.gave("shifts") ? plant.value("shifts").line() : 0;
      ShiftOverlap.in(shifts)
          .ifPresent(
              o ->
                  plant
                      .notes()
                      .error(line, "shifts", o + "; expected calendars that keep them apart"));
    }
    return calendars;
  }

  private List<String> calendar(String name, JsonTree value) {
    String path = "calendars." + name;
    List<Shift> members = new ArrayList<>();
    List<JsonTree> items = value instanceof JsonTree.Arr list ? list.items() : List.of(value);
    Set<String> seen = new HashSet<>();
    for (JsonTree item : items) {
      Optional<Shift> shift =
          JsonFields.asText(item)
              .flatMap(t -> shifts.stream().filter(s -> s.name().equals(t)).findFirst());
      if (shift.isPresent() && seen.add(shift.get().name())) {
        members.add(shift.get());
      } else if (shift.isPresent()
          || !JsonFields.asText(item).map(lines::containsKey).orElse(false)) {
        String names = String.join(", ", lines.keySet());
        plant
            .notes()
            .error(
                item.line(),
                path,
                path + " has " + item.kind() + "; expected each of these at most once: " + names);
      }
    }
    ShiftOverlap.in(members)
        .ifPresent(
            o ->
                plant
                    .notes()
                    .error(value.line(), path, path + ": " + o + "; expected one shift at a time"));
    return members.stream().map(Shift::name).toList();
  }

  /** Days on which no shift begins. */
  List<LocalDate> closed() {
    List<LocalDate> closed = new ArrayList<>();
    for (JsonTree item : plant.items("closed")) {
      Optional<When> day = JsonFields.asText(item).flatMap(times::parse).filter(Times::plausible);
      if (day.isPresent() && day.get() instanceof When.Day date) {
        closed.add(date.date());
      } else {
        plant.wrong("closed", item, "a list of dates, " + times.expected());
      }
    }
    return closed.stream().distinct().sorted().toList();
  }
}
