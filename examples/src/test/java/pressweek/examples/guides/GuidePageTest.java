package pressweek.examples.guides;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.app.cli.RootCommand;

/**
 * What {@code docs/guide-files.md} says that commands answer. A line of three dots stands for lines
 * that it leaves out; {@code step1} and {@code positions} are folders with the two whole guides of
 * the page, {@code ours} is the guide that it builds.
 */
class GuidePageTest {
  private static final Pattern CONSOLE = Pattern.compile("(?s)```console\n(.*?)```");
  private static final Pattern ARGUMENT = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final String PROMPT = "$ pressweek ";

  @TempDir private static Path made;

  /**
   * A command of the page.
   *
   * @param line as it is typed
   * @param answer what the page says that it prints
   */
  private record Shown(String line, List<String> answer) {
    @Override
    public String toString() {
      return line;
    }
  }

  static List<Shown> commands() {
    List<Shown> commands = new ArrayList<>();
    CONSOLE
        .matcher(GuideFiles.text(GuideFiles.page()))
        .results()
        .flatMap(block -> block.group(1).lines())
        .forEach(
            line -> {
              if (line.startsWith(PROMPT)) {
                commands.add(new Shown(line.substring(PROMPT.length()), new ArrayList<>()));
              } else {
                commands.get(commands.size() - 1).answer().add(line);
              }
            });
    return commands;
  }

  @Test
  void thereAreCommands() {
    assertThat(commands()).hasSizeGreaterThanOrEqualTo(8);
    assertThat(GuideFiles.guidesOfThePage()).hasSize(2);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void commandAnswersAsThePageSays(Shown shown) throws IOException {
    String pattern =
        shown.answer().stream()
            .map(line -> line.equals("...") ? "(?:.*\n)*?" : Pattern.quote(line) + "\n")
            .collect(Collectors.joining());
    assertThat(answer(shown.line())).matches(pattern);
  }

  private static String answer(String line) throws IOException {
    String[] arguments =
        ARGUMENT
            .matcher(line)
            .results()
            .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
            .toArray(String[]::new);
    arguments[1] = folder(arguments[1]).toString();
    PrintStream console = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
      System.setOut(out);
      RootCommand.run(arguments);
    } finally {
      System.setOut(console);
    }
    return printed
        .toString(StandardCharsets.UTF_8)
        .lines()
        .map(text -> text.stripTrailing() + "\n")
        .collect(Collectors.joining());
  }

  private static Path folder(String name) throws IOException {
    if (name.equals("ours")) {
      return Path.of("guides", "wrenhollow");
    }
    List<String> names = List.of("step1", "positions");
    assertThat(names).contains(name);
    Path folder = Files.createDirectories(made.resolve(name));
    String guide = GuideFiles.guidesOfThePage().get(names.indexOf(name));
    Files.writeString(folder.resolve("guide.json"), guide);
    return folder;
  }
}
