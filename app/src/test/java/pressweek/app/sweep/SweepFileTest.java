package pressweek.app.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.InputError;

/** What {@code sweep.json} may say. */
final class SweepFileTest {
  @TempDir private Path folder;

  private SweepFile.Reading read(String text) throws IOException {
    return SweepFile.read(Files.writeString(folder.resolve("sweep.json"), text));
  }

  @Test
  void stepsAloneAreOneSeedOfTheFolderAsItIs() throws IOException {
    assertThat(read("{\"steps\": 20}").sweep())
        .contains(new SweepFile(20, List.of(1L), List.of(""), Replaying.NONE));
  }

  @Test
  void seedsAreAListOrARange() throws IOException {
    assertThat(read("{\"steps\": 1, \"seeds\": [3, 1, 3]}").sweep().orElseThrow().seeds())
        .containsExactly(3L, 1L);
    String range =
        "{\"steps\": 1, \"seeds\": {\"from\": 5, \"count\": 3}, \"scenarios\": [\"a.json\"]}";
    assertThat(read(range).sweep())
        .contains(new SweepFile(1, List.of(5L, 6L, 7L), List.of("a.json"), Replaying.NONE));
  }

  @Test
  void replaysHaveASeedOfTheirOwn() throws IOException {
    assertThat(read("{\"steps\": 1, \"replays\": 200}").sweep().orElseThrow().replaying())
        .isEqualTo(new Replaying(200, 1));
    assertThat(
            read("{\"steps\": 1, \"replays\": 200, \"replay_seed\": 7}")
                .sweep()
                .orElseThrow()
                .replaying())
        .isEqualTo(new Replaying(200, 7));
    assertThat(
            read("{\"steps\": 1, \"replays\": 0, \"replay_seed\": 7}")
                .sweep()
                .orElseThrow()
                .replaying())
        .isEqualTo(Replaying.NONE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "[]|sweep.json:1: the file is a list; expected an object",
        "{}|key \"steps\" missing; expected the steps",
        "{\"steps\": 0}|steps is the number 0; expected a whole number from 1",
        "{\"steps\": \"many\"}|steps is the text \"many\"; expected",
        "{\"steps\": 1.5}|steps is the number 1.5; expected",
        "{\"steps\": 1, \"seeds\": []}|seeds is a list; expected 1 to ",
        "{\"steps\": 1, \"seeds\": {\"from\": 3}}|count of seeds is missing; expected as in",
        "{\"steps\": 1, \"seeds\": [-1]}|seeds is the number -1; expected",
        "{\"steps\": 1, \"scenarios\": [1]}|scenarios is the number 1; expected the path",
        "{\"steps\": 1, \"seconds\": 5}|key \"seconds\" is not known; expected steps",
        "{\"steps\": 1, \"replays\": -1}|replays is the number -1; expected a whole number from 0 to",
        "{\"steps\": 1, \"replays\": 10001}|replays is the number 10001; expected a whole number from 0",
        "{\"steps\": 1, \"replays\": \"some\"}|replays is the text \"some\"; expected a whole number",
        "{\"steps\": 1, \"replay_seed\": 0.5}|replay_seed is the number 0.5; expected a whole number",
        "{\"steps\": 18446744073709551617}|steps is the number 18446744073709551617; expected a whole",
        "{\"steps\": 1|not JSON"
      })
  void whatIsWrongIsSaidWithItsLine(String text, String said) throws IOException {
    SweepFile.Reading reading = read(text);
    assertThat(reading.sweep()).isEmpty();
    assertThat(reading.errors().stream().map(InputError::toString))
        .anyMatch(error -> error.startsWith("sweep.json:1") && error.contains(said));
  }
}
