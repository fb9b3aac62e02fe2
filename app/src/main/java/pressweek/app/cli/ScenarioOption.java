package pressweek.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.Scenario;

/** A scenario on top of the plant's folder. */
final class ScenarioOption {
  @Option(
      names = "--scenario",
      paramLabel = "SCENARIO",
      defaultValue = "",
      description = "scenario file on top of the folder (docs/scenario-files.md)")
  private String file = "";

  /** The folder with the scenario, if one was named. */
  Folder read(Path folder) throws IOException {
    return FolderReader.read(
        folder, file.isEmpty() ? Scenario.none() : Scenario.read(Path.of(file)));
  }
}
