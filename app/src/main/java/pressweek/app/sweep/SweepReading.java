package pressweek.app.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.InputError;
import pressweek.data.files.LuckFile;
import pressweek.data.files.ProblemFile;
import pressweek.data.files.Scenario;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;
import pressweek.solver.stress.Stress;

/** Reads the folders and scenarios of a sweep; a bad one is a fault of its own cases only. */
public final class SweepReading {
  private static final int SHOWN = 3;

  private final SweepFile file;
  private final int nowMin;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, SweepTask> tasks = new LinkedHashMap<>();
  private final List<Sweep.Case> cases = new ArrayList<>();

  /**
   * A sweep that is read.
   *
   * @param sweep its cases
   * @param tasks its tasks by their key, each once
   * @param texts texts of its problems, and of the luck that replays them, by their SHA-256
   */
  public record Read(Sweep sweep, Map<String, SweepTask> tasks, Map<String, String> texts) {
    public Read {
      tasks = Collections.unmodifiableMap(new LinkedHashMap<>(tasks));
      texts = Map.copyOf(texts);
    }

    /** The text of a problem, or of luck. */
    String text(String sha256) {
      return texts.getOrDefault(sha256, "");
    }
  }

  private SweepReading(SweepFile file, int nowMin) {
    this.file = file;
    this.nowMin = nowMin;
  }

  /**
   * Reads all that a sweep plans.
   *
   * @param file the sweep
   * @param folders plants' folders
   * @param scenarios the folder from which the paths of scenario files count
   * @param nowMin the present, minutes since 1970 UTC, for plants that do not say when their plan
   *     starts
   */
  public static Read read(SweepFile file, List<Path> folders, Path scenarios, int nowMin) {
    SweepReading reading = new SweepReading(file, nowMin);
    for (Path folder : folders) {
      for (String scenario : file.scenarios()) {
        reading.take(folder, scenario, scenarios);
      }
    }
    return new Read(
        new Sweep(file.steps(), file.replaying(), reading.cases), reading.tasks, reading.texts);
  }

  private void take(Path folder, String scenario, Path scenarios) {
    WeekText week = read(folder, scenario, scenarios);
    String problem = week.sha256();
    String luck = week.luckSha256();
    if (week.fault().isEmpty()) {
      texts.put(problem, week.text());
      if (file.replaying().isAsked()) {
        texts.put(luck, week.luck());
      }
    }
    for (long seed : file.seeds()) {
      String key = "";
      if (week.fault().isEmpty()) {
        SweepTask task =
            file.replaying().isAsked()
                ? new SweepTask(problem, file.steps(), seed, luck, file.replaying())
                : new SweepTask(problem, file.steps(), seed);
        key = task.key();
        tasks.put(key, task);
      }
      cases.add(new Sweep.Case(folder.toString(), scenario, seed, key, week.fault()));
    }
  }

  /** A week and its luck as text, or why there is none. */
  private record WeekText(String text, String luck, String fault) {
    static WeekText faulty(String fault) {
      return new WeekText("", "", fault);
    }

    String sha256() {
      return SweepTask.sha256(text);
    }

    String luckSha256() {
      return SweepTask.sha256(luck);
    }
  }

  private WeekText read(Path folder, String scenario, Path scenarios) {
    if (!Files.isDirectory(folder)) {
      return WeekText.faulty(folder + " is not a folder; expected the folder of a plant");
    }
    Path changed = scenarios.resolve(scenario);
    if (!scenario.isEmpty() && !Files.isRegularFile(changed)) {
      return WeekText.faulty(changed + " is not a file; expected a scenario");
    }
    try {
      Scenario changes = scenario.isEmpty() ? Scenario.none() : Scenario.read(changed);
      Folder read = FolderReader.read(folder, changes);
      WeekResult week = Week.build(read, nowMin);
      if (week.problem().isEmpty()) {
        return WeekText.faulty(words(week.errors()));
      }
      long runs = week.problem().get().jobs().size();
      if (runs * file.replaying().count() > Stress.MOST_TIMES) {
        return WeekText.faulty(
            "%d replays are too many for %d lines; expected at most %d"
                .formatted(file.replaying().count(), runs, Stress.MOST_TIMES / runs));
      }
      String luck = LuckFile.text(read.plant().uncertainty());
      return new WeekText(ProblemFile.text(week.problem().get()), luck, "");
    } catch (IOException e) {
      return WeekText.faulty(folder + " cannot be read: " + e.getMessage());
    }
  }

  private static String words(List<InputError> errors) {
    String shown =
        errors.stream().limit(SHOWN).map(InputError::toString).collect(Collectors.joining("; "));
    return errors.size() > SHOWN ? shown + "; and " + (errors.size() - SHOWN) + " more" : shown;
  }
}
