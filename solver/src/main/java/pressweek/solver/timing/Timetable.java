package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;
import pressweek.solver.timing.Recorder.Event;

/**
 * Sequences carried out: runs with clock times, waits with their causes, and the ledger.
 *
 * @param runs runs by press, then by place
 * @param dismounts molds taken off for other presses, in time order
 * @param unplaced jobs that found no place
 * @param unplacedCharges what each of them costs, in the same order
 * @param whole what is decided for the plant as a whole; no bound yet
 * @param figures totals of the ledger, those lines not counted that fell out before planning
 */
public record Timetable(
    List<Run> runs,
    List<Dismount> dismounts,
    List<Unplaced> unplaced,
    List<Charge> unplacedCharges,
    PlantWide whole,
    Figures figures) {
  public Timetable {
    runs = List.copyOf(runs);
    dismounts = List.copyOf(dismounts);
    unplaced = List.copyOf(unplaced);
    unplacedCharges = List.copyOf(unplacedCharges);
  }

  /** Carries out the sequences through the timing pass that the search uses. */
  public static Timetable of(WeekTables week, Sequences sequences) {
    List<Event> events = TimingPass.record(week, sequences);
    RunWriter writer = new RunWriter(week);
    List<Run> runs = new ArrayList<>();
    List<Dismount> dismounts = new ArrayList<>();
    List<Unplaced> unplaced = new ArrayList<>();
    List<Charge> unplacedCharges = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Recorder.Started started) {
        runs.add(writer.run(started));
      } else if (event instanceof Recorder.TakenOff off) {
        dismounts.add(writer.dismount(off));
      } else if (event instanceof Recorder.LeftOut left) {
        unplaced.add(Reasons.unplaced(week, left));
        unplacedCharges.add(
            new Charge(
                Rule.UNPLACED,
                week.charges.unplaced(left.job()),
                "found no place within the horizon"));
      }
    }
    for (int job : week.nowhere) {
      unplaced.add(Reasons.nowhere(week.jobs.jobs.get(job)));
      unplacedCharges.add(
          new Charge(Rule.UNPLACED, week.charges.unplaced(job), "no press may take it"));
    }
    runs.sort(Comparator.<Run>comparingInt(r -> week.press(r.press())).thenComparingInt(Run::seq));
    dismounts.sort(Comparator.comparingInt(Dismount::startMin).thenComparing(Dismount::press));
    PlantWide whole = WholeWriter.of(week, sequences, events, runs);
    List<Charge> beside = new ArrayList<>(unplacedCharges);
    beside.addAll(whole.charges());
    return new Timetable(
        runs, dismounts, unplaced, unplacedCharges, whole, figures(week, runs, dismounts, beside));
  }

  private static Figures figures(
      WeekTables week, List<Run> runs, List<Dismount> dismounts, List<Charge> beside) {
    Map<Rule, Long> cost = new EnumMap<>(Rule.class);
    int late = 0;
    long lateMin = 0;
    int changes = dismounts.size();
    long changeMin = dismounts.stream().mapToLong(Dismount::minutes).sum();
    long purge = 0;
    for (Run run : runs) {
      Job job = week.jobs.jobs.get(week.job(run.job()));
      int minutes = run.readyMin() - job.deadline().dueMin();
      late += minutes > 0 ? 1 : 0;
      lateMin += Math.max(0, minutes);
      changes += run.change().kinds().isEmpty() ? 0 : 1;
      changeMin += run.change().minutes();
      purge += run.change().purgeG();
      run.charges().forEach(c -> cost.merge(c.rule(), c.amount(), Long::sum));
    }
    dismounts.forEach(d -> cost.merge(Rule.CHANGE, d.cost(), Long::sum));
    beside.forEach(c -> cost.merge(c.rule(), c.amount(), Long::sum));
    cost.values().removeIf(v -> v == 0);
    int left = (int) beside.stream().filter(c -> c.rule() == Rule.UNPLACED).count();
    return new Figures(runs.size(), left, late, lateMin, changes, changeMin, purge, cost);
  }
}
