package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Rule;

/** INSPECTORS: no more first-article checks at once than inspectors. */
final class InspectorCheck {
  private InspectorCheck() {}

  static void check(Week week, Findings findings) {
    boolean given =
        week.problem().plant().hours().shifts().stream()
            .anyMatch(shift -> shift.inspectors().isPresent());
    if (!given) {
      return;
    }
    Balance inspectors = new Balance();
    week.shifts()
        .forEach(shift -> inspectors.add(shift.span(), shift.shift().inspectors().orElse(0)));
    week.problem()
        .arranged()
        .trials()
        .forEach(
            trial ->
                inspectors.add(
                    new Span(trial.fromMin(), trial.toMin()), -trial.inspectors().orElse(0)));
    List<Work> works = works(week);
    for (Work work : works) {
      work.working().within(work.span()).forEach(span -> inspectors.take(span, 1));
    }
    for (Work.Overload overload : Work.overloads(works, inspectors.lessThan(0))) {
      Work last = overload.last();
      findings.add(
          Rule.INSPECTORS,
          last.subject(),
          "%s begins %s; at %s it is one of %d that take an inspector, there are %d"
              .formatted(
                  last.words(),
                  week.clock().text(last.span().fromMin()),
                  week.clock().text(overload.shortage().span().fromMin(), last.span().fromMin()),
                  overload.shortage().taken(),
                  overload.shortage().there()));
    }
  }

  private static List<Work> works(Week week) {
    long articleMin = week.problem().plant().changes().firstArticleMin();
    List<Work> works = new ArrayList<>();
    for (PressWalk walk : week.walks()) {
      Spans working = walk.time().working();
      for (Stay stay : walk.stays()) {
        Span change = stay.step().changeSpan();
        boolean checked = stay.due().exchanges() && stay.run().change().minutes() > 0;
        if (checked && articleMin > 0 && !change.isEmpty()) {
          String words = "the first-article check before " + Words.of(stay.run());
          works.add(new Work(last(working, change, articleMin), working, stay.run().id(), words));
        }
      }
    }
    return works;
  }

  /** The end of a span that has so many working minutes; all of it when it has fewer. */
  private static Span last(Spans working, Span span, long minutes) {
    List<Span> parts = working.within(span);
    long left = minutes;
    for (int i = parts.size() - 1; i >= 0; i--) {
      long there = parts.get(i).toMin() - parts.get(i).fromMin();
      if (there >= left) {
        return new Span(parts.get(i).toMin() - left, span.toMin());
      }
      left -= there;
    }
    return span;
  }
}
