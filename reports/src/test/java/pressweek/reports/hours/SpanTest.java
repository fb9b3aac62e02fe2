package pressweek.reports.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpanTest {
  @Test
  void spansThatTouchAreJoined() {
    assertThat(Span.union(List.of(new Span(10, 20), new Span(0, 10), new Span(30, 40))))
        .containsExactly(new Span(0, 20), new Span(30, 40));
  }

  @Test
  void spanWithinAnotherDoesNotShortenIt() {
    assertThat(Span.union(List.of(new Span(0, 100), new Span(20, 30))))
        .containsExactly(new Span(0, 100));
  }

  @Test
  void whatIsTakenAwayCutsASpanInTwo() {
    assertThat(Span.without(List.of(new Span(0, 100)), List.of(new Span(40, 60))))
        .containsExactly(new Span(0, 40), new Span(60, 100));
  }

  @Test
  void whatLiesElsewhereTakesNothingAway() {
    assertThat(Span.without(List.of(new Span(0, 10)), List.of(new Span(10, 20))))
        .containsExactly(new Span(0, 10));
  }

  @Test
  void whatCoversASpanLeavesNothing() {
    assertThat(Span.without(List.of(new Span(5, 10)), List.of(new Span(0, 20)))).isEmpty();
  }

  @Test
  void endIsNotPartOfASpan() {
    Span span = new Span(5, 10);
    assertThat(span.contains(5)).isTrue();
    assertThat(span.contains(10)).isFalse();
    assertThat(span.overlaps(new Span(10, 12))).isFalse();
  }
}
