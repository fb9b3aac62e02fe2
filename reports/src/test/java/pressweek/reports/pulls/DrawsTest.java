package pressweek.reports.pulls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Stock;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class DrawsTest {
  private static final String MONDAY = "2026-11-30T";

  private static List<PullRow> rows(SmallPlan plan) {
    return PullReport.rows(PlanBook.of(plan.plan()));
  }

  private static SmallPlan inBin(Bringing bringing) {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "22:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00");
    plan.materials =
        new Materials(
            List.of(),
            List.of(),
            plan.materials.inserts(),
            new Stock(
                true,
                List.of(
                    new Lot(
                        "S0825", "L1", "A-3", 1_000, 0, OptionalInt.empty(), LotStatus.USABLE, "")),
                List.of()));
    plan.kitting =
        new Kitting(
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), bringing);
    return take(plan, "R1", "07:30", 400);
  }

  private static SmallPlan take(SmallPlan plan, String run, String time, int pieces) {
    plan.pulls.add(
        new Pull(run, "V1", SampleWeek.at(MONDAY + time), "S0825", "L1", "A-3", 0, pieces));
    return plan;
  }

  @Test
  void partOfABinIsSaidWithWhatIsInIt() {
    SmallPlan plan = take(inBin(Bringing.BY_PIECES), "R1", "07:31", 600);
    assertThat(rows(plan).get(0).draw())
        .isEqualTo(new Draw(Optional.of(1_000), 400, 0, "takes 400 of 1,000 in bin A-3"));
    assertThat(rows(plan).get(1).draw())
        .isEqualTo(new Draw(Optional.of(600), 600, 0, "takes all 600 in bin A-3"));
  }

  @Test
  void wholeBinsAndCartonsSayWhatComesBack() {
    SmallPlan bins = inBin(new Bringing(Bringing.By.BINS, 1));
    assertThat(rows(bins).get(0).draw())
        .isEqualTo(
            new Draw(
                Optional.of(1_000),
                1_000,
                600,
                "takes 400 of 1,000 in bin A-3; bring 1,000, at least 600 come back"));
    SmallPlan cartons = inBin(new Bringing(Bringing.By.CARTONS, 250));
    assertThat(rows(cartons).get(0).draw().bring()).isEqualTo(500);
    assertThat(rows(cartons).get(0).draw().back()).isEqualTo(100);
  }

  @Test
  void restStaysInTheBinWhileAnotherRunNeedsIt() {
    SmallPlan plan = take(inBin(new Bringing(Bringing.By.BINS, 1)), "R2", "11:59", 100);
    assertThat(rows(plan).get(0).draw().bring()).isEqualTo(400);
    SmallPlan later = take(inBin(new Bringing(Bringing.By.BINS, 1)), "R2", "12:00", 100);
    assertThat(rows(later).get(0).draw().bring()).isEqualTo(1_000);
  }
}
