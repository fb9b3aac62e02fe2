package pressweek.solver.timing;

import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.List;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;

/** Arrangements for tests, one kind at a time, and sequences carried out under them. */
final class Arranged {
  /** Minutes of a change on an empty press: 36 to mount, 10 for the first article. */
  static final int MOUNT = 46;

  private Arranged() {}

  static Arrangements things(List<CountedThing> things, DeviceNeed... needs) {
    return of(things, List.of(needs), List.of(), List.of(), List.of());
  }

  static Arrangements service(MoldService service) {
    return of(List.of(), List.of(), List.of(service), List.of(), List.of());
  }

  static Arrangements trial(Trial trial) {
    return of(List.of(), List.of(), List.of(), List.of(trial), List.of());
  }

  static Arrangements link(Link link) {
    return of(List.of(), List.of(), List.of(), List.of(), List.of(link));
  }

  private static Arrangements of(
      List<CountedThing> things,
      List<DeviceNeed> needs,
      List<MoldService> services,
      List<Trial> trials,
      List<Link> links) {
    return new Arrangements(
        things,
        needs,
        services,
        trials,
        links,
        List.of(),
        Opening.NONE,
        new Arrangements.Settled(Drying.NONE, Terms.NONE));
  }

  static Arrangements settled(Opening opening, Drying drying, Terms terms) {
    return Arrangements.NONE.with(opening).with(drying).with(terms);
  }

  static Arrangements terms(Terms terms) {
    return settled(Opening.NONE, Drying.NONE, terms);
  }

  /** A job that nothing makes late. */
  static JobBuilder work(String order) {
    return job(order).due(START + 5 * DAY);
  }

  /** Jobs in the order of presses, by their numbers. */
  static Sequences sequences(WeekTables week, int[]... queues) {
    Sequences sequences = new Sequences(week.pressCount(), week.jobCount());
    for (int p = 0; p < queues.length; p++) {
      for (int job : queues[p]) {
        sequences.add(p, job);
      }
    }
    return sequences;
  }

  /** What becomes of the jobs of the presses. */
  static Timetable carryOut(Problem problem, int[]... queues) {
    WeekTables week = new WeekTables(problem);
    return Timetable.of(week, sequences(week, queues));
  }

  /** The first job on P1 and the second on P2. */
  static Timetable sideBySide(Problem problem) {
    return carryOut(problem, new int[] {0}, new int[] {1});
  }
}
