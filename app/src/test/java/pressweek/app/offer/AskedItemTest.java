package pressweek.app.offer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;

/** One word alone, by the guide of the demo plant. */
final class AskedItemTest {
  private static Folder week;

  @BeforeAll
  static void read() throws IOException {
    week = FolderReader.read(Path.of("../examples/quillback-week"));
  }

  private static AskedItem asked(String text) {
    return AskedItem.of(week, text, List.of(20));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lever", "knob", "handle", "levr", "M8", "black"})
  void whatTheGuideDoesNotDecodeAndWordsSayIsReadAsWords(String word) {
    assertThat(asked(word)).isInstanceOf(AskedItem.Open.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"foobar", "LV90/M8-B/PP-XXX/ZN", "LV90/M99-B/PP-BLK/ZN", "ST50"})
  void aFaultyCodeAndAnUnknownWordAreShownAsCodes(String word) {
    assertThat(asked(word)).isInstanceOf(AskedItem.NoCode.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ST50/M8-B/PP-BLK/ZN", "LV90/M8-B/PP-SGR/ZN"})
  void aCodeIsTakenAsItStands(String code) {
    assertThat(asked(code))
        .isInstanceOfSatisfying(
            AskedItem.Known.class,
            known -> {
              assertThat(known.code()).isEqualTo(code);
              assertThat(known.read()).isEmpty();
            });
  }
}
