package pressweek.data.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;

class GuideTest {
  private static Guide quillback;

  @BeforeAll
  static void readTheDemoGuide() throws IOException {
    String text = Files.readString(Path.of("../examples/quillback-week/guide.json"));
    GuideReader.Result result = GuideReader.read(Json.object(text));
    assertThat(result.findings()).isEmpty();
    quillback = result.guide().orElseThrow();
  }

  private static Map<String, String> values(Decoded decoded) {
    assertThat(decoded.faults()).isEmpty();
    return decoded.attributes().stream()
        .collect(Collectors.toMap(Attribute::name, Attribute::value));
  }

  private static String fault(String code) {
    Decoded decoded = quillback.decode(code);
    assertThat(decoded.good()).isFalse();
    return decoded.faults().get(0);
  }

  private static Guide guide(String json) {
    GuideReader.Result result = GuideReader.read(Json.object(json));
    assertThat(result.findings()).isEmpty();
    return result.guide().orElseThrow();
  }

  @Test
  void leverOnABlindNutForFood() {
    Decoded decoded = quillback.decode("LV90/M10-B/PP-SGR/A2/FC");
    assertThat(values(decoded))
        .containsOnly(
            Map.entry("head", "LV90"),
            Map.entry("head_style", "clamping lever"),
            Map.entry("head_size_mm", "90"),
            Map.entry("thread", "M10x1.5"),
            Map.entry("insert_kind", "blind"),
            Map.entry("resin", "PP"),
            Map.entry("colour", "SGR"),
            Map.entry("insert_material", "A2"),
            Map.entry("food", "yes"),
            Map.entry("hub", "solid"));
    assertThat(decoded.family()).isEqualTo("head on a nut");
    assertThat(decoded.attributes())
        .contains(
            new Attribute("colour", "SGR", Origin.CODE, "part 3 \"PP-SGR\": signal red"),
            new Attribute("hub", "solid", Origin.RULE, "no hollow in which food could stay"));
  }

  @Test
  void leverOnAStudWithLength() {
    Map<String, String> values = values(quillback.decode("LV75/U516-S25/PA66-GF30-BLK/ZN"));
    assertThat(values)
        .containsEntry("insert_kind", "stud")
        .containsEntry("thread", "5/16-18 UNC")
        .containsEntry("length_mm", "25")
        .containsEntry("resin", "PA66-GF30")
        .containsEntry("colour", "BLK")
        .containsEntry("insert_material", "steel")
        .containsEntry("finish", "zinc")
        .containsEntry("passivation", "trivalent")
        .containsEntry("hub", "cored");
  }

  @Test
  void hubAsSuffixOfTheHead() {
    Decoded decoded = quillback.decode("LV90-F/M10-B/PP-SGR/A2");
    assertThat(decoded.attributes())
        .contains(new Attribute("hub", "solid", Origin.CODE, "part 1 \"LV90-F\""));
  }

  @Test
  void taperedHandleTakesTwoNutsOrANutAndAStud() {
    assertThat(values(quillback.decode("TH100/M8-B/PP-BLK/ZN")))
        .containsEntry("insert_pieces", "2");
    assertThat(values(quillback.decode("TH100/M10-B+M6-S20/PP-BLK/ZN")))
        .containsEntry("insert_kind", "blind")
        .containsEntry("second_insert_kind", "stud")
        .containsEntry("second_thread", "M6x1")
        .containsEntry("second_length_mm", "20")
        .doesNotContainKey("insert_pieces");
  }

  @Test
  void flagsComeInAnyOrder() {
    Map<String, String> values = values(quillback.decode("LV90/M10-B/PP-SGR/A2/FC/RS"));
    assertThat(values).containsEntry("food", "yes").containsEntry("rohs", "yes");
    assertThat(values(quillback.decode("LV90/M10-B/PP-SGR/A2/RS/FC"))).isEqualTo(values);
    assertThat(fault("LV90/M10-B/PP-SGR/A2/FC/FC")).contains("\"FC\" at position 25");
  }

  @Test
  void capitalsDoNotMatterWhereTheGuideSaysSo() {
    assertThat(values(quillback.decode(" lv90/m10-b/pp-sgr/a2 "))).containsEntry("colour", "SGR");
  }

