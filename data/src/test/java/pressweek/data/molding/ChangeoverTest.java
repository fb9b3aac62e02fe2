package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.molding.Changeover.Step;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;

/**
 * Minutes and purge are the plant's figures (common practice, no source); what is tested is how
 * they are put together.
 */
class ChangeoverTest {
  private static final Setup BLACK = new Setup("M1", "", "PP", "BLK");
  private final SmallPlant plant = new SmallPlant();

  private Step step(Setup from, Setup to) {
    return new Changeover(plant.build()).between("P1", from, to, false, false);
  }

  @Test
  void sameSetupExchangesNothing() {
    Step step = step(BLACK, BLACK);
    assertThat(step).isEqualTo(new Step(List.of(), 0, 0));
    assertThat(step.exchanges()).isFalse();
  }

  @Test
  void anotherMoldIsDismountOfTheOldAndMountOfTheNew() {
    plant.mold(withChange(SmallPlant.mold("M1"), 31)).mold(withChange(SmallPlant.mold("M2"), 80));
    Changeover changeover = new Changeover(plant.build());
    // 40 % of 31 is 12.4, rounded up to 13; 40 % of 80 is 32, and 48 remain
    assertThat(changeover.dismountMin("M1")).isEqualTo(13);
    assertThat(changeover.mountMin("M1")).isEqualTo(18);
    assertThat(changeover.mountMin("M2")).isEqualTo(48);
    Step step = step(BLACK, new Setup("M2", "", "PP", "BLK"));
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.MOLD), 13 + 48 + 10, 0));
    assertThat(step.exchanges()).isTrue();
  }

  @Test
  void emptyPressOnlyMounts() {
    Step step = step(new Setup("", "", "", ""), BLACK);
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.MOLD), 36 + 10, 0));
  }

  @Test
  void moldWithoutFigureTakesThePlants() {
    plant.mold(withChange(SmallPlant.mold("M2"), OptionalInt.empty()));
    assertThat(new Changeover(plant.build()).dismountMin("M2")).isEqualTo(24);
  }

  @Test
  void anotherToolingSetInTheSameMold() {
    Step step = step(new Setup("M1", "A", "PP", "BLK"), new Setup("M1", "B", "PP", "BLK"));
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.TOOLING), 20 + 10, 0));
  }

  @Test
  void toolingOfAnotherMoldIsPartOfTheMoldChange() {
    Step step = step(new Setup("M1", "A", "PP", "BLK"), new Setup("M2", "B", "PP", "BLK"));
    assertThat(step.kinds()).containsExactly(ChangeKind.MOLD);
  }

  @Test
  void darkerColourTakesTheShortMinutesAndPurge() {
    Step step = step(new Setup("M1", "", "PP", "WHT"), BLACK);
    // 1.5 barrels of 200 g
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.COLOUR), 10 + 10, 300));
  }

  @Test
  void equallyLightColourCountsAsDarker() {
    plant.colour("NVY", 10);
    assertThat(step(BLACK, new Setup("M1", "", "PP", "NVY")).minutes()).isEqualTo(10 + 10);
  }

  @Test
  void lighterColourPaysForTheStep() {
    Step step = step(BLACK, new Setup("M1", "", "PP", "WHT"));
    // 30 + 45 x 85 / 100 = 68.25, rounded up
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.COLOUR), 69 + 10, 800));
  }

  @Test
  void lightnessOfTheResinBeatsThatOfAllResins() {
    plant.colour(new Colour("PP", "WHT", "natural white", "", OptionalDouble.of(10)));
    assertThat(step(BLACK, new Setup("M1", "", "PP", "WHT")).minutes()).isEqualTo(10 + 10);
  }

  @Test
  void unknownLightnessTakesTheUnknownMinutes() {
    Step step = step(BLACK, new Setup("M1", "", "PP", "GLOW"));
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.COLOUR), 40 + 10, 800));
  }

  @Test
  void resinWithinTheToleranceTakesTheSameMinutes() {
    plant.resin(SmallPlant.resin("POM", 200)); // exactly 30 below PP
    Step step = step(BLACK, new Setup("M1", "", "POM", "BLK"));
    assertThat(step).isEqualTo(new Step(List.of(ChangeKind.RESIN), 20 + 10, 600));
  }

  @Test
  void coolerResinTakesTheCoolDown() {
    plant.resin(SmallPlant.resin("POM", 199));
    assertThat(step(BLACK, new Setup("M1", "", "POM", "BLK")).minutes()).isEqualTo(40 + 10);
  }

  @Test
  void degreesCountAsTheyAreWritten() {
    plant.resin(SmallPlant.resin("A", 34.4)).resin(SmallPlant.resin("B", 4.4));
    // 34.4 - 4.4 is a little more than 30 in binary fractions
    assertThat(step(new Setup("M1", "", "A", "BLK"), new Setup("M1", "", "B", "BLK")).minutes())
        .isEqualTo(20 + 10);
  }

  @Test
  void lightnessCountsAsItIsWritten() {
    plant.colour("DIM", 67.7).colour("LIT", 87.7);
    // 45 x 20 / 100 is 9; 87.7 - 67.7 is a little more than 20 in binary fractions
    assertThat(step(new Setup("M1", "", "PP", "DIM"), new Setup("M1", "", "PP", "LIT")).minutes())
        .isEqualTo(30 + 9 + 10);
  }

  @Test
  void unknownResinOrColourOnEitherSideTakesNothing() {
    assertThat(step(BLACK, new Setup("M1", "", "", "")).exchanges()).isFalse();
  }

  @Test
  void hotterResinTakesTheHeatUp() {
    ChangeTable table = SmallPlant.changeTable();
    plant.changes(
        new ChangeTable(
            60,
            40,
            20,
            new ChangeTable.ResinStep(20, 25, 40, 30, 3_000),
            table.colour(),
            30,
            10,
            false));
    plant.resin(SmallPlant.resin("PA66", 285));
    assertThat(step(BLACK, new Setup("M1", "", "PA66", "BLK")).minutes()).isEqualTo(25 + 10);
  }

  @Test
  void resinAndColourTogetherTakeTheLarger() {
    Step step = step(BLACK, new Setup("M1", "", "ABS", "WHT"));
    assertThat(step)
        .isEqualTo(new Step(List.of(ChangeKind.RESIN, ChangeKind.COLOUR), 69 + 10, 800));
  }

  @Test
  void emptyBarrelNeedsNoPurge() {
    Step step = step(new Setup("M1", "", "", ""), new Setup("M1", "", "ABS", "WHT"));
    assertThat(step).isEqualTo(new Step(List.of(), 0, 0));
  }

  @Test
  void barrelWorkAfterMoldWorkAddsAndBesideItTheLongerCounts() {
    Setup next = new Setup("M2", "", "PP", "WHT");
    assertThat(step(BLACK, next).minutes()).isEqualTo(60 + 69 + 10);
    ChangeTable t = SmallPlant.changeTable();
    plant.changes(new ChangeTable(60, 40, 20, t.resin(), t.colour(), 30, 10, true));
    assertThat(step(BLACK, next).minutes()).isEqualTo(69 + 10);
  }

  @Test
  void purgeUsesTheDefaultBarrelWhereThePressHasNone() {
    Press press = SmallPlant.horizontal("P1");
    OptionalDouble none = OptionalDouble.empty();
    plant.press(
        new Press(
            "P1",
            "",
            press.build(),
            new Press.Size(none, none, none, none, none, none, none),
            "always",
            press.food(),
            0));
    assertThat(step(new Setup("M1", "", "PP", "WHT"), BLACK).purgeG()).isEqualTo(375);
  }

  @Test
  void purgeRoundsTheBarrelAndTheResultUp() {
    Press press = SmallPlant.horizontal("P1");
    OptionalDouble none = OptionalDouble.empty();
    plant.press(
        new Press(
            "P1",
            "",
            press.build(),
            new Press.Size(none, OptionalDouble.of(200.2), none, none, none, none, none),
            "always",
            press.food(),
            0));
    // 1.5 x 201 = 301.5
    assertThat(step(new Setup("M1", "", "PP", "WHT"), BLACK).purgeG()).isEqualTo(302);
  }

  @Test
  void firstMatchingRecordedChangeReplacesTheTable() {
    Setup any = new Setup("", "", "", "");
    plant.recorded(new RecordedChange("P2", any, any, 1, OptionalInt.of(1))); // another press
    plant.recorded(
        new RecordedChange(
            "",
            new Setup("", "", "", "BLK"),
            new Setup("", "", "", "WHT"),
            90,
            OptionalInt.of(50)));
    plant.recorded(new RecordedChange("P1", any, any, 7, OptionalInt.empty()));
    assertThat(step(BLACK, new Setup("M1", "", "PP", "WHT")))
        .isEqualTo(new Step(List.of(ChangeKind.COLOUR), 90, 50));
    // the third row: its minutes, and the purge of the table since it has none
    assertThat(step(new Setup("M1", "", "PP", "WHT"), BLACK))
        .isEqualTo(new Step(List.of(ChangeKind.COLOUR), 7, 300));
    assertThat(step(BLACK, BLACK).minutes()).isZero();
  }

  @Test
  void foodClearanceIsAddedWhereThePressIsNotCleared() {
    Changeover changeover = new Changeover(plant.build());
    assertThat(changeover.between("P1", BLACK, BLACK, true, true).minutes()).isZero();
    Step alone = changeover.between("P1", BLACK, BLACK, true, false);
    assertThat(alone).isEqualTo(new Step(List.of(ChangeKind.FOOD_CLEARANCE), 30, 0));
    assertThat(alone.exchanges()).isFalse();
    Setup white = new Setup("M1", "", "PP", "WHT");
    Step both = changeover.between("P1", BLACK, white, true, false);
    assertThat(both.kinds()).containsExactly(ChangeKind.COLOUR, ChangeKind.FOOD_CLEARANCE);
    assertThat(both.minutes()).isEqualTo(69 + 10 + 30);
  }

  @Test
  void recordedChangeStillGetsItsFoodClearance() {
    Setup any = new Setup("", "", "", "");
    plant.recorded(new RecordedChange("P1", any, any, 7, OptionalInt.empty()));
    Changeover changeover = new Changeover(plant.build());
    Setup white = new Setup("M1", "", "PP", "WHT");
    assertThat(changeover.between("P1", BLACK, white, true, false).minutes()).isEqualTo(7 + 30);
  }

  private static Mold withChange(Mold mold, int minutes) {
    return withChange(mold, OptionalInt.of(minutes));
  }

  private static Mold withChange(Mold mold, OptionalInt minutes) {
    return new Mold(
        mold.id(),
        mold.use(),
        mold.cavities(),
        mold.body(),
        mold.runsOn(),
        new Mold.MoldChange(minutes, false, OptionalInt.empty()),
        mold.cycleS(),
        mold.handLoad());
  }
}
