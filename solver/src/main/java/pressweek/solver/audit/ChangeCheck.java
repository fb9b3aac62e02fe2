package pressweek.solver.audit;

import pressweek.data.plan.Change;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Setup;

/**
 * CHANGE_TIME: a change goes from the setup that is there to the one that is needed and has its
 * kinds, minutes and purge.
 */
final class ChangeCheck {
  private ChangeCheck() {}

  static void check(Week week, Findings findings) {
    for (PressWalk walk : week.walks()) {
      walk.stays().forEach(stay -> check(stay, findings));
      walk.dismounts().forEach(off -> check(off, week.reckoner(), findings));
    }
  }

  private static void check(Stay stay, Findings findings) {
    Change change = stay.run().change();
    DueChange due = stay.due();
    Setup before = stay.step().before();
    if (!change.from().equals(before)) {
      findings.add(
          Rule.CHANGE_TIME,
          stay.run(),
          "changes from %s; the press holds %s"
              .formatted(Words.of(change.from()), Words.of(before)));
    }
    Setup needed =
        new Setup(
            stay.option().mold(), stay.option().tooling(), stay.job().resin(), stay.job().colour());
    if (!change.to().equals(needed)) {
      findings.add(
          Rule.CHANGE_TIME,
          stay.run(),
          "changes to %s; it needs %s".formatted(Words.of(change.to()), Words.of(needed)));
    }
    if (!change.kinds().equals(due.kinds())) {
      findings.add(
          Rule.CHANGE_TIME,
          stay.run(),
          "has a change of %s; expected %s".formatted(change.kinds(), due.kinds()));
    }
    if (change.minutes() != due.minutes()) {
      findings.add(
          Rule.CHANGE_TIME,
          stay.run(),
          "has a change of %d min; expected %d min for %s"
              .formatted(change.minutes(), due.minutes(), due.kinds()));
    }
    if (change.purgeG() != due.purgeG()) {
      findings.add(
          Rule.CHANGE_TIME,
          stay.run(),
          "purges %d g; expected %d g".formatted(change.purgeG(), due.purgeG()));
    }
  }

  private static void check(Dismount off, ChangeReckoner reckoner, Findings findings) {
    long due = reckoner.dismountMin(off.mold());
    if (off.minutes() != due) {
      findings.add(
          Rule.CHANGE_TIME,
          off.press(),
          "%s has %d min; expected %d min".formatted(Words.of(off), off.minutes(), due));
    }
  }
}
