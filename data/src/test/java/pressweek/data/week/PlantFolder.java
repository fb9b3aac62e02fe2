package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Unplaced;

/**
 * A plant's folder for tests, which say only the files that differ: three files, one line of 100
 * pieces due on 2026-12-02, one mold with four cavities, a horizontal and a vertical press.
 */
final class PlantFolder {
  /** Monday 2026-11-30 00:00 UTC. */
  static final int NOW = SmallPlant.START;

  private final Path folder;
  private final Map<String, String> files = new TreeMap<>();

  PlantFolder(Path folder) {
    this.folder = folder;
    file("orders.csv", "order,item,quantity,due,resin,colour", "1,M1,100,2026-12-02,PP,BLK");
    file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "M1,M1,4,30,,no");
    file("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900", "P2,vertical,600");
    file("plant.json", "{\"plan_start\": \"2026-11-30T00:00Z\"}");
  }

  /** Replaces a file by these lines. */
  PlantFolder file(String name, String... lines) {
    files.put(name, String.join("\n", lines) + "\n");
    return this;
  }

  Folder read() {
    try {
      for (Map.Entry<String, String> file : files.entrySet()) {
        Files.writeString(folder.resolve(file.getKey()), file.getValue());
      }
      return FolderReader.read(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  WeekResult week() {
    return Week.build(read(), NOW);
  }

  Problem problem() {
    WeekResult week = week();
    assertThat(week.errors()).isEmpty();
    return week.problem().orElseThrow();
  }

  /** The only job of the week. */
  Job job() {
    Problem problem = problem();
    assertThat(problem.unplaced()).isEmpty();
    assertThat(problem.jobs()).hasSize(1);
    return problem.jobs().get(0);
  }

  /** The only unplaced line of the week. */
  Unplaced unplaced() {
    Problem problem = problem();
    assertThat(problem.unplaced()).hasSize(1);
    return problem.unplaced().get(0);
  }

  /** The presses on which the only job may run, in order. */
  List<String> presses() {
    return job().options().stream().map(Option::press).toList();
  }

  /** Findings of the week as people read them. */
  List<String> findings() {
    return week().findings().stream().map(Object::toString).toList();
  }

  /** What was not checked, with the lines that it touches. */
  Map<String, Integer> notChecked() {
    Map<String, Integer> gaps = new TreeMap<>();
    problem().notChecked().forEach(gap -> gaps.put(gap.what(), gap.lines()));
    return gaps;
  }
}
