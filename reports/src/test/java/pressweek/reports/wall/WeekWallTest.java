package pressweek.reports.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class WeekWallTest {
  private static final String MONDAY = "2026-11-30T";
  private static final Setup BLACK = new Setup("M1", "", "PP", "BLK");
  private static final Setup RED = new Setup("M1", "", "PP", "SGR");

  private static int at(String time) {
    return SampleWeek.at(MONDAY + time);
  }

  private static String wall(SmallPlan plan) {
    return WeekWall.of(PlanBook.of(plan.plan())).toString();
  }

  private static SmallPlan oneRun(String due) {
    return new SmallPlan()
        .job("4711", "V1", due)
        .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "13:00");
  }

  @Test
  void barLinksToItsRowAndSaysWhatItIs() {
    assertThat(wall(oneRun(MONDAY + "22:00")))
        .contains(
            "<a class=\"run\" href=\"#run-R1\" aria-label=\"V1, order 4711/1: 500 pieces of"
                + " LV90/S0825/PP-BLK, PP black, Mon 30 Nov 08:00\u201313:00, run R1\">"
                + "<title>V1, order 4711/1: 500 pieces of LV90/S0825/PP-BLK, PP black,"
                + " Mon 30 Nov 08:00\u201313:00, run R1</title>")
        .contains("fill=\"#111214\"")
        .contains("fill=\"#ffffff\"><text class=\"large\"")
        .doesNotContain("class=\"due\"");
  }

  @Test
  void lateRunHasAFlagWhereItWasDue() {
    assertThat(wall(oneRun(MONDAY + "10:30")))
        .contains(
            "<g class=\"due\"><title>4711/1 2 h 30 min late: due Mon 30 Nov 10:30,"
                + " ready Mon 30 Nov 13:00</title>")
        .contains(">4711/1 2 h 30 min late</text>")
        .contains(", 2 h 30 min late, due Mon 30 Nov 10:30\"");
  }

  @Test
  void runningAndPromisedAreSaidInWordsAndMarked() {
    SmallPlan running = oneRun(MONDAY + "22:00");
    running.states.add(new PressState("V1", BLACK, false, "4711/1"));
    assertThat(wall(running)).contains(", run R1, running\"").contains("<path class=\"mark\"");
    SmallPlan promised = oneRun(MONDAY + "22:00");
    promised.promises.add(new Promise("4711/1", "V1", at("08:00")));
    assertThat(wall(promised)).contains(", run R1, promised\"").contains(">promised");
  }

  @Test
  void changeIsAGapWithItsMinutes() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "22:00")
            .run(
                "R1",
                "4711/1",
                "V1",
                SmallPlan.change(
                    List.of(ChangeKind.MOLD, ChangeKind.COLOUR),
                    BLACK,
                    RED,
                    MONDAY + "06:00",
                    MONDAY + "08:40"),
                List.of(at("08:40"), at("12:00")));
    assertThat(wall(plan))
        .contains("fill=\"url(#hatch-change)\"")
        .contains(">160</text>")
        .contains(
            "<title>change of 2 h 40 min before 4711/1: mold, colour,"
                + " Mon 30 Nov 06:00\u201308:40</title>");
  }

  @Test
  void waitForTheSetterIsDrawnAndThatForThePressIsNot() {
    SmallPlan plan =
        oneRun(MONDAY + "22:00")
            .because(
                List.of(
                    new Wait(Cause.PRESS, "", at("06:00"), at("07:00")),
                    new Wait(Cause.SETTER, "", at("07:00"), at("08:00"))),
                List.of());
    assertThat(wall(plan))
        .contains("<title>no setter free, Mon 30 Nov 07:00\u201308:00</title>")
        .doesNotContain("press busy");
  }

  @Test
  void dismountAndDowntimeAreHatchedWithTheirReason() {
    SmallPlan plan = new SmallPlan();
    plan.dismounts.add(new Dismount("V2", "M7", at("08:00"), at("08:24"), 24, 0));
    plan.downtime.add(
        new Downtime(Downtime.Kind.PRESS, "V1", at("10:00"), at("20:00"), "seals renewed"));
    assertThat(wall(plan))
        .contains("fill=\"url(#hatch-dismount)\"")
        .contains("mold M7 taken off for another press, 24 min")
        .contains("fill=\"url(#hatch-away)\"")
        .contains(">seals renewed</text>");
  }

  @Test
  void colourThatIsNotKnownIsHatched() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", new SampleJobs.Choice("V1", "M1", "PP", "NAT", "S0825", 500, at("22:00")))
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "13:00");
    assertThat(wall(plan))
        .contains("fill=\"url(#hatch-unknown)\"")
        .contains("<g class=\"label haloed\"><text");
  }

  @Test
  void pausedRunIsThinWhereThePressDoesNotWork() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", "2026-12-03T22:00")
            .run("R1", "4711", "V1", MONDAY + "20:00", "2026-12-01T08:00");
    String wall = wall(plan);
    String bar = wall.substring(wall.indexOf("<a class=\"run\""), wall.indexOf("</a>"));
    assertThat(bar.split("height=\"6\"", -1)).hasSize(2);
    assertThat(bar.split("height=\"29\"", -1)).hasSize(3);
  }

  @Test
  void everyPressHasAStripAndEveryRunOneFocusableBar() {
    String wall = WeekWall.of(PlanBook.of(SamplePlan.of(14, 150))).toString();
    assertThat(wall.split("aria-label=\"V\\d+, order|aria-label=\"H\\d+, order", -1)).hasSize(151);
    for (int i = 1; i <= 14; i++) {
      assertThat(wall).contains("aria-label=\"press " + (i <= 8 ? "V" : "H") + i + "\"");
    }
  }

  @Test
  void largePlantIsDrawnInRowsOfNearlyTheSameNumber() {
    List<Press> presses = SampleWeek.presses(61);
    assertThat(WeekWall.sheets(presses)).extracting(List::size).containsExactly(12, 12, 12, 12, 13);
    assertThat(WeekWall.sheets(presses).stream().flatMap(List::stream).toList()).isEqualTo(presses);
    assertThat(WeekWall.sheets(presses.subList(0, 15))).hasSize(1);
    assertThat(WeekWall.sheets(List.of())).isEmpty();
  }

  @Test
  void largePlantIsDrawnWholeAndStaysSmall() {
    String wall = WeekWall.of(PlanBook.of(SamplePlan.of(60, 1_500))).toString();
    assertThat(IntStream.rangeClosed(1, 1_500).mapToObj(i -> String.format("#run-R%03d\"", i)))
        .allMatch(wall::contains);
    assertThat(wall.length()).isLessThan(3_000_000);
  }
}
