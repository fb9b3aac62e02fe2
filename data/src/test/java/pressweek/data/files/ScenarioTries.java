package pressweek.data.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A small folder on which scenarios are tried. */
abstract class ScenarioTries {
  static final String ORDERS =
      """
      order,line,item,quantity,due
      4711,1,KNOB,100,2026-12-01
      4711,2,LEVER,7,2026-12-02
      4712,,KNOB,250,2026-12-03
      """;

  @TempDir Path path;
  PlantFolder folder;

  @BeforeEach
  void smallFolder() {
    folder =
        new PlantFolder(path)
            .with("orders.csv", ORDERS)
            .with("molds.csv", "mold,makes,live_cavities,runs_on,cycle_s\nM1,KNOB|LEVER,2,P1,40\n");
  }

  private static String scenario(String changes) {
    return """
        {
          "schema": "pressweek-scenario/1",
          "name": "a try",
        %s
        }
        """
        .formatted(changes);
  }

  /** The folder as a scenario of these changes has it. */
  Folder with(String changes) {
    try {
      return FolderReader.read(path, Scenario.of("try.json", scenario(changes)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is said of the folder and of a scenario of these changes. */
  List<String> findings(String changes) {
    return with(changes).findings().stream().map(InputError::toString).toList();
  }
}
