package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.week.RunExplainer.Answer;
import pressweek.data.week.RunExplainer.Asked;
import pressweek.data.working.Line;
import pressweek.data.working.Section;

class RunExplainerTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hand_load,part_g,runner_g",
        "M1,M1,4,40,,no,28,14");
    plant.file(
        "presses.csv", "press,orientation,clamp_kn,shot_ps_g,dryer", "P1,horizontal,900,250,D1");
    plant.file(
        "resins.csv",
        "resin,density,dry_h,dry_c,bulk_density_kg_l,preheat_inserts,regrind_max_pct",
        "PC,1.2,4,120,0.65,yes,25");
    plant.file("colours.csv", "colour,masterbatch,let_down_pct", "RED,MB-RED,25:1");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D1,69,");
    plant.file("bom.csv", "item,component,pieces", "M1,I1,1");
    inserts("130", "150");
  }

  private void inserts(String preheatC, String heatMaxC) {
    plant.file(
        "inserts.csv",
        "insert,kind,thread,preheat_c,heat_max_c",
        "I1,blind,M8," + preheatC + "," + heatMaxC);
  }

  private List<Line> lines(String title) {
    Asked asked = new Asked("M1", "P1", "M1", "PC", "RED", 10_000);
    Answer answer = new RunExplainer(plant.read()).explain(asked);
    assertThat(answer).isInstanceOf(Answer.Worked.class);
    return ((Answer.Worked) answer)
        .working().sections().stream()
            .filter(section -> section.title().equals(title))
            .map(Section::lines)
            .findFirst()
            .orElseThrow();
  }

  private List<String> results(String title) {
    return lines(title).stream()
        .filter(Line.Sum.class::isInstance)
        .map(Line.Sum.class::cast)
        .map(sum -> sum.what() + " " + sum.result())
        .toList();
  }

  private List<String> notes(String title) {
    return lines(title).stream()
        .filter(Line.Note.class::isInstance)
        .map(line -> ((Line.Note) line).text())
        .toList();
  }

  /**
   * Own arithmetic: 10 000 good at 3 % scrap from 4 cavities are 2578 shots; with 10 start-up shots
   * 326.1 kg, of which 1/9 is runner.
   */
  @Test
  void resinMasterbatchAndRegrind() {
    assertThat(results("Shots, hours and inserts")).contains("shots 2578");
    // 2578 x 40 s / 0.85 = 121318 s, and ten start-up shots 470.6 s
    assertThat(results("Shots, hours and inserts"))
        .contains(
            "working time of the run 2022 min (33.7 h)",
            "and after a change that exchanges something 8 min (0.133 h)");
    assertThat(results("Resin and masterbatch"))
        .containsExactly(
            "plastic 326.1 kg",
            "of it runner 36.23 kg",
            "regrind 36.23 kg",
            "masterbatch MB-RED 11.15 kg",
            "natural resin 278.7 kg");
  }

  /** Own arithmetic: 126 g every 40 s for 4 h are 45.36 kg, 69.78 L at 0.65 kg/L. */
  @Test
  void hopperThatIsALittleTooSmall() {
    assertThat(results("Drying"))
        .containsExactly(
            "before the first shot, cold hopper 5 h",
            "rate 11.34 kg/h",
            "in the hopper 45.36 kg",
            "hopper volume 69.78 L");
    assertThat(notes("Drying"))
        .containsExactly("dryer D1 holds 69 L by its record, 44.85 kg of this resin: too small");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D1,69.8,");
    assertThat(notes("Drying").get(0)).endsWith("big enough");
    plant.file("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D1,69.8,P1");
    assertThat(notes("Drying").get(0)).endsWith("big enough");
  }

  @Test
  void preheatIsHeldAgainstWhatTheInsertBears() {
    assertThat(notes("Insert preheat"))
        .containsExactly(
            "I1: 130 C for 5 min (recorded: inserts.csv preheat_c), it bears 150 C by its record");
    inserts("", "100");
    assertThat(notes("Insert preheat"))
        .containsExactly(
            "I1: 120 C for 5 min (estimate: plant.json preheat.c): TOO HOT, it bears 100 C by its"
                + " record");
    inserts("", "");
    assertThat(notes("Insert preheat").get(0))
        .endsWith("; what it bears is not known: inserts.csv heat_max_c");
  }

  /** The record of the approval counts for the need of the item, and until it expires. */
  @Test
  void regrindOfRestrictedWorkNeedsItsRecord() {
    plant.file("bom.csv", "item,component,pieces,attribute,value", "M1,I1,1,,", "M1,,,food,yes");
    assertThat(results("Resin and masterbatch"))
        .contains("regrind 0 kg", "runners left over 36.23 kg");
    plant.file("records.csv", "what,for,expires", "regrind:PC,food,2027-01-01");
    assertThat(results("Resin and masterbatch")).contains("regrind 36.23 kg");
    plant.file("records.csv", "what,for,expires", "regrind:PC,food,2026-11-30");
    assertThat(results("Resin and masterbatch")).contains("regrind 0 kg");
    plant.file("records.csv", "what,for,expires", "regrind:PC,rohs,2027-01-01");
    assertThat(results("Resin and masterbatch")).contains("regrind 0 kg");
  }

  @Test
  void dummyPlugsSaveTheInsertsOfTheStart() {
    // 10 312 / 0.995 + 5, and 40 for the start
    assertThat(results("Shots, hours and inserts")).contains("inserts I1 10409 pieces");
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hand_load,part_g,runner_g,dummy_plugs",
        "M1,M1,4,40,,no,28,14,yes");
    assertThat(results("Shots, hours and inserts")).contains("inserts I1 10369 pieces");
  }

  @Test
  void whatThePlantDoesNotHaveIsRefusedWithEveryReason() {
    Answer answer =
        new RunExplainer(plant.read()).explain(new Asked("M2", "P9", "K", "PX", "BLU", 1));
    assertThat(answer).isInstanceOf(Answer.Refused.class);
    assertThat(((Answer.Refused) answer).messages())
        .hasSize(5)
        .anyMatch(message -> message.startsWith("item \"K\" is not in molds.csv makes"));
  }
}
