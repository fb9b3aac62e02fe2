package pressweek.data.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.At;
import pressweek.data.files.DowntimeRow;
import pressweek.data.files.Folder;
import pressweek.data.files.OrderRow;
import pressweek.data.files.PromisedRow;
import pressweek.data.files.RunningRow;
import pressweek.data.problem.Job;
import pressweek.data.problem.Promise;

/**
 * Promises that can be kept. One that beyond doubt cannot is left out with a warning, and the plan
 * goes on without it.
 */
final class PromiseBook {
  private static final String LEFT_OUT = "; the promise is left out";

  private final Folder folder;
  private final PlantClock clock;
  private final Notes notes;
  private final Map<String, Job> jobs = new HashMap<>();
  private final Map<String, RunningRow> running = new HashMap<>();
  private final Set<String> lines;

  PromiseBook(Folder folder, PlantClock clock, Notes notes, List<Job> jobs) {
    this.folder = folder;
    this.clock = clock;
    this.notes = notes;
    jobs.forEach(job -> this.jobs.put(job.id(), job));
    folder.floor().running().forEach(row -> running.put(row.order() + "/" + row.line(), row));
    lines = folder.demand().orders().stream().map(OrderRow::id).collect(Collectors.toSet());
  }

  /** A promise of a job, and the least minutes that its run takes on the press. */
  private record Held(PromisedRow row, int startMin, int runMin) {}

  /** The promises that can be kept, in the order of the file. */
  List<Promise> promises() {
    Map<String, PromisedRow> first = new HashMap<>();
    List<Held> held = new ArrayList<>();
    for (PromisedRow row : folder.floor().promised()) {
      PromisedRow before = first.putIfAbsent(row.id(), row);
      if (before != null) {
        warn(
            row,
            "order",
            "order %s is promised to %s, and by line %d to %s"
                .formatted(row.id(), row.press(), before.at().line(), before.press()));
      } else if (known(row)) {
        held(row).ifPresent(held::add);
      }
    }
    List<Held> kept = new ArrayList<>();
    held.stream()
        .collect(Collectors.groupingBy(h -> h.row().press()))
        .forEach((press, ofPress) -> kept.addAll(inTurn(press, ofPress)));
    kept.sort(Comparator.comparingInt(h -> h.row().at().line()));
    return kept.stream()
        .map(h -> new Promise(h.row().id(), h.row().press(), h.startMin()))
        .toList();
  }

  private void warn(PromisedRow row, String column, String message) {
    notes.warning(row.at(), column, message + LEFT_OUT);
  }

  /** True for a line that is planned and not running; what is running stays where it is. */
  private boolean known(PromisedRow row) {
    RunningRow runs = running.get(row.id());
    if (runs != null) {
      if (!runs.press().equals(row.press())) {
        warn(
            row,
            "press",
            "order %s is promised to %s, but %s says that it is running on %s"
                .formatted(row.id(), row.press(), runs.at(), runs.press()));
      }
      return false;
    }
    if (jobs.containsKey(row.id())) {
      return true;
    }
    if (jobs.containsKey(row.id() + "/2")) {
      warn(
          row,
          "line",
          "order %s is made in two parts, %s/1 and %s/2; expected one of them"
              .formatted(row.id(), row.line(), row.line()));
    } else if (lines.contains(row.id())) {
      notes.warning(
          row.at(),
          "order",
          "order %s is promised to %s but is not planned; see the unplaced lines and finished stock"
              .formatted(row.id(), row.press()));
    }
    return false;
  }

  private Optional<Held> held(PromisedRow row) {
    Job job = jobs.get(row.id());
    if (job == null) {
      return Optional.empty();
    }
    int start = clock.minute(row.start());
    int latest = start + folder.plant().moveToleranceMin();
    List<Integer> runs =
        job.options().stream()
            .filter(o -> o.press().equals(row.press()))
            .map(o -> o.pace().runMin())
            .toList();
    Optional<DowntimeRow> down = down(row.press(), start, latest);
    if (runs.isEmpty()) {
      warn(
          row,
          "press",
          "order %s is promised to %s, where none of its molds may run"
              .formatted(row.id(), row.press()));
    } else if (latest < clock.startMin()) {
      warn(
          row,
          "start",
          "order %s was promised for %s, is not running, and the plan starts at %s"
              .formatted(row.id(), clock.words(start), clock.words(clock.startMin())));
    } else if (down.isPresent()) {
      warn(
          row,
          "start",
          "order %s is promised to %s for %s to %s, and by %s the press is down all that time"
              .formatted(
                  row.id(), row.press(), clock.words(start), clock.words(latest), down.get().at()));
    } else {
      return Optional.of(
          new Held(row, start, runs.stream().mapToInt(Integer::intValue).min().orElse(0)));
    }
    return Optional.empty();
  }

  /** The downtime or trial of a press in which all minutes lie at which a run may start. */
  private Optional<DowntimeRow> down(String press, int fromMin, int latestMin) {
    int first = Math.max(fromMin, clock.startMin());
    return folder.floor().downtime().stream()
        .filter(row -> row.what().equals(press))
        .filter(row -> clock.minute(row.from()) <= first && clock.minute(row.to()) > latestMin)
        .findFirst();
  }

  /**
   * The promises of a press that can be kept one after the other: each run ends no earlier than its
   * own minutes after its start, and the next one still starts in time.
   */
  private List<Held> inTurn(String press, List<Held> promises) {
    List<Held> inOrder = new ArrayList<>(promises);
    inOrder.sort(
        Comparator.comparingInt(Held::startMin)
            .thenComparingInt(Held::runMin)
            .thenComparingInt(h -> h.row().at().line()));
    int freeMin = clock.startMin();
    Optional<At> busy = Optional.empty();
    Optional<RunningRow> runs =
        running.values().stream().filter(r -> r.press().equals(press)).findFirst();
    Job job = runs.map(r -> jobs.get(r.order() + "/" + r.line())).orElse(null);
    if (job != null) {
      freeMin += job.options().get(0).pace().runMin();
      busy = runs.map(RunningRow::at);
    }
    List<Held> kept = new ArrayList<>();
    for (Held next : inOrder) {
      if (busy.isPresent() && freeMin > next.startMin() + folder.plant().moveToleranceMin()) {
        warn(
            next.row(),
            "start",
            "order %s is promised to %s for %s, and the run of %s holds the press until %s at least"
                .formatted(
                    next.row().id(),
                    press,
                    clock.words(next.startMin()),
                    busy.get(),
                    clock.words(freeMin)));
        continue;
      }
      freeMin = Math.max(freeMin, next.startMin()) + next.runMin();
      busy = Optional.of(next.row().at());
      kept.add(next);
    }
    return kept;
  }
}
