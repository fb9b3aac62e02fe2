package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Component;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/** Which lots a run takes; its press and mold are those of {@link SmallPlant}. */
class PullingTest {
  private static Lot lot(String id, int pieces, int... expires) {
    OptionalInt at = expires.length == 0 ? OptionalInt.empty() : OptionalInt.of(expires[0]);
    return new Lot("I1", id, "B" + id, pieces, 0, at, LotStatus.USABLE, "");
  }

  private static List<String> lots(JobBuilder job, Lot... lots) {
    Receipt receipt = new Receipt("I1", 60, START - 200, START - 100);
    SmallPlant plant = new SmallPlant().stock(List.of(lots), List.of(receipt)).job(job);
    return Plans.of(plant.build(), 1, 1).pulls().stream().map(PullingTest::words).toList();
  }

  private static String words(Pull pull) {
    return (pull.lot().isEmpty() ? "receipt" : pull.lot()) + " " + pull.pieces();
  }

  private static JobBuilder needs(int pieces) {
    return job("1").takes(new Take("I1", pieces, 0, 0)).on("P1", "M1", 60);
  }

  private static JobBuilder traced(int pieces) {
    return job("1").food().takes(new Take("I1", pieces, 0, 0)).on("P1", "M1", 60);
  }

  @Test
  void firstExpiredGoesFirst() {
    assertThat(lots(needs(50), lot("A", 70), lot("B", 30, START + 90_000)))
        .containsExactly("B 30", "A 20");
    assertThat(lots(needs(50), lot("A", 70), lot("B", 30, START + 500)))
        .containsExactly("B 30", "A 20");
    assertThat(lots(needs(50), lot("A", 70), lot("B", 30, START + 10))).containsExactly("A 50");
  }

  @Test
  void aTracedRunTakesOneLotThatSuffices() {
    assertThat(lots(traced(50), lot("A", 70), lot("B", 30, START + 90_000)))
        .containsExactly("A 50");
    assertThat(lots(traced(30), lot("A", 70), lot("B", 30, START + 90_000)))
        .containsExactly("B 30");
    assertThat(lots(traced(60), lot("A", 59), lot("B", 30))).containsExactly("receipt 60");
  }

  @Test
  void aTracedRunThatNeedsSeveralLotsTakesThemInOrder() {
    assertThat(lots(traced(90), lot("A", 70), lot("B", 30, START + 90_000)))
        .containsExactly("B 30", "A 60");
  }

  @Test
  void whatIsNotCountedIsBroughtAllTheSame() {
    JobBuilder job =
        job("1")
            .takes(new Take("I1", 10, 0, 0), new Take(Component.CARTON, "C1", 4, 0, 0))
            .on("P1", "M1", 60);
    SmallPlant plant = new SmallPlant().stock(List.of(lot("A", 70)), List.of()).job(job);
    assertThat(Plans.of(plant.build(), 1, 1).pulls())
        .extracting(pull -> pull.insert() + " " + pull.pieces() + " " + pull.lot())
        .containsExactly("I1 10 A", "C1 4 ");
  }
}
