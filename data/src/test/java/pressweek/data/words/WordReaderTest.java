package pressweek.data.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordReaderTest {
  private static final WordReader KNOBS = SmallGuide.reader(SmallGuide.KNOBS);

  private static Reading best(String words) {
    return KNOBS.read(words).readings().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          star knob 50 mm, M8 blind, polypropylene, white, brass | ST50/M8-B/PP-WHT/BR
          2 in star knob, 5/16-18 through, zinc                  | ST50/U516-T/PP-BLK/ZN
          KNOB, STAR, 50MM, M8X30 STUD, BLK                      | ST50/M8-S30/PP-BLK/ZN
          30mm M8 stud, star 40                                  | ST40/M8-S30/PP-BLK/ZN
          star knob dia 50 length 30 M8                          | ST50/M8-S30/PP-BLK/ZN
          star knob 50 dia 30 long M8                            | ST50/M8-S30/PP-BLK/ZN
          ø50 star, M8x1.25x30                                   | ST50/M8-S30/PP-BLK/ZN
          D=50 L=30 star M8                                      | ST50/M8-S30/PP-BLK/ZN
          handle, tapered, 80 mm, M8                             | TH80/M8-B/PP-BLK/ZN
          star knob solid 50 mm M8                               | ST50-F/M8-B/PP-BLK/ZN
          star knob 50 mm M8 stainless 316                       | ST50/M8-B/PP-BLK/A4
          star knob 50 mm M8 steel black oxide                   | ST50/M8-B/PP-BLK/BX
          star knob 50 mm M8 blk oxide                           | ST50/M8-B/PP-BLK/BX
          star knob 50 mm M8 blind, food grade                   | ST50/M8-B/PP-BLK/A2/FC
          star knob 50 mm M8 without food contact                | ST50/M8-B/PP-BLK/ZN
          star knob 50 mm M8, food contact not required          | ST50/M8-B/PP-BLK/ZN
          star knob 50 mm M8 blind, not blind but through        | ST50/M8-T/PP-BLK/ZN
          st50/m8-b/pp-wht/zn                                    | ST50/M8-B/PP-WHT/ZN
          same as ST50/M8-B/PP-WHT/ZN but brown                  | ST50/M8-B/PP-BRN/ZN
          ST50 M8 B PP-WHT A2                                    | ST50/M8-B/PP-WHT/A2
          star knob 50 mm M8 female through                      | ST50/M8-T/PP-BLK/ZN
          two inch star, M8 blind                                | ST50/M8-B/PP-BLK/ZN
          """)
  void readsAnItem(String words, String code) {
    Reading best = best(words);
    assertThat(best.code()).isEqualTo(code);
    assertThat(best.complete()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          stsr knob M8 50 mm            | stsr knob, read as star knob
          tapred handle 80 mm M8        | tapred handle, read as tapered handle
          star knob 50 mm M8 blnd       | blnd, read as blind
          star knob 50 mm M8 phnlc      | phnlc, read as phenolic
          star knob 50 mm M8 polyproplyene | polyproplyene, read as polypropylene
          """)
  void saysWhatASlipWasReadAs(String words, String text) {
    assertThat(best(words).understood()).extracting(Understood::text).contains(text);
    assertThat(best(words).complete()).isTrue();
    assertThat(best(words).doubt()).isPositive();
  }

  @Test
  void shortWordsAreNotCorrected() {
    assertThat(best("str knob 50 mm M8 blind xxd").notUnderstood()).containsExactly("xxd");
  }

  @Test
  void saysWhereWhatWasUnderstoodStands() {
    String words = "Star-Knob, 2 in, M8";
    assertThat(best(words).understood())
        .extracting(u -> words.substring(u.start(), u.end()) + " " + u.means())
        .containsExactly(
            "Star-Knob {head_style=star knob}", "2 in {head_size_mm=50}", "M8 {thread=M8x1.25}");
  }

  @Test
  void saysWhatItTookForGranted() {
    assertThat(best("2 in red star knob, M8 nut").assumed())
        .contains(
            new Assumed(Map.of("head_size_mm", "50"), "head size 2 in = 50.8 mm is taken as 50 mm"),
            new Assumed(Map.of("colour", "SGR"), "\"red\": signal red is usual"),
            new Assumed(Map.of("insert_kind", "blind"), "\"nut\": a nut is blind"),
            new Assumed(Map.of("resin", "PP"), "knobs are polypropylene"));
  }

  @Test
  void whatWasSaidIsNotAssumed() {
    assertThat(best("star knob 50 mm, M8 blind nut, polypropylene, black, A2").assumed()).isEmpty();
  }

  @Test
  void theOnlySizeOfAStyleIsSaidToBeAssumed() {
    Reading best = best("tapered handle M8 blind");
    assertThat(best.code()).isEqualTo("TH80/M8-B/PP-BLK/ZN");
    assertThat(best.assumed()).extracting(Assumed::means).contains(Map.of("head_size_mm", "80"));
  }

  @Test
  void aSizeOfWhichThePlantHasOneThreadIsThatThread() {
    Reading best = best("star knob 50 mm, 1/4 stud 20 mm long");
    assertThat(best.code()).isEqualTo("ST50/U14-S20/PP-BLK/ZN");
    assertThat(best.assumed()).extracting(Assumed::means).contains(Map.of("thread", "1/4-20 UNC"));
  }

  @Test
  void aSizeOfWhichThePlantHasTwoThreadsIsAsked() {
    assertThat(best("star knob 50 mm, 5/16 nut").questions())
        .contains("which thread? 5/16-18 UNC, 5/16-24 UNF");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          star knob M8                       | which head size? 40, 50 mm
          star knob 50 mm                    | which thread? M6x1, M8x1.25, 1/4-20 UNC, 5/16-18 UNC, 5/16-24 UNF
          star knob 50 mm M8 stud            | which length? 10 to 60 mm in steps of 5
          star knob 50 mm M8 not black       | which colour? white (WHT), brown (BRN), signal red (SGR), wine red (WIN)
          star knob 50 mm M8 white or brown  | which colour? white (WHT), brown (BRN)
          star knob 50 mm M8 XJ-4            | what is "XJ-4"?
          50 star knobs M8                   | which head size? 40, 50 mm
          """)
  void asksForWhatIsOpen(String words, String question) {
    assertThat(best(words).questions()).contains(question);
    assertThat(best(words).complete()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          star knob 47 mm M8            | head size 47 mm is not made for star knob; nearest: 40, 50 mm
          star knob 50 mm M8x1          | thread M8x1 is not made; nearest: M8x1.25, 5/16-18 UNC, 5/16-24 UNF
          star knob 50 mm 1/4-28        | thread 1/4-28 UNF is not made; nearest: 1/4-20 UNC, M6x1, 5/16-18 UNC
          star knob 50 mm M8 white brown | colour: white (WHT) and brown (BRN) are both said
          star knob 50 mm M8 stud nut   | insert kind: stud and "nut" are both said
          star knob 50 mm M8x62         | length 62 is not made; nearest: 60 mm
          """)
  void saysWhatIsNotPossible(String words, String conflict) {
    assertThat(best(words).conflicts()).containsExactly(conflict);
    assertThat(best(words).complete()).isFalse();
  }

  @Test
  void whatARuleForbidsIsAConflictOfBoth() {
    Reading best = best("star knob 50 mm M8 phenolic white");
    assertThat(best.conflicts()).hasSize(1);
    assertThat(best.conflicts().get(0)).contains("resin and colour", "phenolic is dark");
    assertThat(best.questions()).contains("which colour? black (BLK), brown (BRN)");
    assertThat(best.code()).isEqualTo("ST50/M8-B/PF-?/ZN");
  }

  @Test
  void twoInsertsAreToldApart() {
    assertThat(best("tapered handle 80 mm, M8 blind nut and M6x20 stud").code())
        .isEqualTo("TH80/M8-B+M6-S20/PP-BLK/ZN");
    assertThat(best("taper grip 80, M6 stud 20 long one end, M8 through nut other end").code())
        .isEqualTo("TH80/M8-T+M6-S20/PP-BLK/ZN");
  }

  @Test
  void aQuantityIsNoSize() {
    Reading best = best("200 pcs star knob 50 mm M8 blind");
    assertThat(best.code()).isEqualTo("ST50/M8-B/PP-BLK/ZN");
    assertThat(best.understood()).extracting(Understood::means).contains(Map.of("quantity", "200"));
  }

  @Test
  void theSameWordsAreReadTheSameEachTime() {
    String words = "50 star 40 M8 25 black red";
    assertThat(KNOBS.read(words)).isEqualTo(KNOBS.read(words));
    assertThat(SmallGuide.reader(SmallGuide.KNOBS).read(words)).isEqualTo(KNOBS.read(words));
  }

  @Test
  void readingsAreRankedAndDiffer() {
    List<Reading> readings = KNOBS.read("star knob 50, M8 30, 40").readings();
    assertThat(readings).hasSizeLessThanOrEqualTo(5);
    assertThat(readings).extracting(Reading::code).doesNotHaveDuplicates();
    for (int i = 1; i < readings.size(); i++) {
      Reading better = readings.get(i - 1);
      Reading worse = readings.get(i);
      assertThat(better.complete() || !worse.complete()).isTrue();
      if (better.complete() == worse.complete()) {
        assertThat(better.doubt()).isLessThanOrEqualTo(worse.doubt());
      }
    }
  }
}
