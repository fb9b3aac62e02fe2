package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplainCommandTest {
  private static final String WEEK = "../examples/quillback-week";
  private static final String SMALL = "../examples/quillback-small";
  private static final String THREE = "../examples/three-files";

  private static Ran explain(String folder, String... asked) {
    List<String> arguments = new ArrayList<>(List.of("explain", folder));
    arguments.addAll(List.of(asked));
    return Ran.pressweek(arguments.toArray(String[]::new));
  }

  private static Ran lever(String... more) {
    List<String> asked =
        new ArrayList<>(List.of("mold=M-LV90-1", "press=V6", "item=LV90/M10-B/PP-SGR/A2"));
    asked.addAll(List.of(more));
    return explain(WEEK, asked.toArray(String[]::new));
  }

  /** The lines of one section, without its title. */
  private static List<String> section(Ran ran, String title) {
    List<String> lines = ran.lines();
    int from = lines.indexOf(title) + 1;
    assertThat(from).as(title).isPositive();
    List<String> rest = lines.subList(from, lines.size());
    int end = rest.indexOf("");
    return end < 0 ? rest : rest.subList(0, end);
  }

  /** Arithmetic by hand: 2 x 21 + 7 = 49 cm2; 49 x 3.0 x 1.1 = 161.7 kN. */
  @Test
  void clampForceIsShownWithItsNumbers() {
    Ran ran = lever();
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.lines().get(0))
        .isEqualTo("1000 good pieces of LV90/M10-B/PP-SGR/A2 in mold M-LV90-1 on press V6");
    assertThat(section(ran, "Clamp force"))
        .containsExactly(
            "  projected area = live cavities x part + runner",
            "    = 2 x 21 cm2 + 7 cm2 = 49 cm2",
            "  clamp force = area x cavity pressure x factor",
            "    = 49 cm2 x 3 kN/cm2 x 1.1 = 161.7 kN (estimate)",
            "  press V6 has 750 kN by its record: enough",
            "  caution: the machine manual and the resin sheet rule; lock out before reaching",
            "           in");
  }

  /** Arithmetic by hand: 38 + 5 + 2 x 3.2 = 49.4 s beside 52.5 s on record; 52.5 / 11.4 = 4.6. */
  @Test
  void recordedCycleCountsBeforeTheEstimate() {
    assertThat(section(lever(), "Whole cycle and operators"))
        .containsExactly(
            "  loading by hand = live cavities x (pieces x seconds each)",
            "    = 2 x (1 x 3.2 s) = 6.4 s (estimate)",
            "  seconds each by inserts.csv load_s",
            "  whole cycle, one lower half = mold + unload + load",
            "    = 38 s + 5 s + 6.4 s = 49.4 s (estimate)",
            "  whole cycle = 52.5 s (recorded), standards.csv:8 cycle_s",
            "  the recorded cycle counts, not the estimate of 49.4 s",
            "  presses that one operator can tend = floor(cycle / (unload + load))",
            "    = floor(52.5 s / (5 s + 6.4 s)) = 4 (estimate)",
            "  operators that the plan reserves = 0.5 (recorded), standards.csv operators");
  }

  /** Arithmetic by hand: 1.4 x 170 x 0.905 / 1.05 = 205.1 g; / 65 g x 52.5 s = 2.76 min. */
  @Test
  void stopRuleIsWhatTheJobSheetSays() {
    assertThat(section(lever(), "Barrel residence and stops"))
        .contains(
            "    = 205.1 g / 65 g x 52.5 s = 2.76 min (estimate)",
            "    = 20 min - 2.76 min = 17 min (estimate)",
            "  job sheet: stopped more than 17 min: purge 4 shots");
  }

  /** Arithmetic by hand: 1000 / (0.98 x 2) = 510.2; 1022 / 0.995 = 1027.1, + 5 + 24. */
  @Test
  void amountsAreShown() {
    Ran ran = lever();
    assertThat(section(ran, "Shots, hours and inserts"))
        .contains(
            "    = 1000 / ((1 - 0.02) x 2) = 511",
            "    = 511 x 52.5 s / 0.85 = 527 min (8.78 h) (estimate)",
            "    = 511 x 2 x 1 / (1 - 0.005) + 5 + 24 = 1057 pieces (estimate)");
    assertThat(section(ran, "Resin and masterbatch"))
        .contains(
            "    = (511 + 12) x 65 g = 34 kg (estimate)",
            "    = 34 kg x min(7 g / 65 g, 0.2) = 3.66 kg (estimate)",
            "    = (34 kg - 3.66 kg) x 0.0300 = 0.91 kg (estimate)");
    assertThat(section(ran, "Purge of a typical change"))
        .contains("    = 4 x 170 g = 0.68 kg (estimate)");
    assertThat(section(lever("quantity=2000"), "Shots, hours and inserts"))
        .contains("    = 2000 / ((1 - 0.02) x 2) = 1021");
  }

  /** Arithmetic by hand: 65 g / 40 s = 5.85 kg/h; x 4 h / 0.66 kg/L = 35.45 L of 40 L. */
  @Test
  void hopperIsComparedWithTheDryer() {
    Ran ran =
        explain(
            WEEK, "mold=M-LV90-2", "press=V4", "item=LV90/M10-B/PA66-GF30-BLK/A2", "quantity=9999");
    assertThat(section(ran, "Drying"))
        .contains(
            "    = 4 h at 80 C + 1 h = 5 h (estimate)",
            "    = 65 g / 40 s = 5.85 kg/h (estimate)",
            "    = 23.4 kg / 0.66 kg/L = 35.45 L (estimate)",
            "  dryer D4 holds 40 L by its record, 26.4 kg of this resin: big enough");
    assertThat(section(ran, "Whole cycle and operators"))
        .contains("    = max(38 s, 5 s + 6.4 s) + 2 s = 40 s (estimate)");
    assertThat(section(ran, "Fit")).contains("  it may not run there: never, by its record");
  }

  /** Arithmetic by hand: 7 mm at 10 s; 1.4 x 280 x 1.42 / 1.05 / 110 x 106 s = 8.51 min. */
  @Test
  void thermosetIsCuredAndItsStopsArePurgedAtOnce() {
    Ran ran = explain(WEEK, "mold=M-HW80-1", "press=V8", "item=HW80/M10-T/PF-NVY/ZN");
    assertThat(section(ran, "Curing"))
        .contains(
            "    = 7 mm x 10 s/mm = 70 s (estimate)",
            "  curing = 66 s (recorded), standards.csv:4 cure_s",
            "  the recorded cycle counts, not the estimate");
    assertThat(section(ran, "Barrel residence and stops"))
        .contains(
            "  the resin bears 8 min by its record: too long without any stop; a smaller",
            "  it cures in the barrel: a stop is purged at once (common practice)");
    assertThat(section(ran, "Resin and masterbatch"))
        .contains("  colours.csv let_down_pct is 0: no masterbatch");
  }

  @Test
  void foodContactTakesNoRegrindWithoutARecord() {
    Ran ran = explain(WEEK, "mold=M-LV90-2", "press=V5", "item=LV90/M10-B/PP-SGR/A2/FC");
    assertThat(section(ran, "Resin and masterbatch"))
        .contains(
            "  food or restricted substances: no regrind without a row regrind:PP in",
            "  records.csv");
  }

  @Test
  void folderOfThreeFilesSaysWhatWouldBeNeeded() {
    Ran ran = explain(THREE, "mold=A9", "press=2", "item=lid knob 38");
    assertThat(ran.exitCode()).isZero();
    assertThat(section(ran, "Clamp force"))
        .containsExactly(
            "  not known: clamp force needed", "    needed: molds.csv part_area_cm2 of A9");
    assertThat(section(ran, "Cooling"))
        .containsExactly(
            "  not known: cooling",
            "    needed: molds.csv wall_mm of A9",
            "    needed: resins.csv diffusivity, melt_c, mold_c, eject_c, and the resin",
            "            itself (guide.json, orders.csv resin, or resin= here)",
            "  the mold's own cycle = 38 s (recorded), molds.csv cycle_s of A9");
    Ran named = explain(THREE, "mold=A9", "press=2", "item=lid knob 38", "resin=PP", "colour=RED");
    assertThat(named.out())
        .contains("needed: resins.csv diffusivity, melt_c, mold_c, eject_c of PP");
  }

  @Test
  void smallPlantIsWorkedOut() {
    Ran ran = explain(SMALL, "mold=M-LV90", "press=V2", "item=LV90/M10-B/PP-SGR/ZN");
    assertThat(ran.exitCode()).isZero();
    assertThat(section(ran, "Fit"))
        .contains("  recorded: molds.csv runs_on says proven, which beats every check above");
  }

  @Test
  void linesFitATerminal() {
    List<Ran> all =
        List.of(
            lever(),
            explain(THREE, "mold=A9", "press=2", "item=lid knob 38"),
            explain(WEEK, "mold=M-HW80-1", "press=V8", "item=HW80/M10-T/PF-NVY/ZN"),
            explain(SMALL, "mold=M-KB32", "press=V1", "item=LV90/M10-B/PP-SGR/ZN"));
    for (Ran ran : all) {
      assertThat(ran.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }
  }

  @Test
  void unknownNamesAreToldAtOnceWithTheNearest() {
    Ran ran = explain(WEEK, "mold=M-LV99-1", "press=V66", "item=LV90/M10-Q/PP-SGR/A2");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("mold \"M-LV99-1\" is not in molds.csv; nearest: M-LV90-1")
        .contains("press \"V66\" is not in presses.csv; nearest: V6")
        .contains("code \"LV90/M10-Q/PP-SGR/A2\": unknown nut \"Q\" at position 10");
    assertThat(explain(THREE, "mold=A9", "press=2", "item=lid knobb 38").err())
        .contains(
            "item \"lid knobb 38\" is not in molds.csv makes, orders.csv or bom.csv; nearest:");
    assertThat(lever("resin=PX", "colour=RD").err())
        .contains("resin \"PX\" is not in resins.csv; nearest: ")
        .contains("colour \"RD\" is not in colours.csv");
  }

  @Test
  void anotherMoldThanTheRecordsLeadToIsDoubted() {
    Ran ran = explain(WEEK, "mold=M-KB25-1", "press=V1", "item=LV90/M10-B/PP-SGR/A2");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out())
        .contains("  by molds.csv this item is made in M-LV90-1, M-LV90-2, not in");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          quantity=0    | quantity "0"; expected a whole number from 1 to 10,000,000
          quantity=1.5  | quantity "1.5"; expected a whole number from 1 to 10,000,000
          quantity=99999999 | quantity "99999999"; expected a whole number from 1 to 10,000,000
          color=RED     | "color=RED" is not known; expected mold=, press=, item=, quantity=, resin=, colour=
          V6            | "V6" is not known; expected mold=, press=, item=, quantity=, resin=, colour=
          press=V7      | press is given twice; expected it once
          """)
  void wrongArgumentsAreTold(String argument, String message) {
    Ran ran = lever(argument);
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains(message);
  }

  @Test
  void missingArgumentIsTold() {
    Ran ran = explain(WEEK, "mold=M-LV90-1", "press=V6");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("item= is missing; expected mold=, press= and item=");
  }

  /** Every mold and every press of every example folder, whatever it lacks. */
  @Test
  void everyExampleIsAnswered(@TempDir Path temp) throws IOException {
    String[][] runs = {
      {WEEK, "LV90/M10-B/PP-SGR/A2/FC"}, {SMALL, "LV90/M10-B/PP-SGR/ZN"}, {THREE, "lid knob 38"}
    };
    for (String[] run : runs) {
      List<String> molds = firstCells(run[0], "molds.csv");
      List<String> presses = firstCells(run[0], "presses.csv");
      for (int i = 0; i < Math.max(molds.size(), presses.size()); i++) {
        String mold = molds.get(i % molds.size());
        String press = presses.get(i % presses.size());
        Ran ran = explain(run[0], "mold=" + mold, "press=" + press, "item=" + run[1]);
        assertThat(ran.exitCode()).as(mold + " " + press + " " + ran.err()).isZero();
      }
    }
    assertThat(explain(temp.toString(), "mold=M", "press=P", "item=I").exitCode()).isEqualTo(2);
  }

  private static List<String> firstCells(String folder, String file) throws IOException {
    return Files.readAllLines(Path.of(folder, file)).stream()
        .skip(1)
        .map(line -> line.split(",")[0])
        .toList();
  }
}
