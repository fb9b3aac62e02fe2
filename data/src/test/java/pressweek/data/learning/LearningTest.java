package pressweek.data.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.ActualsFile;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.learning.Proposal.Figure;
import pressweek.data.learning.Proposal.Verdict;

class LearningTest {
  private static final String HEAD =
      "run,date,press,mold,resin,from_mold,planned_cycle_s,real_cycle_s,planned_scrap_pct,"
          + "real_scrap_pct,planned_change_min,real_change_min,real_efficiency_pct,run_h,"
          + "breakdowns,breakdown_min";

  @TempDir private Path path;
  private final List<String> rows = new ArrayList<>();

  @BeforeEach
  void folder() throws IOException {
    write("orders.csv", "order,item,quantity,due", "1,M1,100,2026-12-02");
    write("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900", "P2,vertical,600");
    write("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,4,30,", "M2,M2,4,30,");
    write("standards.csv", "mold,resin,press,cycle_s,scrap_pct", "M1,,,40,3", "M1,,P2,50,");
    write("changes_recorded.csv", "press,from_mold,to_mold,minutes", "P1,M2,M1,60");
    rows.add(HEAD);
  }

  private void write(String name, String... lines) throws IOException {
    Files.writeString(path.resolve(name), String.join("\n", lines) + "\n");
  }

  private Folder read() throws IOException {
    Folder folder = FolderReader.read(path);
    assertThat(folder.errors()).isEmpty();
    return folder;
  }

  private ActualsFile.Reading actuals() throws IOException {
    write("actuals.csv", rows.toArray(String[]::new));
    return ActualsFile.read(path.resolve("actuals.csv"), read());
  }

  private Learning.Learned learn() throws IOException {
    ActualsFile.Reading reading = actuals();
    assertThat(reading.findings()).isEmpty();
    return Learning.from(read(), reading.rows());
  }

  /** Runs of a mold whose cycles rise by half a second. */
  private void runs(int count, String press, String mold, double from) {
    for (int i = 0; i < count; i++) {
      String cycle = String.format(Locale.ROOT, "%.1f", from + 0.5 * i);
      rows.add(",2026-11-%02d,%s,%s,,,,%s,,,,,,,,".formatted(i % 28 + 1, press, mold, cycle));
    }
  }

