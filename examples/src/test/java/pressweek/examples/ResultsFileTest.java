package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultsFileTest {
  @TempDir private Path folder;

  @Test
  void aPartIsWrittenAtItsPlaceAndTheOthersStay() throws IOException {
    Path file = folder.resolve("new").resolve("RESULTS.md");
    ResultsFile results = new ResultsFile(file);
    results.replace("First", List.of("1"));
    results.replace("Second", List.of("2", "## under it", "3"));
    results.replace("First", List.of("4"));
    assertThat(Files.readString(file)).isEqualTo("# First\n\n4\n\n# Second\n\n2\n## under it\n3\n");
  }

  @Test
  void theMachineIsNamed() {
    assertThat(ResultsFile.machine()).matches("\\d{4}-\\d\\d-\\d\\d, \\d+ cores, .*Java 1?\\d.*");
  }
}
