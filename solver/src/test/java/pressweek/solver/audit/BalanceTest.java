package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BalanceTest {
  @Test
  void shortOnlyWhereMoreIsTakenThanIsThere() {
    Balance setters = new Balance();
    setters.add(new Span(0, 100), 2);
    setters.take(new Span(10, 30), 1);
    setters.take(new Span(20, 40), 1);
    assertThat(setters.lessThan(0)).isEmpty();
    setters.take(new Span(25, 26), 1);
    assertThat(setters.lessThan(0)).containsExactly(new Balance.Shortage(new Span(25, 26), 2, 3));
  }

  @Test
  void nothingIsThereBeforeAndAfter() {
    Balance operators = new Balance();
    operators.add(new Span(0, 100), 500);
    assertThat(operators.lessThan(500))
        .extracting(Balance.Shortage::span)
        .containsExactly(new Span(Long.MIN_VALUE, 0), new Span(100, Long.MAX_VALUE));
  }
}
