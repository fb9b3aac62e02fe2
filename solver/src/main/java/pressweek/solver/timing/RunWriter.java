package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Setup;
import pressweek.solver.rules.Names;

/** Writes what a timing pass recorded as runs, waits and ledger entries. */
final class RunWriter {
  private final WeekTables week;
  private final int[] placed;

  RunWriter(WeekTables week) {
    this.week = week;
    placed = new int[week.presses];
  }

  Run run(Recorder.Started started) {
    Job job = week.jobs.jobs.get(started.job());
    Option option = week.jobs.option[started.option()];
    Recorder.Times times = started.times();
    return new Run(
        id(started.job()),
        job.id(),
        option.press(),
        option.mold(),
        ++placed[started.press()],
        change(started, job, option),
        times.runStart(),
        times.runEnd(),
        times.runEnd() + job.deadline().afterMin(),
        waits(started),
        charges(started, job, option));
  }

  /** Number of the run of a job. */
  static String id(int job) {
    return String.format(Locale.ROOT, "R%03d", job + 1);
  }

  Dismount dismount(Recorder.TakenOff off) {
    return new Dismount(
        week.problem.floor().presses().get(off.press()).id(),
        week.names.molds().get(off.mold()),
        off.start(),
        off.end(),
        off.minutes(),
        week.charges.change(off.minutes()));
  }

  private Change change(Recorder.Started started, Job job, Option option) {
    Recorder.Was was = started.was();
    Names.Material material = week.names.materials().get(was.material());
    Setup from =
        new Setup(
            was.mold() < 0 ? "" : week.names.molds().get(was.mold()),
            week.names.toolings().get(was.tooling()),
            material.resin(),
            material.colour());
    Setup to = new Setup(option.mold(), option.tooling(), job.resin(), job.colour());
    List<ChangeKind> kinds = new ArrayList<>();
    for (ChangeKind kind : ChangeKind.values()) {
      if ((started.change().kinds() & (1 << kind.ordinal())) != 0) {
        kinds.add(kind);
      }
    }
    return new Change(
        from,
        to,
        kinds,
        started.times().start(),
        started.times().changeEnd(),
        started.change().minutes(),
        started.change().purgeG());
  }

  private List<Charge> charges(Recorder.Started started, Job job, Option option) {
    List<Charge> charges = new ArrayList<>();
    Recorder.Change change = started.change();
    int material = week.jobs.material[started.job()];
    addLate(charges, started, job);
    add(charges, Rule.CHANGE, week.charges.change(change.minutes()), change.minutes() + " min");
    add(
        charges,
        Rule.PURGE,
        week.charges.purge(material, change.purgeG()),
        change.purgeG() + " g " + job.resin());
    if (change.exchanged()) {
      int grams = option.making().startupGrams();
      add(
          charges,
          Rule.START_UP,
          week.charges.startUp(material, grams),
          grams + " g " + job.resin());
    }
    add(
        charges,
        Rule.PRESS_RATE,
        week.pressRate[started.option()],
        "dearer than the cheapest that could do it");
    add(
        charges,
        Rule.KEPT_PRESS,
        week.keptPress[started.option()],
        option.press() + " is kept for food-grade work");
    add(
        charges,
        Rule.MOVED,
        week.moved(started.job(), started.press(), started.times().runStart()),
        "was elsewhere, or at another time, in the plan before");
    return charges;
  }

  private void addLate(List<Charge> charges, Recorder.Started started, Job job) {
    int ready = started.times().runEnd() + job.deadline().afterMin();
    int missed = week.charges.cutOffsMissed(started.job(), ready);
    boolean before = job.deadline().dueMin() < week.start;
    int minutes = Math.max(0, ready - Math.max(job.deadline().dueMin(), week.start));
    String cutOffs = missed + (missed == 1 ? " cut-off" : " cut-offs") + " missed, ";
    String late = minutes + " min late" + (before ? " since the plan starts" : "");
    add(charges, Rule.LATE, week.charges.late(started.job(), ready), cutOffs + late);
  }

  private static void add(List<Charge> charges, Rule rule, long amount, String because) {
    if (amount != 0) {
      charges.add(new Charge(rule, amount, because));
    }
  }

  /** Waits between the press becoming free and the change, and between change and run. */
  private List<Wait> waits(Recorder.Started started) {
    List<Wait> waits = new ArrayList<>();
    List<Recorder.Push> pushes = new ArrayList<>(started.pushes());
    pushes.sort(Comparator.comparingInt(Recorder.Push::until));
    Recorder.Times times = started.times();
    int at = started.was().free();
    for (Recorder.Push push : pushes) {
      int until = Math.min(push.until(), times.start());
      if (until > at) {
        addWait(waits, new Wait(push.cause(), push.what(), at, until));
        at = until;
      }
    }
    if (at < times.start()) {
      addWait(
          waits,
          new Wait(Cause.MOLD, week.jobs.option[started.option()].mold(), at, times.start()));
    }
    if (times.changeEnd() < times.runStart()) {
      addWait(waits, new Wait(Cause.SHIFT, "", times.changeEnd(), times.runStart()));
    }
    return waits;
  }

  private static void addWait(List<Wait> waits, Wait wait) {
    int last = waits.size() - 1;
    if (last >= 0) {
      Wait before = waits.get(last);
      boolean same = before.cause() == wait.cause() && before.what().equals(wait.what());
      if (same && before.toMin() == wait.fromMin()) {
        waits.set(last, new Wait(wait.cause(), wait.what(), before.fromMin(), wait.toMin()));
        return;
      }
    }
    waits.add(wait);
  }
}
