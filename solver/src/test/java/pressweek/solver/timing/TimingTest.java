package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/**
 * Clock times of sequences on the smallest plant, worked out by hand. A mold change there takes 60
 * minutes (24 off, 36 on) and 10 for the first article; an empty press needs 36 + 10 = 46.
 */
final class TimingTest {
  private static final int MOUNT = 46;

  @Test
  void firstRunWaitsForNothingButItsMold() {
    Run run = only(plant().job(work("1").on("P1", "M1", 100)), "P1");
    assertThat(run.change().startMin()).isEqualTo(START);
    assertThat(run.startMin()).isEqualTo(START + MOUNT);
    assertThat(run.endMin()).isEqualTo(START + MOUNT + 100);
    assertThat(run.waits()).isEmpty();
  }

  @Test
  void sameSetupFollowsWithoutAChange() {
    Timetable done =
        carryOut(
            plant().job(work("1").on("P1", "M1", 100)).job(work("2").on("P1", "M1", 50)).build(),
            new int[] {0, 1},
            new int[] {});
    assertThat(done.runs().get(1).change().kinds()).isEmpty();
    assertThat(done.runs().get(1).startMin()).isEqualTo(done.runs().get(0).endMin());
  }

  @Test
  void aMoldOnAnotherPressIsTakenOffFirst() {
    Timetable done =
        carryOut(
            plant().job(work("1").on("P1", "M1", 100)).job(work("2").on("P2", "M1", 50)).build(),
            new int[] {0},
            new int[] {1});
    int off = START + MOUNT + 100;
    assertThat(done.dismounts())
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.press()).isEqualTo("P1");
              assertThat(d.startMin()).isEqualTo(off);
              assertThat(d.endMin()).isEqualTo(off + 24);
            });
    Run second = done.runs().get(1);
    assertThat(second.change().startMin()).isEqualTo(off + 24);
    assertThat(second.waits()).containsExactly(new Wait(Cause.MOLD, "M1", START, off + 24));
  }

  @Test
  void aMoldThatTheNextChangeTakesOffIsFreeAfterItsDismount() {
    Timetable done =
        carryOut(
            plant()
                .job(work("1").on("P1", "M1", 100))
                .job(work("2").on("P1", "M2", 500))
                .job(work("3").on("P2", "M1", 50))
                .build(),
            new int[] {0, 1},
            new int[] {2});
    int change = START + MOUNT + 100;
    assertThat(done.dismounts()).isEmpty();
    assertThat(done.runs().get(2).change().startMin()).isEqualTo(change + 24);
  }

  @Test
  void aRunPausesOverAClosedShift() {
    Problem problem =
        plant()
            .shifts(SmallPlant.shift("day", "06:00", "14:00"))
            .job(work("1").on("P1", "M1", 480))
            .build();
    Run run = carryOut(problem, new int[] {0}, new int[] {}).runs().get(0);
    assertThat(run.change().startMin()).isEqualTo(START + 360);
    assertThat(run.startMin()).isEqualTo(START + 360 + MOUNT);
    assertThat(run.endMin()).isEqualTo(START + DAY + 360 + MOUNT);
    assertThat(run.waits()).containsExactly(new Wait(Cause.SHIFT, "", START, START + 360));
  }

  @Test
  void aChangeDoesNotSpanAGapUnlessThePlantSaysSo() {
    SmallPlant day = plant().shifts(SmallPlant.shift("day", "00:00", "02:00"));
    day.job(work("1").on("P1", "M1", 60)).job(work("2").on("P1", "M2", 10));
    int firstEnd = START + MOUNT + 60;
    Run strict = carryOut(day.build(), new int[] {0, 1}, new int[] {}).runs().get(1);
    assertThat(strict.change().startMin()).isEqualTo(START + DAY);
    day.crew(new Crew(false, false, 80, true, 30));
    Run spanning = carryOut(day.build(), new int[] {0, 1}, new int[] {}).runs().get(1);
    assertThat(spanning.change().startMin()).isEqualTo(firstEnd);
    assertThat(spanning.startMin()).isEqualTo(START + DAY + 70 - (120 - MOUNT - 60));
  }

  @Test
  void oneSetterDoesOneChangeAndHisShareOfOtherWork() {
    Problem problem =
        plant()
            .shifts(
                new pressweek.data.problem.Shift(
                    "all",
                    java.util.EnumSet.allOf(java.time.DayOfWeek.class),
                    java.time.LocalTime.MIDNIGHT,
                    java.time.LocalTime.MIDNIGHT,
                    List.of(),
                    1,
                    4_000,
                    java.util.OptionalInt.empty()))
            .crew(new Crew(true, false, 80, false, 30))
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M2", 100))
            .build();
    Run second = carryOut(problem, new int[] {0}, new int[] {1}).runs().get(1);
    int free = START + MOUNT + 12;
    assertThat(second.change().startMin()).isEqualTo(free);
    assertThat(second.waits()).containsExactly(new Wait(Cause.SETTER, "", START, free));
  }

  @Test
  void operatorsAreReservedForTheWholeRun() {
    SmallPlant plant = plant().crew(new Crew(false, true, 80, false, 30));
    plant.job(work("1").operators(2_500).on("P1", "M1", 100));
    plant.job(work("2").operators(1_500).on("P2", "M2", 100));
    Timetable fits = carryOut(plant.build(), new int[] {0}, new int[] {1});
    assertThat(fits.runs().get(1).startMin()).isEqualTo(START + MOUNT);
    SmallPlant over = plant().crew(new Crew(false, true, 80, false, 30));
    over.job(work("1").operators(2_500).on("P1", "M1", 100));
    over.job(work("2").operators(1_501).on("P2", "M2", 100));
    Timetable waits = carryOut(over.build(), new int[] {0}, new int[] {1});
    assertThat(waits.runs().get(1).startMin()).isEqualTo(START + MOUNT + 100);
    assertThat(waits.runs().get(1).waits()).extracting(Wait::cause).containsOnly(Cause.OPERATOR);
  }

  @Test
  void insertsFromAReceiptHoldTheRunUntilTheyAreThere() {
    Lot lot =
        new Lot("I1", "L1", "B1", 400, START - 100, OptionalInt.empty(), LotStatus.USABLE, "");
    int usable = START + 600;
    Problem problem =
        plant()
            .stock(List.of(lot), List.of(new Receipt("I1", 100, START + 500, usable)))
            .job(work("1").takes(new Take("I1", 400, 0, 0)).on("P1", "M1", 100))
            .job(work("2").takes(new Take("I1", 100, 0, 0)).on("P2", "M2", 100))
            .build();
    Timetable done = carryOut(problem, new int[] {0}, new int[] {1});
    assertThat(done.runs().get(0).startMin()).isEqualTo(START + MOUNT);
    assertThat(done.runs().get(1).startMin()).isEqualTo(usable + 30);
    assertThat(done.runs().get(1).waits())
        .containsExactly(new Wait(Cause.INSERTS, "I1", START, usable + 30 - MOUNT));
  }

  @Test
  void onePieceTooFewLeavesTheLineOut() {
    Lot lot =
        new Lot("I1", "L1", "B1", 399, START - 100, OptionalInt.empty(), LotStatus.USABLE, "");
    Problem problem =
        plant()
            .stock(List.of(lot), List.of())
            .job(work("1").takes(new Take("I1", 400, 0, 0)).on("P1", "M1", 100))
            .build();
    Timetable done = carryOut(problem, new int[] {0}, new int[] {});
    assertThat(done.runs()).isEmpty();
    assertThat(done.unplaced())
        .singleElement()
        .satisfies(u -> assertThat(u.reason()).contains("I1"));
  }

  @Test
  void aMoldInRepairIsNotUsed() {
    Problem problem =
        plant()
            .away(new Downtime(Downtime.Kind.MOLD, "M1", START + 100, START + 500, "repair"))
            .job(work("1").on("P1", "M1", 54))
            .job(work("2").on("P2", "M1", 55))
            .build();
    Timetable before = carryOut(problem, new int[] {0}, new int[] {});
    assertThat(before.runs().get(0).endMin()).isEqualTo(START + 100);
    Timetable after = carryOut(problem, new int[] {}, new int[] {1});
    assertThat(after.runs().get(0).change().startMin()).isEqualTo(START + 500);
    assertThat(after.runs().get(0).waits())
        .containsExactly(new Wait(Cause.MOLD_AWAY, "M1", START, START + 500));
  }

  @Test
  void aFoodCampaignIsClearedOnce() {
    Problem problem =
        plant()
            .job(work("1").food().on("P1", "M1", 100))
            .job(work("2").food().on("P1", "M1", 100))
            .job(work("3").on("P1", "M1", 100))
            .job(work("4").food().on("P1", "M1", 100))
            .build();
    List<Run> runs = carryOut(problem, new int[] {0, 1, 2, 3}, new int[] {}).runs();
    assertThat(runs.get(0).change().kinds())
        .containsExactly(ChangeKind.MOLD, ChangeKind.FOOD_CLEARANCE);
    assertThat(runs.get(0).change().minutes()).isEqualTo(MOUNT + 30);
    assertThat(runs.get(1).change().kinds()).isEmpty();
    assertThat(runs.get(2).change().kinds()).isEmpty();
    assertThat(runs.get(3).change().kinds()).containsExactly(ChangeKind.FOOD_CLEARANCE);
    assertThat(runs.get(3).change().minutes()).isEqualTo(30);
  }

  @Test
  void forbiddenNeighboursAreNotPlanned() {
    pressweek.data.problem.Resin pom = SmallPlant.resin("POM", 205);
    pressweek.data.problem.Resin never =
        new pressweek.data.problem.Resin(
            pom.id(),
            pom.grade(),
            pom.densityGCm3(),
            pom.meltC(),
            pom.cavityKnCm2(),
            pom.pricePerKg(),
            pom.barrel(),
            List.of("ABS"));
    Problem problem =
        plant()
            .resin(never)
            .job(work("1").in("ABS", "BLK").on("P1", "M1", 100))
            .job(work("2").in("POM", "BLK").on("P1", "M1", 100))
            .job(work("3").in("PP", "BLK").on("P1", "M1", 100))
            .build();
    assertThat(carryOut(problem, new int[] {0, 1, 2}, new int[] {}).runs())
        .extracting(Run::job)
        .containsExactly("1/1", "3/1");
    assertThat(carryOut(problem, new int[] {0, 2, 1}, new int[] {}).runs()).hasSize(3);
  }

  @Test
  void whatIsRunningGoesOnWithoutAChange() {
    Problem problem =
        plant()
            .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, "1/1"))
            .job(work("1").earliest(START + 9_000).on("P1", "M1", 100))
            .build();
    Run run = carryOut(problem, new int[] {0}, new int[] {}).runs().get(0);
    assertThat(run.startMin()).isEqualTo(START);
    assertThat(run.change().kinds()).isEmpty();
  }

  @Test
  void aPromisedRunStartsAsPromisedAndItsMoldIsKeptForIt() {
    Problem problem =
        plant()
            .promise(new Promise("1/1", "P1", START + 600))
            .job(work("1").on("P1", "M1", 100))
            .job(work("2").on("P2", "M1", 500))
            .job(work("3").on("P2", "M2", 500))
            .build();
    Timetable done = carryOut(problem, new int[] {0}, new int[] {1, 2});
    assertThat(done.runs().get(0).startMin()).isEqualTo(START + 600);
    assertThat(done.runs().get(1).change().startMin()).isGreaterThanOrEqualTo(START + 700);
    assertThat(done.runs().get(1).waits()).extracting(Wait::cause).contains(Cause.PROMISED);
  }

  @Test
  void thePassOfTheSearchAndTheLedgerAgree() {
    for (long seed = 1; seed <= 20; seed++) {
      Problem problem = pressweek.solver.RandomPlant.of(seed, 40, 6).build();
      WeekTables week = new WeekTables(problem);
      Sequences sequences = new Dispatch(week).atcs(1, 0.3);
      long cost = TimingPass.full(week).run(sequences);
      assertThat(Timetable.of(week, sequences).figures().avoidableCost()).isEqualTo(cost);
    }
  }

  private static SmallPlant plant() {
    return new SmallPlant();
  }

  private static JobBuilder work(String order) {
    return job(order).due(START + 5 * DAY);
  }

  private static Run only(SmallPlant plant, String press) {
    Timetable done = carryOut(plant.build(), new int[] {0}, new int[] {});
    assertThat(done.runs()).singleElement().satisfies(r -> assertThat(r.press()).isEqualTo(press));
    return done.runs().get(0);
  }

  private static Timetable carryOut(Problem problem, int[]... queues) {
    WeekTables week = new WeekTables(problem);
    Sequences sequences = new Sequences(week.pressCount(), week.jobCount());
    for (int p = 0; p < queues.length; p++) {
      for (int job : queues[p]) {
        sequences.add(p, job);
      }
    }
    return Timetable.of(week, sequences);
  }
}
