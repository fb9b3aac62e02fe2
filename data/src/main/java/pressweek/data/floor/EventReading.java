package pressweek.data.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.files.EventKind;
import pressweek.data.files.EventRow;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.Nearest;
import pressweek.data.files.OrderRow;
import pressweek.data.plan.Plan;

/**
 * Checks events against the plan that they happened to: what they name must be in it, their times
 * must lie within it, and they must not contradict each other.
 */
public final class EventReading {
  private static final int SHOWN = 5;

  private final PlanThings things;
  private final EventTimes times;
  private final List<FloorEvent> events = new ArrayList<>();
  private final List<OrderRow> rush = new ArrayList<>();
  private final List<InputError> findings = new ArrayList<>();
  private final Map<String, FloorEvent> byLine = new LinkedHashMap<>();

  private EventReading(Plan plan, int nowMin) {
    things = new PlanThings(plan);
    times = new EventTimes(plan.problem().plant().hours(), nowMin);
  }

  /**
   * What the rows say.
   *
   * @param events events of things and lines that the plan knows, and one for each new order line
   * @param rush new order lines
   * @param findings what is wrong (errors), and what does not change the plan (warnings)
   */
  public record Result(List<FloorEvent> events, List<OrderRow> rush, List<InputError> findings) {
    public Result {
      events = List.copyOf(events);
      rush = List.copyOf(rush);
      findings = List.copyOf(findings);
    }

    /** True when nothing is wrong. */
    public boolean sound() {
      return findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    }
  }

  /**
   * Checks rows.
   *
   * @param rows rows of {@code events.csv}
   * @param plan the plan that they happened to
   * @param nowMin the present, minutes since 1970 UTC
   */
  public static Result of(List<EventRow> rows, Plan plan, int nowMin) {
    EventReading reading = new EventReading(plan, nowMin);
    rows.forEach(reading::take);
    return new Result(reading.events, reading.rush, reading.findings);
  }

  private void take(EventRow row) {
    unused(row);
    Optional<String> wrong = times.wrong(row);
    if (wrong.isPresent()) {
      error(row, row.at().isPresent() ? "at" : "until", wrong.get());
      return;
    }
    switch (row.event()) {
      case PRESS_AWAY -> away(row, things.presses(), "press");
      case MOLD_AWAY -> away(row, things.molds(), "mold");
      case PERSON_AWAY -> away(row, things.people(), "person");
      case LOT_HELD -> known(row, things.lots(), "lot").ifPresent(id -> add(row, id));
      case RUSH -> rush(row);
      case FINISHED, COUNT_SHORT -> line(row).ifPresent(id -> line(row, id));
      case DROPPED, ON_HOLD -> lines(row).forEach(id -> line(row, id));
    }
  }

  /** Warns of a cell that this kind of event has no use for. */
  private void unused(EventRow row) {
    boolean counted = row.event() == EventKind.COUNT_SHORT || row.event() == EventKind.PERSON_AWAY;
    if (row.count().isPresent() && !counted) {
      warning(row, "count", "count is not used for " + row.event().word() + "; expected it empty");
    }
    if (row.until().isPresent() && !row.event().away()) {
      warning(row, "until", "until is not used for " + row.event().word() + "; expected it empty");
    }
    boolean ordered = !row.item().isEmpty() || row.quantity().isPresent() || row.due().isPresent();
    if ((ordered || !row.needs().isEmpty()) && row.event() != EventKind.RUSH) {
      warning(
          row,
          "item",
          "item, quantity, due and needs are for rush only; they are not used for this row");
    }
    if (!row.line().isEmpty() && !row.event().ofLine() && row.event() != EventKind.RUSH) {
      warning(row, "line", "line is not used for " + row.event().word() + "; expected it empty");
    }
  }

