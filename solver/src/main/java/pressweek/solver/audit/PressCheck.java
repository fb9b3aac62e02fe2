package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;

/** PRESS_ONCE: a press does one thing at a time and its runs are numbered in order. */
final class PressCheck {
  private PressCheck() {}

  private record Doing(Span span, String subject, String words) {}

  static void check(Week week, Findings findings) {
    for (PressWalk walk : week.walks()) {
      overlaps(walk, week.clock(), findings);
      for (Step step : walk.steps()) {
        if (step.run().seq() != step.place()) {
          findings.add(
              Rule.PRESS_ONCE,
              step.run(),
              "has place %d; by time it has place %d".formatted(step.run().seq(), step.place()));
        }
      }
    }
  }

  private static void overlaps(PressWalk walk, Clock clock, Findings findings) {
    List<Doing> doings = new ArrayList<>();
    for (Step step : walk.steps()) {
      String id = step.run().id();
      String words = Words.of(step.run());
      doings.add(new Doing(step.changeSpan(), id, "the change before " + words));
      doings.add(new Doing(step.runSpan(), id, words));
    }
    for (Dismount off : walk.dismounts()) {
      doings.add(new Doing(new Span(off.startMin(), off.endMin()), off.press(), Words.of(off)));
    }
    List<Doing> inOrder =
        doings.stream()
            .filter(doing -> doing.span().toMin() >= doing.span().fromMin())
            .sorted(
                Comparator.comparing(
                    Doing::span,
                    Comparator.comparingLong(Span::fromMin).thenComparingLong(Span::toMin)))
            .toList();
    for (int i = 1, last = 0; i < inOrder.size(); i++) {
      Doing before = inOrder.get(last);
      Doing doing = inOrder.get(i);
      long from = doing.span().fromMin();
      if (from < before.span().toMin()) {
        findings.add(
            Rule.PRESS_ONCE,
            doing.subject(),
            "%s starts %s, %s ends only %s"
                .formatted(
                    doing.words(),
                    clock.text(from),
                    before.words(),
                    clock.text(before.span().toMin(), from)));
      }
      if (doing.span().toMin() >= before.span().toMin()) {
        last = i;
      }
    }
  }
}
