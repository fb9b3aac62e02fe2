package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DocumentedColumnsTest {
  /** The part of the page about a file. */
  private static String section(InputFile file) throws IOException {
    String page = Files.readString(Path.of("../docs/input-files.md"));
    return Arrays.stream(page.split("\n## "))
        .filter(s -> s.startsWith(file.fileName()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is said about " + file.fileName()));
  }

  @ParameterizedTest
  @EnumSource(
      value = InputFile.class,
      names = {"PLANT", "GUIDE", "HEADINGS"},
      mode = EnumSource.Mode.EXCLUDE)
  void everyColumnIsDocumented(InputFile file) throws IOException {
    String section = section(file);

    for (Column column : Tables.columns(file).list()) {
      assertThat(section).containsPattern("\\b" + Pattern.quote(column.name()) + "\\b");
      if (column.required()) {
        assertThat(section).contains("**" + column.name() + "**");
      }
    }
  }
}