  @Test
  void unknownSymbolIsNamedWithItsPlaceAndTheNearest() {
    assertThat(fault("LV90/M10-Q/PP-SGR/A2"))
        .isEqualTo(
            "code \"LV90/M10-Q/PP-SGR/A2\": unknown nut \"Q\" at position 10; known: B, H, L, T; or"
                + " \"S{length}\"");
    assertThat(fault("LV95/M10-B/PP-SGR/A2"))
        .startsWith(
            "code \"LV95/M10-B/PP-SGR/A2\": unknown head \"LV95\" at position 1; nearest: LV")
        .contains("LV90")
        .endsWith("(30 known)");
    assertThat(fault("LV90/M10-B/PP-SRG/A2"))
        .contains("unknown colour \"SRG\" at position 15; nearest: SGR");
    assertThat(fault("LV90/M10-B/PP-SGRX/A2")).contains("unknown colour \"SGRX\" at position 15");
  }

  @Test
  void numbersKeepTheirRangeAndSteps() {
    assertThat(fault("LV75/M8-S65/PP-BLK/ZN"))
        .endsWith("\"65\" at position 10; expected length 10 to 60 mm in steps of 5");
    assertThat(fault("LV75/M8-S12/PP-BLK/ZN")).contains("\"12\" at position 10");
    assertThat(fault("LV75/M8-S/PP-BLK/ZN"))
        .contains("at position 10; expected length 10 to 60 mm");
  }

  @Test
  void codesThatEndEarlyOrLateAreToldWhatWasExpected() {
    assertThat(fault("LV90/M10-B"))
        .isEqualTo(
            "code \"LV90/M10-B\": the code ends at position 11; expected material {resin}-{colour}");
    assertThat(fault("LV90/M10-B/PP-SGR/A2/XX"))
        .isEqualTo(
            "code \"LV90/M10-B/PP-SGR/A2/XX\": \"X\" at position 23; expected special 01 to 99");
    assertThat(fault("LV90/M10-B/PP-SGR/A2/ZZ"))
        .isEqualTo(
            "code \"LV90/M10-B/PP-SGR/A2/ZZ\": \"ZZ\" at position 22; expected \"FC\" or \"RS\" or"
                + " \"X{special}\" or nothing more");
    assertThat(fault("LV90//PP-SGR/A2")).contains("thread or bushing missing at position 6");
    assertThat(fault("")).contains("head missing at position 1");
  }

  @Test
  void missingDashIsNamed() {
    assertThat(fault("LV90/M10B/PP-SGR/A2")).contains("\"B\" at position 9; expected \"-{nut}\"");
  }

  @Test
  void rulesExcludeWithTheirReason() {
    assertThat(fault("KB40/M8-T/PP-BLK/ZN"))
        .isEqualTo(
            "code \"KB40/M8-T/PP-BLK/ZN\": insert_kind \"through\" (part 2 \"M8-T\": through nut) is"
                + " not possible: the crown stays closed; expected blind|tall");
    assertThat(fault("LV90/M10-B/PP-SGR/ZN/FC")).contains("food contact takes A2 or A4 inserts");
    assertThat(quillback.decode("LV90/M10-L/PF-SGR/ZN").faults())
        .hasSize(2)
        .anyMatch(fault -> fault.contains("phenolic is made in dark colours"))
        .anyMatch(fault -> fault.contains("lock nut"));
  }

  @Test
  void laterPartTellsFamiliesApart() {
    assertThat(quillback.decode("DK25/M5-B/ABS-BLK/BR").family()).isEqualTo("head on a nut");
    assertThat(quillback.decode("DK25/D6/ABS-BLK").family()).isEqualTo("knob on a bushing");
  }

  @Test
  void twoFamiliesThatFitAreReported() {
    Guide twins =
        guide(
            """
            {"schema": "pressweek-guide/1", "separator": ".",
             "fields": {"a": {"sets": "resin", "table": {"X": "PP"}},
                        "b": {"sets": "colour", "table": {"X": "BLK"}}},
             "parts": {"one": {"forms": ["{a}"]}, "other": {"forms": ["{b}"]}},
             "families": [{"name": "first", "parts": ["one"]}, {"name": "second", "parts": ["other"]}]}
            """);
    assertThat(twins.decode("X").faults())
        .containsExactly(
            "code \"X\": it has more than one meaning: first (resin PP), or second (colour BLK)");
  }

