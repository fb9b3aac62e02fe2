package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class LineMoveTest {
  private static PlanBook book(boolean late) {
    return PlanBook.of(SampleTried.plan(0, late).plan());
  }

  @Test
  void aLineThatComesToBeOnTimeIsBetter() {
    assertThat(LineMove.between(book(true), book(false)))
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.line()).isEqualTo("5002/1");
              assertThat(m.better()).isTrue();
              assertThat(m.before().words()).isEqualTo("6 h 8 min late");
              assertThat(m.after().words()).isEqualTo("on time");
            });
    assertThat(LineMove.between(book(false), book(true))).noneMatch(LineMove::better);
  }

  @Test
  void linesThatStandAsTheyDidAreLeftOut() {
    assertThat(LineMove.between(book(true), book(true))).isEmpty();
  }

  @Test
  void aLineThatIsNotOrderedAnyMoreIsSaid() {
    SmallPlan fewer = SampleTried.plan(0, true);
    fewer.jobs.remove(2);
    fewer.runs.remove(2);

    assertThat(LineMove.between(book(true), PlanBook.of(fewer.plan())))
        .singleElement()
        .satisfies(m -> assertThat(m.after().words()).isEqualTo("not ordered"));
  }
}