  private static Proposal only(Learning.Learned learned, Figure figure) {
    List<Proposal> found = learned.proposals().stream().filter(p -> p.figure() == figure).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void aCycleOutsideTheIntervalIsRevisedAndTheFileIsNot() throws IOException {
    runs(9, "P1", "M1", 42);
    Learning.Learned learned = learn();
    Proposal cycle = only(learned, Figure.CYCLE);
    assertThat(cycle.verdict()).isEqualTo(Verdict.REVISED);
    assertThat(cycle.where()).isEqualTo("standards.csv:2");
    assertThat(cycle.old()).contains(40.0);
    assertThat(cycle.proposed()).isEqualTo(44);
    assertThat(learned.standards()).hasSize(2);
    assertThat(learned.standards().get(0).cycleS()).isEqualTo(44);
    assertThat(learned.standards().get(0).scrapPct()).hasValue(3);
    assertThat(learned.standards().get(1)).isEqualTo(read().floor().standards().get(1));
    assertThat(Files.readString(path.resolve("standards.csv"))).contains("M1,,,40,3");
  }

  @Test
  void aRunCountsForTheRowThatSaysMost() throws IOException {
    runs(9, "P2", "M1", 52);
    assertThat(only(learn(), Figure.CYCLE).where()).isEqualTo("standards.csv:3");
  }

  @Test
  void aCycleWithinTheIntervalStays() throws IOException {
    runs(9, "P1", "M1", 38);
    Learning.Learned learned = learn();
    assertThat(only(learned, Figure.CYCLE).verdict()).isEqualTo(Verdict.STAYS);
    assertThat(learned.standards()).isEqualTo(read().floor().standards());
  }

  @Test
  void oneRunTooFewProposesNothing() throws IOException {
    runs(7, "P1", "M1", 60);
    Proposal cycle = only(learn(), Figure.CYCLE);
    assertThat(cycle.verdict()).isEqualTo(Verdict.TOO_FEW);
    assertThat(cycle.changes()).isFalse();
    runs(1, "P1", "M1", 60);
    assertThat(only(learn(), Figure.CYCLE).verdict()).isEqualTo(Verdict.REVISED);
  }

  @Test
  void aMoldWithoutAStandardGetsARow() throws IOException {
    runs(8, "P1", "M2", 33);
    Learning.Learned learned = learn();
    assertThat(only(learned, Figure.CYCLE).verdict()).isEqualTo(Verdict.NEW);
    assertThat(learned.standards()).hasSize(3);
    assertThat(learned.standards().get(2).mold()).isEqualTo("M2");
    assertThat(learned.standards().get(2).cycleS()).isCloseTo(34.8, within(0.001));
  }

  @Test
  void changesAndEfficiencyAreLearntToo() throws IOException {
    for (int i = 0; i < 8; i++) {
      rows.add("R%d,,P1,M1,,M2,,,,,60,%d,%d,,,".formatted(i, 75 + i, 78 + i % 2));
    }
    Learning.Learned learned = learn();
    Proposal change = only(learned, Figure.CHANGE);
    assertThat(change.where()).isEqualTo("changes_recorded.csv:2");
    assertThat(change.verdict()).isEqualTo(Verdict.REVISED);
    assertThat(change.proposed()).isEqualTo(78);
    assertThat(only(learned, Figure.EFFICIENCY).verdict()).isEqualTo(Verdict.REVISED);
  }

  @Test
  void unknownPressesAndBadCellsAreSaid() throws IOException {
    rows.add("R1,,P9,M1,,,,40,,,,,,,,");
    rows.add("R2,,P1,M1,,,,forty,,,,,,,,");
    ActualsFile.Reading reading = actuals();
    assertThat(reading.rows()).isEmpty();
    assertThat(reading.findings())
        .extracting(Object::toString)
        .anySatisfy(
            f -> assertThat(f).contains("actuals.csv:2").contains("press \"P9\" is not known"));
    assertThat(reading.errors())
        .extracting(Object::toString)
        .singleElement()
        .asString()
        .contains("actuals.csv:3")
        .contains("real_cycle_s \"forty\"");
  }

  @Test
  void theFolderDoesNotReadItAndItsHashesStay() throws IOException {
    var before = read().inputs();
    runs(3, "P1", "M1", 40);
    actuals();
    assertThat(read().inputs()).isEqualTo(before);
    assertThat(read().findings()).isEmpty();
  }

  @Test
  void luckIsTheMiddleAndTheSpreadOfRealOverPlanned() throws IOException {
    for (int i = 0; i < 9; i++) {
      // ratios 1.00 to 1.08: middle 1.04, median deviation 0.02
      rows.add("R%d,,P1,M1,,,100,%d,,,,,,10,1,%d".formatted(i, 100 + i, 50));
    }
    LearnedLuck luck = LearnedLuck.of(read().plant(), actuals().rows());
    assertThat(luck.uncertainty().cycle().meanPct()).isCloseTo(104, within(1e-9));
    assertThat(luck.uncertainty().cycle().spreadPct())
        .isCloseTo(100 * 1.4826 * 0.02 / 1.04, within(1e-9));
    assertThat(luck.uncertainty().of("P1").everyH()).isCloseTo(10, within(1e-9));
    assertThat(luck.uncertainty().of("P1").repairMin()).isCloseTo(50, within(1e-9));
    assertThat(luck.learnt())
        .containsOnlyKeys(LearnedLuck.Source.CYCLE, LearnedLuck.Source.BREAKDOWN);
    assertThat(luck.uncertainty().change()).isEqualTo(read().plant().uncertainty().change());
  }

  @Test
  void tooFewRunsTellNothingOfLuck() throws IOException {
    runs(7, "P1", "M1", 40);
    LearnedLuck luck = LearnedLuck.of(read().plant(), actuals().rows());
    assertThat(luck.uncertainty()).isEqualTo(read().plant().uncertainty());
    assertThat(luck.learnt()).isEmpty();
  }
}
