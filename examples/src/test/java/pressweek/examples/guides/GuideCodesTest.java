package pressweek.examples.guides;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.data.guide.CodeReading;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Encoded;
import pressweek.data.guide.Guide;
import pressweek.data.problem.Attribute;

/**
 * Codes of the guides of this module: those of each {@code codes.csv}, and drawn ones, which must
 * survive reading, writing and reading again.
 */
class GuideCodesTest {
  private static final int DRAWN = 500;
  private static final int DRAWN_IN_FULL = 10_000;

  /** Draws for each code that the rules let pass; no guide here forbids more than that. */
  private static final int DRAWS_A_CODE = 200;

  static List<Path> folders() {
    return GuideFiles.folders();
  }

  static List<Path> foldersWithCodes() {
    return GuideFiles.foldersWithCodes();
  }

  private static Stream<Arguments> rows(boolean good) {
    return foldersWithCodes().stream()
        .flatMap(
            folder ->
                GuideCode.read(folder).stream()
                    .filter(code -> code.good() == good)
                    .map(code -> Arguments.of(folder, code)));
  }

  static Stream<Arguments> good() {
    return rows(true);
  }

  static Stream<Arguments> bad() {
    return rows(false);
  }

  static Stream<Arguments> spellings() {
    return rows(true).filter(row -> !((GuideCode) row.get()[1]).sameAs().isEmpty());
  }

  private static Map<String, String> values(Decoded decoded) {
    Map<String, String> values = new TreeMap<>();
    for (Attribute attribute : decoded.attributes()) {
      values.put(attribute.name(), attribute.value());
    }
    return values;
  }

  @ParameterizedTest
  @MethodSource("folders")
  void guideReadsWithoutAFinding(Path folder) {
    assertThat(GuideFiles.findings(GuideFiles.text(folder.resolve("guide.json")))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("foldersWithCodes")
  void thereAreEnoughCodes(Path folder) {
    List<GuideCode> codes = GuideCode.read(folder);
    assertThat(codes).filteredOn(GuideCode::good).hasSizeGreaterThanOrEqualTo(15);
    assertThat(codes).filteredOn(code -> !code.good()).hasSizeGreaterThanOrEqualTo(12);
    assertThat(codes).extracting(GuideCode::code).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("good")
  void goodCodeSaysJustThis(Path folder, GuideCode row) {
    Decoded decoded = GuideFiles.guide(folder).decode(row.code());
    assertThat(decoded.faults()).isEmpty();
    assertThat(values(decoded)).isEqualTo(new TreeMap<>(row.attributes()));
    assertThat(decoded.special()).isEqualTo(row.attributes().containsKey("special"));
  }

  @ParameterizedTest
  @MethodSource("bad")
  void badCodeIsRefusedWhereItGoesWrong(Path folder, GuideCode row) {
    CodeReading reading = GuideFiles.guide(folder).explain(row.code());
    assertThat(row.expect()).isNotEmpty();
    assertThat(String.join("\n", reading.decoded().faults())).contains(row.expect());
    if (row.at() > 0) {
      assertThat(reading.fault().orElseThrow().start() + 1).isEqualTo(row.at());
    }
  }

  @ParameterizedTest
  @MethodSource("spellings")
  void spellingsOfAnItemAreWrittenAlike(Path folder, GuideCode row) {
    Guide guide = GuideFiles.guide(folder);
    String canonical = guide.encoder().canonical(row.code());
    assertThat(canonical).isEqualTo(guide.encoder().canonical(row.sameAs()));
    assertThat(values(guide.decode(canonical))).isEqualTo(new TreeMap<>(row.attributes()));
  }

  @ParameterizedTest
  @MethodSource("folders")
  void drawnCodesSurviveReadingAndWriting(Path folder) {
    roundTrips(folder, DRAWN);
  }

  @Tag("full")
  @ParameterizedTest
  @MethodSource("folders")
  void manyDrawnCodesSurviveReadingAndWriting(Path folder) {
    roundTrips(folder, DRAWN_IN_FULL);
  }

  private static void roundTrips(Path folder, int count) {
    Guide guide = GuideFiles.guide(folder);
    CodeDraw draw = new CodeDraw(guide, 20_261_130L);
    Set<String> families = new HashSet<>();
    Set<String> items = new HashSet<>();
    int good = 0;
    for (int draws = 0; good < count && draws < DRAWS_A_CODE * count; draws++) {
      Decoded decoded = guide.decode(draw.next());
      if (decoded.good()) {
        good++;
        families.add(decoded.family());
        items.add(roundTrip(guide, decoded));
      }
    }
    assertThat(good).isEqualTo(count);
    assertThat(families).hasSameSizeAs(guide.families());
    assertThat(items).hasSizeGreaterThan(count / 5);
  }

  /** Writes an item, reads that again, and gives its code. */
  private static String roundTrip(Guide guide, Decoded decoded) {
    Encoded encoded = guide.encoder().encode(values(decoded));
    assertThat(encoded.faults()).as(decoded.code()).isEmpty();
    Decoded again = guide.decode(encoded.code());
    assertThat(again.faults()).as(decoded.code()).isEmpty();
    assertThat(values(again)).as(decoded.code()).isEqualTo(values(decoded));
    assertThat(again.family()).as(decoded.code()).isEqualTo(decoded.family());
    assertThat(guide.encoder().encode(values(again)).code()).isEqualTo(encoded.code());
    assertThat(guide.encoder().canonical(decoded.code())).isEqualTo(encoded.code());
    return encoded.code();
  }
}