  @Test
  void ruleThatForbidsTellsFamiliesApart() {
    Guide twins =
        guide(
            """
            {"schema": "pressweek-guide/1", "separator": ".",
             "fields": {"a": {"sets": "size", "number": {"unit": "mm"}},
                        "b": {"sets": "bore_mm", "number": {"unit": "in"}}},
             "parts": {"one": {"forms": ["{a}"]}, "other": {"forms": ["{b}"]}},
             "families": [{"name": "first", "parts": ["one"], "rules": [{"never": {"size": "2"}}]},
                          {"name": "second", "parts": ["other"]}]}
            """);
    assertThat(values(twins.decode("2"))).containsExactly(Map.entry("bore_mm", "50.8"));
    assertThat(twins.decode("3").good()).isFalse();
  }

  @Test
  void codeWithoutSeparatorIsReadPartByPart() {
    Guide run =
        guide(
            """
            {"schema": "pressweek-guide/1", "separator": "",
             "fields": {"head": {"table": {"A": {}, "AB": {}}},
                        "resin": {"table": {"P": "PP", "BP": "PBT"}},
                        "length": {"sets": "length_mm", "number": {"unit": "mm"}}},
             "parts": {"head": {"forms": ["{head}"]}, "resin": {"forms": ["{resin}"]},
                       "length": {"forms": ["{length}"], "optional": true}},
             "families": [{"name": "knob", "parts": ["head", "resin", "length"]}]}
            """);
    assertThat(values(run.decode("AP12.50")))
        .containsEntry("head", "A")
        .containsEntry("resin", "PP")
        .containsEntry("length_mm", "12.5");
    assertThat(run.decode("ABP").faults().get(0)).contains("more than one meaning");
    assertThat(run.decode("AP1x").faults().get(0)).contains("\"x\" at position 4");
  }

  @Test
  void partsThatContradictEachOtherAreAFault() {
    Guide both =
        guide(
            """
            {"schema": "pressweek-guide/1", "separator": "-",
             "fields": {"head": {"table": {"A": {"hub": "cored"}}}},
             "parts": {"head": {"forms": ["{head}"]}, "hub": {"forms": [{"form": "S", "sets": {"hub": "solid"}}]}},
             "families": [{"name": "knob", "parts": ["head", "hub"]}]}
            """);
    assertThat(both.decode("A-S").faults())
        .containsExactly(
            "code \"A-S\": hub is \"cored\" (part 1 \"A\") and \"solid\" (part 2 \"S\")");
  }

  @Test
  void ruleThatContradictsTheCodeIsAFault() {
    assertThat(fault("HW80/M8-B/PP-BLK/ZN")).contains("the spindle passes through the hub");
  }

  @Test
  void anyTextGivesAnAnswer() {
    Random random = new Random(5);
    String letters = "LV90/M10-B+PSGRA2FC{}\"\\ \u0000\uD83D\uDE00äß|*.,\n\t";
    List<String> seeds =
        List.of("LV90/M10-B/PP-SGR/A2/FC", "TH100/M10-B+M6-S20/PP-BLK/ZN", "DK25/D6/ABS-BLK");
    int bad = 0;
    for (int round = 0; round < 20_000; round++) {
      StringBuilder code = new StringBuilder(round % 4 == 0 ? "" : seeds.get(round % 3));
      int edits = random.nextInt(6);
      for (int edit = 0; edit < edits; edit++) {
        int at = random.nextInt(code.length() + 1);
        if (random.nextBoolean() || at == code.length()) {
          code.insert(at, letters.charAt(random.nextInt(letters.length())));
        } else {
          code.deleteCharAt(at);
        }
      }
      Decoded decoded = quillback.decode(code.toString());
      assertThat(decoded.good()).isEqualTo(decoded.faults().isEmpty());
      bad += decoded.good() ? 0 : 1;
    }
    assertThat(bad).isBetween(10_000, 20_000);
  }

  @Test
  void longTextIsAnsweredShortly() {
    String fault = fault("LV90/M10-B/PP-" + "X".repeat(500_000));
    assertThat(fault).hasSizeLessThan(300).contains("expected an item code of at most 200");
  }
}
