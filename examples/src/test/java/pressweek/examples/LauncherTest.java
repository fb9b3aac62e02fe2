package pressweek.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher in a folder of its own, with a java and a mvn that only say how they were called.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher for POSIX shells")
class LauncherTest {
  private static final FileTime EARLY = FileTime.fromMillis(1_000_000_000_000L);
  private static final FileTime LATE = FileTime.fromMillis(1_100_000_000_000L);

  private static final List<String> NEEDED =
      List.of("find", "head", "sed", "dirname", "readlink", "mkdir", "touch", "rm", "cat");

  @TempDir Path temp;
  private Path home;
  private Path launcher;
  private Path tools;

  @BeforeEach
  void layOutAHouse() throws IOException {
    home = Files.createDirectories(temp.resolve("a house with spaces"));
    launcher = home.resolve("pressweek");
    Files.copy(House.root().resolve("pressweek"), launcher);
    launcher.toFile().setExecutable(true);
    Files.createDirectories(home.resolve("app/src/main"));
    Files.createFile(home.resolve("app/pom.xml"));
    Files.createFile(home.resolve("pom.xml"));
    tools = Files.createDirectories(temp.resolve("jdk/bin"));
    script(tools.resolve("javac"), "exit 1");
    script(
        tools.resolve("java"),
        "if [ \"$1\" = -version ]; then echo 'openjdk version \"17.0.1\"' >&2; exit 0; fi",
        "for word; do echo \"<$word>\"; done",
        "exit 7");
    script(
        tools.resolve("mvn"),
        "pwd",
        "mkdir -p app/target/launch/lib",
        "echo \"$@\" >app/target/asked",
        ": >app/target/launch/lib/pressweek.jar");
  }

  @Test
  void handsOverArgumentsAndExitCode() throws Exception {
    jar(LATE);
    Answer answer = run(launcher, "plan", "my folder", "", "*");
    assertThat(answer.out()).endsWith("<plan>\n<my folder>\n<>\n<*>\n");
    assertThat(answer.out()).contains("<" + home.toRealPath() + "/app/target/lib/pressweek.jar>");
    assertThat(answer.err()).isEmpty();
    assertThat(answer.exit()).isEqualTo(7);
  }

  @Test
  void isFoundThroughRelativeAndAbsoluteLinks() throws Exception {
    jar(LATE);
    Path absolute = Files.createSymbolicLink(temp.resolve("absolute"), launcher);
    Path bin = Files.createDirectories(temp.resolve("some bin"));
    Path relative = Files.createSymbolicLink(bin.resolve("pw"), Path.of("../absolute"));
    assertThat(run(absolute).exit()).isEqualTo(7);
    assertThat(run(relative).exit()).isEqualTo(7);
  }

  @Test
  void buildsWhenThereIsNoBuild() throws Exception {
    Answer answer = run(launcher, "plan");
    assertThat(answer.err()).startsWith("pressweek: building once").hasLineCount(1);
    assertThat(answer.out()).endsWith("<plan>\n").doesNotContain("asked");
    assertThat(Files.readString(home.resolve("app/target/asked"))).contains("-pl app -am package");
    assertThat(run(launcher, "plan").err()).isEmpty();
  }

  @Test
  void buildsAgainWhenASourceIsNewer() throws Exception {
    jar(EARLY);
    Files.setLastModifiedTime(home.resolve("app/src/main"), LATE);
    assertThat(run(launcher).err()).startsWith("pressweek: building once");
  }

  @Test
  void startsAlthoughASourceIsOfTheFuture() throws Exception {
    Files.setLastModifiedTime(
        home.resolve("app/src/main"), FileTime.from(Instant.now().plus(2, ChronoUnit.DAYS)));
    Answer answer = run(launcher, "plan");
    assertThat(answer.out()).contains("/app/target/launch/lib/pressweek.jar>", "<plan>");
    assertThat(answer.exit()).isEqualTo(7);
  }

  @Test
  void needsNoSourcesOnceBuilt() throws Exception {
    jar(EARLY);
    Files.delete(home.resolve("pom.xml"));
    assertThat(run(launcher).err()).isEmpty();
  }

  @Test
  void saysThatMavenIsMissing() throws Exception {
    Files.delete(tools.resolve("mvn"));
    Answer answer = run(launcher);
    assertThat(answer.err()).startsWith("pressweek: no mvn found to build with; expected");
    assertThat(answer.exit()).isEqualTo(2);
  }

  @Test
  void saysThatJavaIsTooOld() throws Exception {
    script(tools.resolve("java"), "echo 'openjdk version \"11.0.2\" 2019-01-15' >&2");
    Answer answer = run(launcher);
    assertThat(answer.err()).contains("is Java 11; expected a JDK 17 or newer");
    assertThat(answer.exit()).isEqualTo(2);
  }

  @Test
  void saysThatJavaHomeHoldsNoJava() throws Exception {
    Files.delete(tools.resolve("java"));
    Answer answer = run(launcher);
    assertThat(answer.err()).startsWith("pressweek: JAVA_HOME is").contains("no bin/java");
    assertThat(answer.exit()).isEqualTo(2);
  }

  @Test
  void showsWhatMavenSaidWhenTheBuildFails() throws Exception {
    script(tools.resolve("mvn"), "echo 'no such plugin'", "exit 1");
    Answer answer = run(launcher);
    assertThat(answer.err()).contains("no such plugin\npressweek: the build failed");
    assertThat(answer.out()).isEmpty();
    assertThat(answer.exit()).isEqualTo(2);
  }

  /** A built jar of the given age in a house whose sources are of the early day. */
  private void jar(FileTime time) throws IOException {
    Path lib = Files.createDirectories(home.resolve("app/target/lib"));
    Path jar = Files.createFile(lib.resolve("pressweek.jar"));
    for (String source : List.of("pom.xml", "app/pom.xml", "app/src/main")) {
      Files.setLastModifiedTime(home.resolve(source), EARLY);
    }
    Files.setLastModifiedTime(jar, time);
  }

  private static void script(Path file, String... lines) throws IOException {
    Files.writeString(file, "#!/bin/sh\n" + String.join("\n", lines) + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private record Answer(int exit, String out, String err) {}

  private Answer run(Path command, String... args) throws IOException, InterruptedException {
    List<String> words = Stream.concat(Stream.of(command.toString()), Stream.of(args)).toList();
    Path out = temp.resolve("out");
    Path err = temp.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .directory(temp.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().put("JAVA_HOME", tools.getParent().toString());
    builder.environment().put("PATH", tools + ":" + plainTools());
    int exit = builder.start().waitFor();
    return new Answer(exit, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  /** A folder with what the launcher needs of the system, so that no real mvn is met by chance. */
  private Path plainTools() throws IOException {
    Path folder = Files.createDirectories(temp.resolve("plain"));
    for (String tool : NEEDED) {
      Path inBin = Path.of("/bin", tool);
      Path real = Files.exists(inBin) ? inBin : Path.of("/usr/bin", tool);
      script(folder.resolve(tool), "exec " + real + " \"$@\"");
    }
    return folder;
  }
}
