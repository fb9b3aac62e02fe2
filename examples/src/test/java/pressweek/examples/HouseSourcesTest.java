package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules of the house about the sources themselves. */
class HouseSourcesTest {
  private static final int MOST_CODE_LINES = 300;
  private static final List<String> MODULES =
      List.of("data", "solver", "reports", "app", "examples");
  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);

  @Test
  void noFileHasTooManyLinesOfCode() {
    List<String> tooLong =
        sources("src/main", "src/test")
            .filter(file -> codeLines(text(file)) > MOST_CODE_LINES)
            .map(Path::toString)
            .toList();
    assertThat(tooLong).isEmpty();
  }

  @Test
  void blankLinesAndCommentsAreNoCode() {
    assertThat(codeLines("/** Says.\n * More.\n */\nint a; // why\n\n// note\nint b;\n"))
        .isEqualTo(2);
  }

  /** Names of the classes that the sources of the house make, without those of the tests. */
  static Set<String> written() {
    return sources("src/main").map(HouseSourcesTest::className).collect(Collectors.toSet());
  }

  private static Stream<Path> sources(String... folders) {
    Path root = House.root();
    return MODULES.stream()
        .flatMap(module -> Stream.of(folders).map(root.resolve(module)::resolve))
        .filter(Files::isDirectory)
        .flatMap(HouseSourcesTest::javaFiles);
  }

  private static Stream<Path> javaFiles(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String className(Path file) {
    String path = file.toString().replace('\\', '/');
    String type = path.substring(path.lastIndexOf("/java/") + "/java/".length());
    return type.substring(0, type.length() - ".java".length()).replace('/', '.');
  }

  private static long codeLines(String text) {
    return COMMENT
        .matcher(text)
        .replaceAll("")
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("//"))
        .count();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
