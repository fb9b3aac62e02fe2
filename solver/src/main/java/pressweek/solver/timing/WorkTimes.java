package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Trial;
import pressweek.solver.timing.ShiftTimes.Worked;

/**
 * Who works when, with certain overtime shifts open: presses, with people and without, and how many
 * people of a kind are in the house.
 */
final class WorkTimes {
  /** Days after the horizon for which people are known at least. */
  private static final int DAYS_AFTER = 28;

  /** Days for which they are known after the last on which a run may begin. */
  private static final int DAYS_TO_END = 7;

  /** Working time of each press with people in the house. */
  final Spans[] hours;

  /** The same and its shifts without people, for runs without hand loading. */
  final Spans[] running;

  private final Problem problem;
  private final List<Worked> attended;

  WorkTimes(Problem problem, OpenShifts shifts, long open, int longest, int daysOn) {
    this.problem = problem;
    List<Press> presses = problem.floor().presses();
    hours = new Spans[presses.size()];
    running = new Spans[presses.size()];
    for (int p = 0; p < hours.length; p++) {
      PressTime time = new PressTime(problem, presses.get(p), shifts, open);
      hours[p] = time.attended(longest);
      running[p] = shifts.hasUnattended() ? time.withUnattended(longest) : hours[p];
    }
    List<String> names = problem.plant().hours().shifts().stream().map(Shift::name).toList();
    attended = shifts.attended(names, Math.max(DAYS_AFTER, daysOn + DAYS_TO_END), open);
  }

  /** A time from which on so many people are in the house. */
  record Step(int from, int people) {}

  /** How many setters are in the house, from when on. */
  List<Step> setters() {
    return steps(Shift::setters, Trial::setters);
  }

  /** How many inspectors are in the house. */
  List<Step> inspectors() {
    return steps(s -> s.inspectors().orElse(0), t -> t.inspectors().orElse(0));
  }

  /** Thousandths of operators in the house. */
  List<Step> operators() {
    return steps(Shift::operatorThousandths, t -> 0);
  }

  private List<Step> steps(ToIntFunction<Shift> people, ToIntFunction<Trial> booked) {
    List<Trial> trials =
        problem.arranged().trials().stream().filter(t -> booked.applyAsInt(t) > 0).toList();
    int[] edges =
        IntStream.concat(
                attended.stream().flatMapToInt(w -> IntStream.of(w.from(), w.to())),
                trials.stream().flatMapToInt(t -> IntStream.of(t.fromMin(), t.toMin())))
            .sorted()
            .distinct()
            .toArray();
    List<Step> steps = new ArrayList<>();
    for (int edge : edges) {
      int count = 0;
      for (Worked w : attended) {
        count += w.from() <= edge && edge < w.to() ? people.applyAsInt(w.shift()) : 0;
      }
      for (Trial t : trials) {
        count -= t.fromMin() <= edge && edge < t.toMin() ? booked.applyAsInt(t) : 0;
      }
      steps.add(new Step(edge, Math.max(0, count)));
    }
    return steps;
  }
}
