package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CompareTextTest {
  @Test
  void sentencesComeFirstAndTheTableFits() {
    String text = CompareText.of(SampleTried.sample(), List.of("out/compare.html"));

    assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    assertThat(text)
        .startsWith("As it stands: 2 of 4 order lines on time, avoidable cost EUR 118.\n")
        .contains("avoidable cost, EUR                 117.50       77.50      118.50\n")
        .contains("once in 10 times")
        .endsWith("Written\n  out/compare.html\n");
  }

  @Test
  void moreScenariosThanFitGoOnInAnotherTable() {
    Tried one = SampleTried.tried("One", true, 5_000_000, 5_000_000, 5_000_000);
    Tried two = SampleTried.tried("Two", true, 5_000_000, 5_000_000, 5_000_000);
    Tried three = SampleTried.tried("Three", true, 5_000_000, 5_000_000, 5_000_000);
    Tried four = SampleTried.tried("Four", true, 5_000_000, 5_000_000, 5_000_000);
    String text = CompareText.of(SampleTried.beside(one, two, three, four), List.of());

    assertThat(text.lines().filter(l -> l.contains("As it stan\u2026"))).hasSize(2);
    assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void aRejectedPlanIsSaid() {
    assertThat(CompareText.of(SampleTried.broken(), List.of()))
        .contains("Impossible: the audit rejected 1 plan, not shown.")
        .doesNotContain("67.50");
  }
}
