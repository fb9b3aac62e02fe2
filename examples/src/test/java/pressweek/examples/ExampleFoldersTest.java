package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.OrderRow;
import pressweek.data.files.Scenario;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/**
 * The folders of this module read without a finding, and their codes with the guide beside them.
 */
class ExampleFoldersTest {
  /** 2026-11-30T06:00Z, the present for a plant that does not say when its plan starts. */
  private static final int MONDAY_MIN = 29_933_640;

  @ParameterizedTest
  @CsvSource({"three-files, 25, 4", "quillback-small, 12, 3", "quillback-week, 150, 14"})
  void readsWithoutAFinding(String name, int orders, int presses) throws IOException {
    Folder folder = FolderReader.read(Path.of(name));
    assertThat(folder.findings()).isEmpty();
    assertThat(folder.demand().faulty()).isEmpty();
    assertThat(folder.demand().orders()).hasSize(orders);
    assertThat(folder.floor().presses()).hasSize(presses);
  }

  @ParameterizedTest
  @CsvSource({"quillback-small, 710/1", "quillback-week, 52222/1"})
  void allCodesButOneDecode(String name, String unreadable) throws IOException {
    Folder folder = FolderReader.read(Path.of(name));
    GuideReader.Result read = GuideReader.read(folder.guide().orElseThrow());
    assertThat(read.findings()).isEmpty();
    Guide guide = read.guide().orElseThrow();
    assertThat(folder.demand().orders())
        .filteredOn(order -> !order.item().isEmpty() && !guide.decode(order.item()).good())
        .extracting(OrderRow::id)
        .containsExactly(unreadable);
  }

  @Test
  void linesWithoutACodeLeadToItems() throws IOException {
    Folder folder = FolderReader.read(Path.of("quillback-week"));
    Problem problem = Week.build(folder, 0).problem().orElseThrow();
    Map<String, String> items = new HashMap<>();
    problem.jobs().forEach(job -> items.put(job.id(), job.item().code()));
    assertThat(items)
        .containsEntry("52103/1", "BH140/M8-S20/PBT-GF30-NVY/ZN")
        .containsEntry("52120/1", "TH100/M10-T/PP-SLT/ZN")
        .containsEntry("52206/1", "LV110/M12-S50/PA66-GF30-BLK/ZN/RS")
        .containsEntry("52139/1", "TR40/M6-S20/ABS-LGY/ZN")
        .containsEntry("52188/2", "WG60/M8-B/ABS-SLT/ZN");
  }

  @Test
  void theCodeOfTheFirstPageIsOrdered() throws IOException {
    Folder folder = FolderReader.read(Path.of("quillback-week"));
    Guide guide = GuideReader.read(folder.guide().orElseThrow()).guide().orElseThrow();
    assertThat(folder.demand().orders())
        .extracting(OrderRow::item)
        .contains("LV90/M10-B/PP-SGR/A2/FC");
    Decoded decoded = guide.decode("LV90/M10-B/PP-SGR/A2/FC");
    assertThat(decoded.item().value("hub")).contains("solid");
  }

  @ParameterizedTest
  @CsvSource({
    "three-files, 25, ''",
    "quillback-small, 8, 709/1 710/1 711/1 712/1",
    "quillback-week, 144, 52132/1 52166/1 52193/1 52219/2 52222/1"
  })
  void onlyTheLinesOfItsReadmeCannotBePlanned(String name, int jobs, String unplaced)
      throws IOException {
    WeekResult week = Week.build(FolderReader.read(Path.of(name)), MONDAY_MIN);
    assertThat(week.errors()).isEmpty();
    Problem problem = week.problem().orElseThrow();
    assertThat(problem.jobs()).hasSize(jobs);
    assertThat(problem.unplaced().stream().map(Unplaced::id).collect(Collectors.joining(" ")))
        .isEqualTo(unplaced);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "150, 14", "300, 40"})
  void drawnPlantCanBePlannedInFull(int jobs, int presses, @TempDir Path folder)
      throws IOException {
    PlantGenerator.write(folder, new PlantSize(jobs, presses), 5);
    WeekResult week = Week.build(FolderReader.read(folder), MONDAY_MIN);
    assertThat(week.findings()).isEmpty();
    assertThat(week.problem().orElseThrow().jobs()).hasSize(jobs);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "12, 3", "150, 14", "600, 40"})
  void drawnPlantReadsWithoutAFinding(int jobs, int presses, @TempDir Path folder)
      throws IOException {
    PlantGenerator.write(folder, new PlantSize(jobs, presses), 5);
    Folder read = FolderReader.read(folder);
    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders()).hasSize(jobs);
  }

  @ParameterizedTest
  @CsvSource({
    "quillback-small, saturday.json",
    "quillback-week, demand-up.json",
    "quillback-week, h4-for-food.json",
    "quillback-week, second-mold.json",
    "quillback-week, sunday-shift.json",
    "quillback-week, third-setter.json"
  })
  void scenariosApplyWithoutAFinding(String name, String file) throws IOException {
    Path plant = Path.of(name);
    Scenario scenario = Scenario.read(plant.resolve("scenarios").resolve(file));
    Folder folder = FolderReader.read(plant, scenario);
    assertThat(folder.findings()).isEmpty();
    assertThat(scenario.words()).isNotEmpty();
    Problem as = Week.build(FolderReader.read(plant), MONDAY_MIN).problem().orElseThrow();
    assertThat(Week.build(folder, MONDAY_MIN).problem().orElseThrow()).isNotEqualTo(as);
  }

  @Test
  void scenariosOfThePageApply() throws IOException {
    String page = Files.readString(Path.of("../docs/scenario-files.md"));
    Matcher blocks = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(page);
    int found = 0;
    while (blocks.find()) {
      Scenario scenario = Scenario.of("page.json", blocks.group(1));
      Folder folder = FolderReader.read(Path.of("quillback-week"), scenario);
      assertThat(folder.findings()).isEmpty();
      assertThat(Week.build(folder, MONDAY_MIN).errors()).isEmpty();
      found++;
    }
    assertThat(found).isEqualTo(2);
  }
}
