package pressweek.solver.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Component;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/**
 * Runs of the lines 1, 2 and so on, each on its own press in its own mold, 36 min after the start
 * of the plan at the earliest (60 % of 60 min to mount); components are needed 30 min ahead.
 */
class ComponentStockTest {
  private static final int MOUNTED = START + 36 + 10;

  private static Lot lot(String what, int pieces, int... expires) {
    OptionalInt at = expires.length == 0 ? OptionalInt.empty() : OptionalInt.of(expires[0]);
    return new Lot(what, "L" + pieces, "B1", pieces, 0, at, LotStatus.USABLE, "");
  }

  private static JobBuilder work(int number, Component kind, String what, int pieces) {
    Take take = new Take(kind, what, pieces, 0, 0);
    return job("" + number).takes(take).on("P" + number, "M" + number, 100);
  }

  private static Timetable carryOut(Problem problem) {
    WeekTables week = new WeekTables(problem);
    Sequences sequences = new Sequences(2, week.jobCount());
    for (int j = 0; j < week.jobCount(); j++) {
      sequences.add(j, j);
    }
    return Timetable.of(week, sequences);
  }

  @Test
  void aCartonHoldsUpARunUntilItsDelivery() {
    Problem problem =
        new SmallPlant()
            .stock(List.of(lot("C1", 10)), List.of(new Receipt("C1", 5, START + 300, START + 420)))
            .job(work(1, Component.CARTON, "C1", 8))
            .job(work(2, Component.CARTON, "C1", 7))
            .build();
    Timetable done = carryOut(problem);
    assertThat(done.runs().get(0).startMin()).isEqualTo(MOUNTED);
    assertThat(done.runs().get(1).startMin()).isEqualTo(START + 450);
    assertThat(done.runs().get(1).waits())
        .containsExactly(new Wait(Cause.INSERTS, "C1", START, START + 450 - 46));
  }

  @Test
  void aLineThatLacksACartonSaysSo() {
    Problem problem =
        new SmallPlant()
            .stock(List.of(lot("C1", 10)), List.of())
            .job(work(1, Component.CARTON, "C1", 11))
            .build();
    assertThat(carryOut(problem).unplaced())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.reason()).isEqualTo("carton C1 is not in the house in time");
              assertThat(line.lacks()).hasValue("C1");
            });
  }

  @Test
  void whatTheStoreDoesNotListIsNotCounted() {
    Problem problem =
        new SmallPlant()
            .stock(List.of(lot("C2", 1)), List.of())
            .job(work(1, Component.CARTON, "C1", 8))
            .build();
    assertThat(carryOut(problem).runs()).hasSize(1);
  }

  @Test
  void aLotThatExpiresServesWhoeverStartsBefore() {
    SmallPlant plant =
        new SmallPlant()
            .job(work(1, Component.TIP, "T1", 100))
            .job(work(2, Component.TIP, "T1", 100));
    Problem enough =
        plant.stock(List.of(lot("T1", 150, MOUNTED + 1), lot("T1", 50)), List.of()).build();
    assertThat(carryOut(enough).runs()).hasSize(2);
    Problem expired =
        plant.stock(List.of(lot("T1", 150, MOUNTED), lot("T1", 50)), List.of()).build();
    assertThat(carryOut(expired).runs()).isEmpty();
    Problem half = plant.stock(List.of(lot("T1", 150, MOUNTED), lot("T1", 120)), List.of()).build();
    assertThat(carryOut(half).runs()).hasSize(1);
  }

  @Test
  void whatExpiresMayBeFollowedByADelivery() {
    Problem problem =
        new SmallPlant()
            .stock(
                List.of(lot("T1", 150, MOUNTED)),
                List.of(new Receipt("T1", 100, START + 300, START + 420)))
            .job(work(1, Component.TIP, "T1", 100))
            .build();
    assertThat(carryOut(problem).runs().get(0).startMin()).isEqualTo(START + 450);
  }

  @Test
  void aRunTracedThroughItsLotLeavesWhatDoesNotSuffice() {
    SmallPlant plant =
        new SmallPlant()
            .stock(List.of(lot("T1", 40, MOUNTED + 1), lot("T1", 100)), List.of())
            .job(work(1, Component.TIP, "T1", 100).food())
            .job(work(2, Component.TIP, "T1", 40));
    assertThat(carryOut(plant.build()).runs()).hasSize(2);
    Problem other =
        new SmallPlant()
            .stock(List.of(lot("T1", 40, MOUNTED + 1), lot("T1", 100)), List.of())
            .job(work(1, Component.TIP, "T1", 100).food())
            .job(work(2, Component.TIP, "T1", 41))
            .build();
    assertThat(carryOut(other).runs()).hasSize(1);
  }

  @Test
  void whatCannotRunShortIsNotFollowed() {
    Problem problem =
        new SmallPlant()
            .stock(List.of(lot("C1", 15), lot("T1", 99), lot("T1", 900, START + 9000)), List.of())
            .job(work(1, Component.CARTON, "C1", 8))
            .job(work(2, Component.CARTON, "C1", 7))
            .job(job("3").takes(take("T1", 50)).on("P1", "M1", 10))
            .job(job("4").takes(take("T1", 50)).on("P1", "M1", 10))
            .build();
    StockTable table = new StockTable(problem);
    assertThat(table.size()).isEqualTo(1);
    assertThat(table.name(0)).isEqualTo("T1");
    assertThat(table.expires(0)).isTrue();
  }

  private static Take take(String what, int pieces) {
    return new Take(Component.TIP, what, pieces, 0, 0);
  }
}