  private void away(EventRow row, List<String> known, String noun) {
    Optional<String> id = known(row, known, noun);
    if (id.isEmpty()) {
      return;
    }
    if (row.event() == EventKind.PERSON_AWAY && row.count().orElse(1) < 1) {
      error(row, "count", "count is 0; expected at least 1 person away");
      return;
    }
    if (times.to(row) <= times.nowMin() && row.event() != EventKind.PRESS_AWAY) {
      warning(row, "until", noun + " " + id.get() + " is back already; nothing changes by it");
    }
    add(row, id.get());
  }

  private Optional<String> known(EventRow row, List<String> known, String noun) {
    if (known.contains(row.what())) {
      return Optional.of(row.what());
    }
    error(row, "what", noun + " \"" + row.what() + "\" is not in the plan; " + near(row, known));
    return Optional.empty();
  }

  private static String near(EventRow row, List<String> known) {
    List<String> near = Nearest.to(row.what(), known, SHOWN);
    return near.isEmpty() ? "the plan has none" : "expected one such as " + String.join(", ", near);
  }

  /**
   * The lines that a row speaks of: one, all parts of it where it is made in several, or all of the
   * order where it names none.
   */
  private List<String> lines(EventRow row) {
    List<String> all = things.lines(row.what());
    if (all.isEmpty()) {
      known(row, things.orders(), "order");
      return all;
    }
    if (row.line().isEmpty()) {
      return all;
    }
    String id = row.what() + "/" + row.line();
    List<String> named = PlanThings.of(all, id);
    if (named.isEmpty()) {
      error(
          row, "line", "line " + id + " is not in the plan; expected " + String.join(" or ", all));
    }
    return named;
  }

  private Optional<String> line(EventRow row) {
    List<String> all = lines(row);
    if (all.size() > 1) {
      String seen = row.line().isEmpty() ? "is empty" : "\"" + row.line() + "\" has several parts";
      error(row, "line", "line " + seen + "; expected one of " + String.join(", ", all));
      return Optional.empty();
    }
    return all.stream().findFirst();
  }

  private void line(EventRow row, String id) {
    int good = things.good(id);
    if (row.event() == EventKind.COUNT_SHORT && row.count().orElse(0) >= good) {
      error(
          row,
          "count",
          "count %d of line %s; expected fewer than the %d pieces to make, or the event finished"
              .formatted(row.count().orElse(0), id, good));
      return;
    }
    FloorEvent before = byLine.get(id);
    if (before != null) {
      error(
          row,
          "event",
          "line %s is said to be %s, but line %d says %s; expected one of the two"
              .formatted(id, row.event().word(), before.source().line(), before.kind().word()));
      return;
    }
    byLine.put(id, event(row, id));
    add(row, id);
  }

  private void rush(EventRow row) {
    String line = row.line().isEmpty() ? "1" : row.line();
    String id = row.what() + "/" + line;
    Set<String> taken = new TreeSet<>(things.lines(row.what()));
    rush.forEach(other -> taken.add(other.id()));
    if (!PlanThings.of(taken, id).isEmpty()) {
      error(row, "line", "line " + id + " is there already; expected an order line that is new");
      return;
    }
    rush.add(RushRow.of(row, line));
    add(row, id);
  }

  private void add(EventRow row, String id) {
    events.add(event(row, id));
  }

  private FloorEvent event(EventRow row, String id) {
    return new FloorEvent(
        row.source(),
        row.event(),
        id,
        times.from(row),
        times.to(row),
        row.count().orElse(row.event() == EventKind.PERSON_AWAY ? 1 : 0),
        row.note());
  }

  private void error(EventRow row, String column, String message) {
    findings.add(finding(Severity.ERROR, row, column, message));
  }

  private void warning(EventRow row, String column, String message) {
    findings.add(finding(Severity.WARNING, row, column, message));
  }

  private static InputError finding(
      Severity severity, EventRow row, String column, String message) {
    return new InputError(severity, row.source().file(), row.source().line(), column, message);
  }
}
