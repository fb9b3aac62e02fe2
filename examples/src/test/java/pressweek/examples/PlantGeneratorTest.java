package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlantGeneratorTest {
  private static final PlantSize SIZE = new PlantSize(150, 14);

  private final Map<String, String> files = PlantGenerator.files(SIZE, 1);

  /**
   * Changes with every change to what is drawn, and with nothing else: not with the machine, its
   * zone, its language or its Java.
   */
  @Test
  void sameSeedGivesTheSameBytesEverywhere() throws NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    files.values().forEach(f -> digest.update(f.getBytes(StandardCharsets.UTF_8)));
    assertThat(HexFormat.of().formatHex(digest.digest()))
        .isEqualTo("a06eaf2489cb8738e86c775db178d336917c5c33382fc7cabcdf5745f6be6f3a");
  }

  @Test
  void anotherSeedGivesOtherOrders() {
    assertThat(PlantGenerator.files(SIZE, 2).get("orders.csv"))
        .isNotEqualTo(files.get("orders.csv"));
  }

  @Test
  void hasAsManyLinesAndPressesAsAskedFor() {
    assertThat(column("orders.csv", "order")).hasSize(150);
    assertThat(column("presses.csv", "press")).hasSize(14);
    assertThat(column("molds.csv", "mold")).hasSize(37).doesNotHaveDuplicates();
  }

  @Test
  void whatOrdersNameExists() {
    assertThat(column("inserts.csv", "insert")).containsAll(named("orders.csv", "insert"));
    assertThat(column("resins.csv", "resin")).containsAll(named("orders.csv", "resin"));
    assertThat(column("colours.csv", "colour")).containsAll(named("orders.csv", "colour"));
    assertThat(lists("molds.csv", "makes")).containsAll(named("orders.csv", "item"));
  }

  @Test
  void whatTheFloorNamesExists() {
    assertThat(column("presses.csv", "press")).containsAll(named("running.csv", "press"));
    assertThat(column("molds.csv", "mold")).containsAll(named("running.csv", "mold"));
    assertThat(column("orders.csv", "order")).containsAll(named("promised.csv", "order"));
    assertThat(column("inserts.csv", "insert"))
        .containsAll(named("lots.csv", "what"))
        .containsAll(named("receipts.csv", "what"));
  }

  @Test
  void aMoldHangsOnOnePress() {
    assertThat(column("running.csv", "mold")).isNotEmpty().doesNotHaveDuplicates();
    assertThat(column("running.csv", "mold"))
        .doesNotContainAnyElementsOf(named("downtime.csv", "what"));
  }

  @Test
  void aMoldMayRunOnAFifthToTwoFifthsOfThePresses() {
    PlantSize large = new PlantSize(400, 50);
    List<String> cells = cells(PlantGenerator.files(large, 3).get("molds.csv"), "runs_on");
    assertThat(cells).allSatisfy(c -> assertThat(c.split("\\|").length).isBetween(10, 20));
  }

  @Test
  void writesTheFolder(@TempDir Path folder) throws IOException {
    PlantGenerator.write(folder.resolve("plant"), SIZE, 1);
    assertThat(Files.readString(folder.resolve("plant/orders.csv")))
        .isEqualTo(files.get("orders.csv"));
    try (var written = Files.list(folder.resolve("plant"))) {
      assertThat(written).hasSize(files.size());
    }
  }

  @Test
  void horizonGrowsWithLinesPerPress() {
    assertThat(new PlantSize(150, 14).weeks()).isEqualTo(1);
    assertThat(new PlantSize(5000, 100).weeks()).isEqualTo(4);
    assertThat(new PlantSize(1, 1).weeks()).isEqualTo(1);
  }

  @Test
  void sizesOutOfRangeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PlantSize(5001, 14))
        .withMessage("jobs must be 1 to 5000 but was 5001");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PlantSize(10, 0))
        .withMessage("presses must be 1 to 100 but was 0");
  }

  private List<String> column(String file, String name) {
    return cells(files.get(file), name);
  }

  private Set<String> named(String file, String name) {
    return column(file, name).stream()
        .filter(c -> !c.isEmpty())
        .filter(c -> !file.equals("downtime.csv") || c.startsWith("H"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private List<String> lists(String file, String name) {
    return column(file, name).stream().flatMap(c -> Arrays.stream(c.split("\\|"))).toList();
  }

  /** A column of a sheet without quoted cells. */
  private static List<String> cells(String text, String name) {
    assertThat(text).doesNotContain("\"");
    List<String> rows = text.lines().toList();
    int index = List.of(rows.get(0).split(",")).indexOf(name);
    assertThat(index).isNotNegative();
    return rows.stream().skip(1).map(r -> r.split(",", -1)[index]).toList();
  }
}
