package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Crew;

/**
 * SETTERS: no more changes and dismounts at once than setters, and none without one in the house.
 */
final class SetterCheck {
  private SetterCheck() {}

  static void check(Week week, Findings findings) {
    Crew crew = week.problem().plant().crew();
    if (!crew.settersChecked()) {
      return;
    }
    Balance setters = new Balance();
    week.shifts().forEach(shift -> setters.add(shift.span(), shift.shift().setters()));
    week.problem()
        .arranged()
        .trials()
        .forEach(trial -> setters.add(new Span(trial.fromMin(), trial.toMin()), -trial.setters()));
    List<Work> works = works(week);
    for (Work work : works) {
      taken(week, work, crew.setterSharePct()).forEach(span -> setters.take(span, 1));
    }
    for (Work.Overload overload : Work.overloads(works, setters.lessThan(0))) {
      Work last = overload.last();
      findings.add(
          Rule.SETTERS,
          last.subject(),
          "%s starts %s; at %s it is one of %d that take a setter, there are %d"
              .formatted(
                  last.words(),
                  week.clock().text(last.span().fromMin()),
                  week.clock().text(overload.shortage().span().fromMin(), last.span().fromMin()),
                  overload.shortage().taken(),
                  Math.max(0, overload.shortage().there())));
    }
    if (!crew.changeMaySpanGap()) {
      house(week, works, findings);
    }
  }

  private static void house(Week week, List<Work> works, Findings findings) {
    Spans staffed =
        Spans.union(
            week.shifts().stream()
                .filter(shift -> shift.shift().setters() > 0)
                .map(ShiftTime::span)
                .toList());
    for (Work work : works) {
      if (!staffed.covers(work.span())) {
        findings.add(
            Rule.SETTERS,
            work.subject(),
            "%s from %s to %s is not within shifts that have a setter"
                .formatted(
                    work.words(),
                    week.clock().text(work.span().fromMin()),
                    week.clock().text(work.span().toMin(), work.span().fromMin())));
      }
    }
  }

  private static List<Work> works(Week week) {
    List<Work> works = new ArrayList<>();
    for (PressWalk walk : week.walks()) {
      Spans working = walk.time().working();
      for (Step step : walk.steps()) {
        if (step.run().change().minutes() > 0 && !step.changeSpan().isEmpty()) {
          String words = "the change before " + Words.of(step.run());
          works.add(new Work(step.changeSpan(), working, step.run().id(), words));
        }
      }
      for (Dismount off : walk.dismounts()) {
        Span span = new Span(off.startMin(), off.endMin());
        if (off.minutes() > 0 && !span.isEmpty()) {
          works.add(new Work(span, working, off.press(), Words.of(off)));
        }
      }
    }
    return works;
  }

  /**
   * When a change takes its setter: from its start until he is free for the next one. A pause of
   * its press takes him only until the first end of a shift in progress when the pause begins, and
   * so does what else he has to do after the change.
   */
  private static List<Span> taken(Week week, Work work, int sharePct) {
    long share = Math.max(1, sharePct);
    long minutes = work.working().minutes(work.span());
    long rest = -Math.floorDiv(-minutes * (100 - share), share);
    List<Span> taken = new ArrayList<>();
    List<Span> parts = work.working().within(work.span());
    for (int i = 0; i < parts.size(); i++) {
      long end = parts.get(i).toMin();
      boolean last = i == parts.size() - 1;
      long until = last ? work.span().toMin() + rest : parts.get(i + 1).fromMin();
      taken.add(new Span(parts.get(i).fromMin(), Math.max(end, Math.min(until, goes(week, end)))));
    }
    return taken;
  }

  /** The first end of a shift in progress at the end of some work; that end when there is none. */
  private static long goes(Week week, long end) {
    return week.shifts().stream()
        .map(ShiftTime::span)
        .filter(span -> span.fromMin() < end && end <= span.toMin())
        .mapToLong(Span::toMin)
        .min()
        .orElse(end);
  }
}
