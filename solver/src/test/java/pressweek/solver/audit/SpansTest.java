package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class SpansTest {
  private static final Spans TWO =
      Spans.union(List.of(new Span(30, 40), new Span(10, 15), new Span(15, 20), new Span(7, 7)));

  @Test
  void spansThatTouchBecomeOne() {
    assertThat(TWO.covers(new Span(10, 20))).isTrue();
    assertThat(TWO.covers(new Span(10, 21))).isFalse();
    assertThat(TWO.covers(new Span(19, 31))).isFalse();
  }

  @Test
  void minutesCountOnlyWhatIsInside() {
    assertThat(TWO.minutes(new Span(0, 100))).isEqualTo(20);
    assertThat(TWO.minutes(new Span(18, 33))).isEqualTo(5);
    assertThat(TWO.minutes(new Span(20, 30))).isZero();
    assertThat(TWO.minutes(new Span(33, 18))).isZero();
  }

  @Test
  void theEndOfASpanIsOutsideIt() {
    assertThat(TWO.contains(9)).isFalse();
    assertThat(TWO.contains(10)).isTrue();
    assertThat(TWO.contains(19)).isTrue();
    assertThat(TWO.contains(20)).isFalse();
  }

  @Test
  void workEndsAtTheEndOfASpanBeforeItGoesOnInTheNext() {
    assertThat(TWO.end(12, 8)).hasValue(20);
    assertThat(TWO.end(12, 9)).hasValue(31);
    assertThat(TWO.end(20, 3)).hasValue(33);
    assertThat(TWO.end(12, 0)).hasValue(12);
    assertThat(TWO.end(12, 19)).isEqualTo(OptionalLong.empty());
  }

  @Test
  void partsAreCutAtBothEnds() {
    assertThat(TWO.within(new Span(12, 35))).containsExactly(new Span(12, 20), new Span(30, 35));
    assertThat(TWO.within(new Span(20, 30))).isEmpty();
    assertThat(TWO.within(new Span(35, 12))).isEmpty();
  }

  @Test
  void theNextMinuteIsInsideASpan() {
    assertThat(TWO.next(0)).hasValue(10);
    assertThat(TWO.next(12)).hasValue(12);
    assertThat(TWO.next(20)).hasValue(30);
    assertThat(TWO.next(40)).isEmpty();
  }

  @Test
  void whatIsTakenOutLeavesHoles() {
    Spans rest = TWO.minus(Spans.union(List.of(new Span(12, 14), new Span(18, 32))));
    assertThat(rest.minutes(new Span(0, 100))).isEqualTo(14);
    assertThat(rest.contains(13)).isFalse();
    assertThat(rest.covers(new Span(14, 18))).isTrue();
    assertThat(rest.next(18)).hasValue(32);
  }
}
