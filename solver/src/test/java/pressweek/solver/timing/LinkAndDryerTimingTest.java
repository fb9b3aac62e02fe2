package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.timing.Arranged.MOUNT;
import static pressweek.solver.timing.Arranged.sideBySide;
import static pressweek.solver.timing.Arranged.work;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.PlantWide.DryerUse;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Link;
import pressweek.data.problem.Opening;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;

/** The first run is from 00:46 to 02:26; PP dries for 120 minutes, ABS for 60. */
final class LinkAndDryerTimingTest {
  private static final int FIRST_END = START + MOUNT + 100;

  @Test
  void aRunThatBuildsOnNothingDoesNotWait() {
    assertThat(linked(new Link("9/1", "1/1", 0), START).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void aRunThatBuildsOnAnotherStartsWhenThatHasRested() {
    Run second = linked(new Link("2/1", "1/1", 60), START);
    assertThat(second.startMin()).isEqualTo(FIRST_END + 60);
    assertThat(second.waits())
        .containsExactly(new Wait(Cause.LINKED, "1/1", START, FIRST_END + 60 - MOUNT));
  }

  @Test
  void whatStartsWithTheEndOfTheRestIsNotHeldUp() {
    int change = FIRST_END + 60 - MOUNT;
    Run exact = linked(new Link("2/1", "1/1", 60), change);
    assertThat(exact.waits()).containsExactly(new Wait(Cause.EARLIEST, "", START, change));
    Run before = linked(new Link("2/1", "1/1", 60), change - 1);
    assertThat(before.waits()).extracting(Wait::cause).contains(Cause.LINKED);
    assertThat(before.startMin()).isEqualTo(FIRST_END + 60);
  }

  private static Run linked(Link link, int earliest) {
    Problem problem =
        new SmallPlant()
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").earliest(earliest).on("P2", "M2", 100))
            .build()
            .with(Arranged.link(link));
    return sideBySide(problem).runs().get(1);
  }

  /** An empty dryer has PP dry at 02:00; the change of 46 minutes is done by then. */
  @Test
  void theFirstRunWaitsUntilItsMaterialIsDry() {
    Run first = dried(plant(), "PP", List.of("P1", "P2")).runs().get(0);
    assertThat(first.startMin()).isEqualTo(START + 120);
    assertThat(first.waits())
        .containsExactly(new Wait(Cause.DRYER, "PP", START, START + 120 - MOUNT));
  }

  @Test
  void theSameMaterialIsDryForBoth() {
    Timetable done = dried(plant(), "PP", List.of("P1", "P2"));
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + 120);
  }

  /**
   * ABS is dry first, at 01:00, and drawn until 02:40; then 20 minutes to clean and 120 to dry. The
   * change to PP ends as the run of it begins.
   */
  @Test
  void anotherMaterialComesAfterCleaningAndDrying() {
    Timetable done = dried(plant(), "ABS", List.of("P1", "P2"));
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + 60);
    assertThat(done.runs().get(0).startMin()).isEqualTo(START + 160 + 20 + 120);
    assertThat(done.whole().dryings())
        .containsExactly(
            new DryerUse("R002", "D1", "ABS", START, START + 160),
            new DryerUse("R001", "D1", "PP", START + 180, START + 400));
  }

  @Test
  void aPressWithoutADryerIsNotAsked() {
    Timetable done = dried(plant(), "ABS", List.of("P1"));
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void whatIsInTheBarrelIsDryAtTheStart() {
    SmallPlant standing =
        plant().state(new PressState("P1", new Setup("", "", "PP", "BLK"), false, ""));
    Run first = dried(standing, "PP", List.of("P1", "P2")).runs().get(0);
    assertThat(first.startMin()).isEqualTo(START + MOUNT);
  }

  private static SmallPlant plant() {
    return new SmallPlant();
  }

  private static Timetable dried(SmallPlant plant, String second, List<String> fed) {
    Drying drying =
        new Drying(
            List.of(new Drying.Feed("D1", fed)),
            List.of(
                new Drying.Dried("PP", "BLK", "PP", 120),
                new Drying.Dried("ABS", "BLK", "ABS", 60)),
            20);
    Problem problem =
        plant
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").in(second, "BLK").on("P2", "M2", 100))
            .build()
            .with(Arranged.settled(Opening.NONE, drying, Terms.NONE));
    return sideBySide(problem);
  }
}
