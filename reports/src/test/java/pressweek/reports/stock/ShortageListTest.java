package pressweek.reports.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Insert;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Unplaced;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Listing;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.sample.Stocked;
import pressweek.reports.schedule.PlanBook;

/** Jobs of the sample take 500 of insert S0825. */
class ShortageListTest {
  private static final String MONDAY = "2026-11-30T";
  private static final String TUESDAY = "2026-12-01T";
  private static final Insert STUD =
      SampleWeek.insert("S0825", "stud", "M8x1.25", 25, "A2-70", "", "none");

  /** R1 takes 500 at 07:30; R2 waits from 12:00 on and takes 500 on Tuesday at 07:30. */
  private static SmallPlan twoRuns() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "22:00")
            .job("4712", "V1", TUESDAY + "22:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00")
            .run("R2", "4712", "V1", TUESDAY + "08:00", TUESDAY + "12:00")
            .because(
                List.of(
                    new Wait(
                        Cause.INSERTS,
                        "S0825",
                        SampleWeek.at(MONDAY + "12:00"),
                        SampleWeek.at(TUESDAY + "08:00"))),
                List.of());
    plan.pulls.add(Stocked.pull("R1", MONDAY + "07:30", "S0825", "L1", 500));
    plan.pulls.add(Stocked.pull("R2", TUESDAY + "07:30", "S0825", "L1", 100));
    plan.pulls.add(Stocked.pull("R2", TUESDAY + "07:30", "S0825", TUESDAY + "07:00", 400));
    return plan;
  }

  private static Stocked stock() {
    return new Stocked()
        .lot("S0825", "L1", 600)
        .lot("S0825", "L2", 70, LotStatus.HELD, OptionalInt.empty())
        .receipt("S0825", 300, MONDAY + "18:00")
        .receipt("S0825", 900, TUESDAY + "07:00");
  }

  private static List<String> rows(SmallPlan plan) {
    Listing list = ShortageList.of(PlanBook.of(plan.plan()));
    List<String> rows = new ArrayList<>();
    for (List<Cell> row : list.rows()) {
      rows.add(String.join("; ", row.stream().map(ShortageListTest::text).toList()));
    }
    return rows;
  }

  private static String text(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return text.text();
    }
    if (cell instanceof Cell.Texts texts) {
      return String.join("|", texts.texts());
    }
    if (cell instanceof Cell.Number number) {
      return number.value().toPlainString();
    }
    return ((Cell.Time) cell).at().toLocalDateTime().toString();
  }

  @Test
  void aRunThatWaitsIsListedWithTheReceiptThatCuresIt() {
    SmallPlan plan = twoRuns();
    stock().to(plan, STUD);
    // 1000 wanted from Monday noon on, 600 there; with 300 more it is still 100 too few
    assertThat(rows(plan))
        .containsExactly(
            "S0825; insert; stud, M8x1.25, 25 mm, A2-70; 2026-11-30T12:00; 400; pcs; R2; ;"
                + " 2026-12-01T07:00; 900; 0; 70; ");
  }

  @Test
  void aLineThatIsUnplacedForWantOfItIsListedWithWhatToOrder() {
    SmallPlan plan = twoRuns().job("4713", "V1", "2026-12-02T22:00");
    plan.unplaced.add(
        new Unplaced("4713", "1", "ITEM", 500, "it is not there", "more", Optional.of("S0825")));
    new Stocked().lot("S0825", "L1", 600).receipt("S0825", 400, TUESDAY + "07:00").to(plan, STUD);
    assertThat(rows(plan))
        .singleElement()
        .asString()
        .contains("; R2; 4713/1; 2026-12-01T07:00; 400; ")
        .endsWith("; 0; ");
    long toOrder = Shortages.of(PlanBook.of(plan.plan())).get(0).supply().toOrder();
    assertThat(toOrder)
        .isEqualTo(
            plan.jobs.get(2).options().get(0).making().takes().stream()
                .mapToLong(t -> t.pieces() + t.startupPieces())
                .sum());
  }

  @Test
  void alternativesMeetTheSameRequirementAndAreFree() {
    SmallPlan plan = twoRuns();
    stock()
        .lot("ALIKE", "L1", 800)
        .lot("TAKEN", "L1", 500)
        .lot("ZINC", "L1", 800)
        .lot("LONGER", "L1", 800)
        .lot("A4", "L1", 800)
        .to(
            plan,
            STUD,
            SampleWeek.insert("ALIKE", "stud", "M8-1.25", 25, "304", "", "none"),
            SampleWeek.insert("TAKEN", "stud", "M8", 25, "A2", "", "none"),
            SampleWeek.insert("ZINC", "stud", "M8", 25, "A2", "zinc", "none"),
            SampleWeek.insert("LONGER", "stud", "M8", 30, "A2", "", "none"),
            SampleWeek.insert("A4", "stud", "M8", 25, "A4", "", "none"));
    plan.pulls.add(Stocked.pull("R2", TUESDAY + "07:30", "TAKEN", "L1", 500));
    assertThat(rows(plan).get(0)).endsWith("; ALIKE (800 free)");
  }

  @Test
  void nothingIsListedWhenNothingIsMissed() {
    assertThat(rows(new SmallPlan())).isEmpty();
  }
}
