package pressweek.app.compare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.InputError;
import pressweek.data.files.Scenario;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/**
 * The folder as it stands and each scenario, read.
 *
 * @param weeks those that can be planned, the folder as it stands first
 * @param errors what is wrong with the others, each once
 * @param warnings what was assumed of what a scenario itself says
 */
public record ScenarioWeeks(List<ScenarioWeek> weeks, List<String> errors, List<String> warnings) {
  private static final String BASE = "As it stands";

  public ScenarioWeeks {
    weeks = List.copyOf(weeks);
    errors = List.copyOf(errors);
    warnings = List.copyOf(warnings);
  }

  /**
   * Reads them all.
   *
   * @param folder the plant's folder
   * @param files scenario files
   * @param nowMin the present, minutes since 1970 UTC, for a plant that does not say when its plan
   *     starts
   * @throws IOException when one cannot be read at all
   */
  public static ScenarioWeeks read(Path folder, List<Path> files, int nowMin) throws IOException {
    List<Scenario> scenarios = new ArrayList<>();
    for (Path file : files) {
      scenarios.add(Scenario.read(file));
    }
    return of(folder, scenarios, nowMin);
  }

  /**
   * The same of scenarios that have been read.
   *
   * @throws IOException when the folder cannot be read at all
   */
  public static ScenarioWeeks of(Path folder, List<Scenario> given, int nowMin) throws IOException {
    List<Scenario> scenarios = new ArrayList<>(List.of(Scenario.none()));
    scenarios.addAll(given);
    List<ScenarioWeek> weeks = new ArrayList<>();
    Set<String> errors = new LinkedHashSet<>();
    Set<String> warnings = new LinkedHashSet<>();
    Set<String> names = new HashSet<>();
    Set<String> outs = new HashSet<>();
    for (Scenario scenario : scenarios) {
      Folder read = FolderReader.read(folder, scenario);
      WeekResult week = Week.build(read, nowMin);
      week.errors().stream().map(InputError::toString).forEach(errors::add);
      week.warnings().stream()
          .filter(w -> scenario.given() && w.file().equals(scenario.file()))
          .map(InputError::toString)
          .forEach(warnings::add);
      if (!scenario.given() && !week.warnings().isEmpty()) {
        warnings.add(
            "%d of the plant's own warnings are not shown; see pressweek check %s"
                .formatted(week.warnings().size(), folder));
      }
      String name = scenario.given() ? scenario.name() : BASE;
      String unique =
          unique(names.contains(name) ? name + " (" + scenario.file() + ")" : name, names);
      String out = unique(scenario.given() ? plain(scenario.file()) : "as-it-stands", outs);
      week.problem().ifPresent(p -> weeks.add(new ScenarioWeek(scenario, unique, out, read, p)));
    }
    return new ScenarioWeeks(weeks, List.copyOf(errors), List.copyOf(warnings));
  }

  private static String plain(String file) {
    return file.replaceAll("\\.json$", "")
        .replaceAll("[^A-Za-z0-9_-]", "_")
        .toLowerCase(Locale.ROOT);
  }

  private static String unique(String name, Set<String> taken) {
    String free = name;
    for (int i = 2; !taken.add(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }
}
