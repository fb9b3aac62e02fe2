package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.FolderReader;

class DamagedFolderTest {
  private static final Path WEEK = Path.of("../examples/quillback-week");
  private static final List<String> CELLS =
      List.of("", "0", "-1", "999999999", "x", "M8", "yes", "2026-12-01", "a|b", "1.5", "\"");

  @TempDir private Path temp;

  /**
   * Whatever stands in a cell, there is a problem or an error, never an exception; a problem counts
   * every line once.
   */
  @Test
  void everyDamagedFolderIsAnswered() throws IOException {
    Random random = new Random(11);
    int problems = 0;
    for (int round = 0; round < 60; round++) {
      damage(random);
      WeekResult week = Week.build(FolderReader.read(temp), PlantFolder.NOW);
      assertThat(week.problem().isPresent()).isEqualTo(week.errors().isEmpty());
      problems += week.problem().isPresent() ? 1 : 0;
      week.problem()
          .ifPresent(p -> assertThat(p.jobs().size() + p.unplaced().size()).isBetween(140, 151));
    }
    assertThat(problems).isBetween(5, 59);
  }

  /**
   * A copy of the demo week in which one cell of up to three files, or the file as a whole, is
   * another.
   */
  private void damage(Random random) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(WEEK)) {
      files =
          all.filter(Files::isRegularFile)
              .filter(f -> !f.toString().endsWith(".md"))
              .sorted(Comparator.naturalOrder())
              .toList();
    }
    for (Path file : files) {
      Files.writeString(temp.resolve(file.getFileName()), Files.readString(file));
    }
    for (int i = 0; i <= random.nextInt(3); i++) {
      Path file = temp.resolve(files.get(random.nextInt(files.size())).getFileName());
      if (file.toString().endsWith(".csv")) {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        int line = random.nextInt(lines.size());
        String[] cells = lines.get(line).split(",", -1);
        cells[random.nextInt(cells.length)] = CELLS.get(random.nextInt(CELLS.size()));
        lines.set(line, String.join(",", cells));
        Files.write(file, lines);
      }
    }
  }
}
