package pressweek.solver.audit;

import pressweek.data.plan.Change;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;

/**
 * PRESS_HOURS, RUN_TIME and EARLIEST: work is done while the press works, takes its minutes and
 * does not start too early.
 */
final class HoursCheck {
  private final PressWalk walk;
  private final Week week;
  private final Findings findings;

  private HoursCheck(PressWalk walk, Week week, Findings findings) {
    this.walk = walk;
    this.week = week;
    this.findings = findings;
  }

  static void check(Week week, Findings findings) {
    for (PressWalk walk : week.walks()) {
      HoursCheck check = new HoursCheck(walk, week, findings);
      walk.steps().forEach(check::run);
      walk.steps().forEach(check::change);
      walk.dismounts().forEach(check::dismount);
      walk.stays().forEach(check::minutes);
      walk.stays().forEach(check::earliest);
    }
  }

  private void run(Step step) {
    Run run = step.run();
    Spans hours = walk.time().hours(week.ids().handLoad(run.mold()));
    working(step.runSpan(), hours, run.id(), Words.of(run));
    planStart(Math.min(run.startMin(), run.change().startMin()), run.id(), Words.of(run));
  }

  private void change(Step step) {
    Run run = step.run();
    Change change = run.change();
    String words = "the change before " + Words.of(run);
    if (change.minutes() <= 0) {
      if (change.startMin() != run.startMin() || change.endMin() != run.startMin()) {
        findings.add(
            Rule.PRESS_HOURS,
            run.id(),
            "%s has no minutes but is from %s to %s; expected the start of the run, %s"
                .formatted(
                    words,
                    week.clock().text(change.startMin()),
                    week.clock().text(change.endMin(), change.startMin()),
                    week.clock().text(run.startMin(), change.startMin())));
      }
      return;
    }
    exchange(step.changeSpan(), change.minutes(), run.id(), words);
    long idle = walk.time().working().minutes(new Span(change.endMin(), run.startMin()));
    if (idle > 0) {
      findings.add(
          Rule.PRESS_HOURS,
          run.id(),
          "%s ends %s, the run starts %s; the press works %d min between them"
              .formatted(
                  words,
                  week.clock().text(change.endMin()),
                  week.clock().text(run.startMin(), change.endMin()),
                  idle));
    }
  }

  private void dismount(Dismount off) {
    Span span = new Span(off.startMin(), off.endMin());
    planStart(off.startMin(), off.press(), Words.of(off));
    if (off.minutes() > 0 || span.fromMin() != span.toMin()) {
      exchange(span, off.minutes(), off.press(), Words.of(off));
    }
  }

  /** What changes and dismounts have in common: they take their minutes within one stretch. */
  private void exchange(Span span, long minutes, String subject, String words) {
    if (!working(span, walk.time().working(), subject, words)) {
      return;
    }
    long worked = walk.time().working().minutes(span);
    if (worked != minutes) {
      findings.add(
          Rule.PRESS_HOURS,
          subject,
          "%s has %d min, from %s to %s the press works %d min"
              .formatted(
                  words,
                  minutes,
                  week.clock().text(span.fromMin()),
                  week.clock().text(span.toMin(), span.fromMin()),
                  worked));
    }
    if (!week.problem().plant().crew().changeMaySpanGap()
        && !walk.time().stretches().covers(span)) {
      findings.add(
          Rule.PRESS_HOURS,
          subject,
          "%s from %s to %s is left half done while the press does not work"
              .formatted(
                  words,
                  week.clock().text(span.fromMin()),
                  week.clock().text(span.toMin(), span.fromMin())));
    }
  }

  /** Work starts while the press works and ends in the given hours. */
  private boolean working(Span span, Spans hours, String subject, String words) {
    Clock clock = week.clock();
    if (span.isEmpty()) {
      findings.add(
          Rule.PRESS_HOURS,
          subject,
          "%s starts %s and does not end after that but %s"
              .formatted(words, clock.text(span.fromMin()), clock.text(span.toMin())));
      return false;
    }
    boolean starts = walk.time().working().contains(span.fromMin());
    boolean ends = hours.contains(span.toMin() - 1);
    if (!starts || !ends) {
      findings.add(
          Rule.PRESS_HOURS,
          subject,
          "%s %s %s, when the press does not work"
              .formatted(
                  words,
                  starts ? "ends" : "starts",
                  clock.text(starts ? span.toMin() : span.fromMin())));
    }
    return starts && ends;
  }

  private void minutes(Stay stay) {
    Span span = stay.step().runSpan();
    Spans hours = walk.time().hours(week.ids().handLoad(stay.run().mold()));
    long worked = hours.minutes(span);
    if (!span.isEmpty() && worked != stay.minutes()) {
      findings.add(
          Rule.RUN_TIME,
          stay.run(),
          "from %s to %s has %d working min; expected %d for %d shots%s"
              .formatted(
                  week.clock().text(span.fromMin()),
                  week.clock().text(span.toMin(), span.fromMin()),
                  worked,
                  stay.minutes(),
                  stay.option().making().shots(),
                  stay.due().exchanges() ? " and start-up" : ""));
    }
  }

  private void planStart(long min, String subject, String words) {
    long planStart = week.problem().plant().hours().startMin();
    if (min < planStart) {
      findings.add(
          Rule.EARLIEST,
          subject,
          "%s begins %s, the plan starts %s"
              .formatted(words, week.clock().text(min), week.clock().text(planStart, min)));
    }
  }

  private void earliest(Stay stay) {
    long earliest = stay.job().deadline().earliestMin();
    long begins = Math.min(stay.run().startMin(), stay.run().change().startMin());
    if (!stay.running() && begins < earliest) {
      findings.add(
          Rule.EARLIEST,
          stay.run(),
          "begins %s, its earliest time is %s"
              .formatted(week.clock().text(begins), week.clock().text(earliest, begins)));
    }
  }
}
