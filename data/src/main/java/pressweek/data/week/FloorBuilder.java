package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.DowntimeRow;
import pressweek.data.files.Folder;
import pressweek.data.files.MoldRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.RunningRow;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;

/** Presses and molds and how they stand at the start of the plan. */
final class FloorBuilder {
  /** The calendar of presses that name none. */
  static final String ALL_SHIFTS = "all shifts";

  private final Folder folder;
  private final PlantClock clock;
  private final Notes notes;

  FloorBuilder(Folder folder, PlantClock clock, Notes notes) {
    this.folder = folder;
    this.clock = clock;
    this.notes = notes;
  }

  /** A row of molds.csv as a mold. */
  static Mold mold(MoldRow row, PlantClock clock) {
    return new Mold(
        row.mold(),
        row.use(),
        row.cavities(),
        row.body(),
        row.runsOn(),
        new Mold.MoldChange(row.changeMin(), row.dummyPlugs(), clock.minute(row.availableFrom())),
        row.cycleS(),
        row.handLoad());
  }

  /** The floor, with the molds as they are known already and the jobs that were found. */
  Floor build(List<Mold> molds, List<Job> jobs) {
    Map<String, Job> byId = new HashMap<>();
    jobs.forEach(job -> byId.put(job.id(), job));
    return new Floor(
        folder.floor().presses().stream().map(FloorBuilder::press).toList(),
        molds,
        folder.floor().running().stream().map(row -> state(row, byId)).toList(),
        downtime(),
        new PromiseBook(folder, clock, notes, jobs).promises(),
        folder.floor().recordedChanges().stream()
            .map(
                row ->
                    new RecordedChange(
                        row.press(), row.from(), row.to(), row.minutes(), row.purgeG()))
            .toList());
  }

  private static Press press(PressRow row) {
    return new Press(
        row.press(),
        row.cell(),
        row.build(),
        row.size(),
        row.calendar().isEmpty() ? ALL_SHIFTS : row.calendar(),
        row.food(),
        row.ratePerHour());
  }

  /** A press with a job is set up for that job, since what is running needs no change. */
  private PressState state(RunningRow row, Map<String, Job> jobs) {
    Optional<Job> running =
        row.order().isEmpty() ? Optional.empty() : Optional.ofNullable(jobs.get(id(row)));
    if (running.isEmpty()) {
      return new PressState(row.press(), row.setup(), row.clearedForFood(), "");
    }
    Job job = running.get();
    differs(row, "resin", row.setup().resin(), job.resin());
    differs(row, "colour", row.setup().colour(), job.colour());
    Setup setup =
        new Setup(row.setup().mold(), job.options().get(0).tooling(), job.resin(), job.colour());
    return new PressState(row.press(), setup, row.clearedForFood(), job.id());
  }

  private void differs(RunningRow row, String column, String seen, String ofJob) {
    if (!seen.isEmpty() && !seen.equals(ofJob)) {
      notes.warning(
          row.at(),
          column,
          "%s is \"%s\", but order %s runs in \"%s\"; the order counts"
              .formatted(column, seen, id(row), ofJob));
    }
  }

  private static String id(RunningRow row) {
    return row.order() + "/" + row.line();
  }

  private List<Downtime> downtime() {
    Set<String> presses =
        folder.floor().presses().stream().map(PressRow::press).collect(Collectors.toSet());
    List<Downtime> all = new ArrayList<>();
    for (DowntimeRow row : folder.floor().downtime()) {
      if (row.trial()) {
        continue;
      }
      Downtime.Kind kind = presses.contains(row.what()) ? Downtime.Kind.PRESS : Downtime.Kind.MOLD;
      all.add(
          new Downtime(
              kind, row.what(), clock.minute(row.from()), clock.minute(row.to()), row.reason()));
    }
    return all;
  }
}
