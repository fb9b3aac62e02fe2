package pressweek.data.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tokens, numbers, threads and spelling, each by itself. */
class PiecesTest {
  private static final Offer OFFER = new Offer(SmallGuide.of(SmallGuide.KNOBS));

  @Test
  void tokensKeepTheirPlaces() {
    Tokens tokens = Tokens.of("Ø50mm × 2½″ – it's #10");
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.at(i);
      all.append(token.text()).append('@').append(token.start()).append(' ');
    }
    assertThat(all.toString())
        .isEqualTo("dia@0 50@1 mm@3 x@6 2@8 1/2@9 \"@10 -@12 its@14 #@19 10@20 ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          1 1/2"        | 1.5   | INCH
          1-1/2 in      | 1.5   | INCH
          1.5 in        | 1.5   | IN
          1.5 in.       | 1.5   | INCH
          2½ in.        | 2.5   | INCH
          1,5 in        | 1.5   | IN
          .250          | 0.25  | NONE
          3/8           | 0.375 | INCH
          50mm          | 50    | MM
          50-mm         | 50    | MM
          5 cm          | 50    | MM
          2''           | 2     | INCH
          2-inch        | 2     | INCH
          12            | 12    | NONE
          one and a half inch | 1.5 | INCH
          three quarters of an inch | 0.75 | INCH
          fifty mm      | 50    | MM
          """)
  void numbersAreReadWithTheirUnits(String text, String value, Measured.Unit unit) {
    Tokens tokens = Tokens.of(text);
    NumberReader.Found found = NumberReader.at(tokens, 0).orElseThrow();
    assertThat(found.number().value()).isEqualByComparingTo(value);
    assertThat(found.number().unit()).isEqualTo(unit);
    assertThat(found.to()).isEqualTo(tokens.size());
  }

  /** Designations of ASME B1.1 and ISO 261. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          M8              | M8x1.25
          M 8             | M8x1.25
          m8x1.25         | M8x1.25
          M8-1.25         | M8x1.25
          M8x1,25         | M8x1.25
          M8x1.25-6g      | M8x1.25
          M8 x 1          | M8x1
          M10             | M10x1.5
          1/4-20          | 1/4-20 UNC
          1/4"-20 UNC     | 1/4-20 UNC
          ¼-20            | 1/4-20 UNC
          .250-20         | 1/4-20 UNC
          1/4 in - 20 UNC-2A | 1/4-20 UNC
          5/16 x 18       | 5/16-18 UNC
          5/16-24         | 5/16-24 UNF
          5/16 UNF        | 5/16-24 UNF
          .3125-18        | 5/16-18 UNC
          #10-32          | #10-32 UNF
          10-24           | #10-24 UNC
          no. 10-24       | #10-24 UNC
          5/16-20         | 5/16-20
          M8x1.25 LH      | M8x1.25 left hand
          """)
  void threadsAreFound(String text, String name) {
    Tokens tokens = Tokens.of(text);
    ThreadFinder.Found found =
        new ThreadFinder(new PlantThreads(OFFER)).at(tokens, 0).orElseThrow();
    assertThat(found.cut().name()).isEqualTo(name);
    assertThat(found.to()).isEqualTo(tokens.size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          M8 x 30      | 2
          M8-30        | 2
          M8x1.25x30   | 4
          3/8-16 x 1"  | 5
          """)
  void aLengthBehindAThreadIsNotPartOfIt(String text, int to) {
    ThreadFinder finder = new ThreadFinder(new PlantThreads(OFFER));
    assertThat(finder.at(Tokens.of(text), 0).orElseThrow().to()).isEqualTo(to);
  }

  @ParameterizedTest
  @CsvSource({"20 pcs", "1/4 x 20 mm", "50", "1.5 in", "star", "no blind", "2026-12-04", "12"})
  void whatIsNoThreadIsNotFound(String text) {
    ThreadFinder finder = new ThreadFinder(new PlantThreads(OFFER));
    assertThat(finder.at(Tokens.of(text), 0)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "star, start, 1",
    "lever, levre, 1",
    "levre, lever, 1",
    "black, blakc, 1",
    "zinc, zink, 1",
    "polypropylene, polyproplyene, 1",
    "phenolic, fenolic, 2",
    "star, knob, 4"
  })
  void distancesCountSlips(String a, String b, int distance) {
    assertThat(SlipIndex.distance(a, b)).isEqualTo(distance);
  }

  @Test
  void oneSlipInAShortWordAndTwoInALongOneAreFound() {
    SlipIndex index = new SlipIndex(java.util.List.of("star", "lever", "handwheel", "red"));
    assertThat(index.nearest("stra")).containsExactly("star");
    assertThat(index.nearest("elver")).containsExactly("lever");
    assertThat(index.nearest("lvre")).isEmpty();
    assertThat(index.nearest("hnadwheal")).containsExactly("handwheel");
    assertThat(index.nearest("rid")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "studs, stud",
    "brass, brass",
    "abs, abs",
    "bushes, bush",
    "boxes, box",
    "stainless, stainless"
  })
  void pluralsLoseTheirS(String word, String stem) {
    assertThat(Stems.plural(word)).isEqualTo(stem);
  }

  @ParameterizedTest
  @CsvSource({
    "plated, plat",
    "plating, plat",
    "plate, plat",
    "tapped, tap",
    "wing, wing",
    "red, red"
  })
  void endingsAreLeftOut(String word, String root) {
    assertThat(Stems.root(word)).isEqualTo(root);
  }
}
