package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process of its own, which would go on for an hour, is told to end: by SIGTERM, which does what
 * Ctrl-C does and, unlike it, is not ignored by what a shell starts in the background.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "a process cannot be asked to end there")
final class PromiseStoppedTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");

  @TempDir private Path out;

  @Test
  void controlCPrintsWhatHasBeenFound() throws Exception {
    Ran.pressweek("plan", SMALL.toString(), "--out", out.toString(), "--steps", "100");
    Process process = start();
    try (BufferedReader err = process.errorReader()) {
      String line = err.readLine();
      while (line != null && !line.contains("Ctrl-C")) {
        line = err.readLine();
      }
      assertThat(line).as("it says that it begins").isNotNull();
      // By its handle, since Process closes the streams as well.
      assertThat(process.toHandle().destroy()).isTrue();
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    } finally {
      process.destroyForcibly().waitFor();
    }
    String text = Files.readString(out.resolve("answer.txt"));
    assertThat(text).contains("Stopped after");
    assertThat(text.lines()).allMatch(each -> each.length() <= 80);
    assertThat(process.exitValue()).isEqualTo(ExitCode.UNPLACED);
    assertThat(out.resolve("answer.json")).content().contains("\"stopped\" : true");
  }

  private Process start() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command =
        List.of(
            java,
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            "pressweek.app.Main",
            "promise",
            SMALL.toString(),
            "LV90/M8-B/PP-SGR/ZN",
            "50,200,5000",
            "--need",
            "2026-12-03",
            "--plan",
            out.resolve("plan.json").toString(),
            "--now",
            "2026-11-30T06:00",
            "--json",
            out.resolve("answer.json").toString(),
            "--seconds",
            "3600");
    return new ProcessBuilder(command).redirectOutput(out.resolve("answer.txt").toFile()).start();
  }
}
