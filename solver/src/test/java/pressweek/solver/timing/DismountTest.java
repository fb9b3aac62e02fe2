package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;

/**
 * When a mold is taken off for another press, worked out by hand: taking one off takes 24 minutes,
 * and an empty press needs 46 for its change.
 */
final class DismountTest {
  private static final int MOUNT = 46;
  private static final int OFF = 24;

  @Test
  void anIdlePressGivesItsMoldUpBeforeThePressThatWantsItIsFree() {
    Timetable done = carryOut(plant().build());
    assertThat(done.dismounts())
        .singleElement()
        .satisfies(off -> assertThat(off.startMin()).isEqualTo(START + MOUNT + 100));
    Run third = done.runs().get(2);
    assertThat(third.change().startMin()).isEqualTo(START + MOUNT + 300);
    assertThat(third.waits()).isEmpty();
  }

  /** The one setter is busy on the third press from 120 to 166. */
  @Test
  void itStillWaitsForASetter() {
    Timetable done =
        carryOut(
            plant()
                .shifts(oneSetter())
                .crew(new Crew(true, false, 100, false, 30))
                .job(job("4").earliest(START + 120).on("P3", "M3", 50))
                .press(SmallPlant.horizontal("P3"))
                .mold(SmallPlant.mold("M3"))
                .build());
    List<Integer> changes =
        done.runs().stream().map(run -> run.change().startMin() - START).toList();
    assertThat(changes).containsExactly(0, MOUNT, 2 * MOUNT + 300, 120);
    assertThat(done.dismounts())
        .singleElement()
        .satisfies(off -> assertThat(off.startMin()).isEqualTo(START + 120 + MOUNT));
    assertThat(done.runs().get(2).waits()).isEmpty();
  }

  @Test
  void aPressThatIsFreeFirstWaitsForTheMold() {
    Problem problem =
        new SmallPlant()
            .job(job("1").on("P1", "M1", 100))
            .job(job("2").on("P2", "M2", 50))
            .job(job("3").on("P2", "M1", 50))
            .build();
    Run third = carryOut(problem).runs().get(2);
    assertThat(third.change().startMin()).isEqualTo(START + MOUNT + 100 + OFF);
    assertThat(third.waits())
        .containsExactly(new Wait(Cause.MOLD, "M1", START + MOUNT + 50, START + MOUNT + 100 + OFF));
  }

  /** M1 is on the first press until 146; the second wants it at 346. */
  private static SmallPlant plant() {
    return new SmallPlant()
        .job(job("1").on("P1", "M1", 100))
        .job(job("2").on("P2", "M2", 300))
        .job(job("3").on("P2", "M1", 50));
  }

  private static Shift oneSetter() {
    Shift all = SmallPlant.shift("all", "00:00", "00:00");
    return new Shift(
        all.name(),
        all.days(),
        all.from(),
        all.to(),
        all.breaks(),
        1,
        all.operatorThousandths(),
        OptionalInt.empty());
  }

  /** The first job on the first press, the next two on the second, the rest on the third. */
  private static Timetable carryOut(Problem problem) {
    WeekTables week = new WeekTables(problem);
    Sequences sequences = new Sequences(week.pressCount(), week.jobCount());
    for (int job = 0; job < week.jobCount(); job++) {
      sequences.add((job + 1) / 2, job);
    }
    return Timetable.of(week, sequences);
  }
}
