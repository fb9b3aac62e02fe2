package pressweek.solver.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;

/**
 * The shifts of the time in question, and which of them are worked.
 *
 * @param attended shifts with people that are worked: those that always are, and overtime that the
 *     plan opens
 * @param unattended shifts without people that are worked
 * @param overtime every shift that may be opened, opened or not
 * @param opened overtime that the plan opens, each once, in the order in which the plan lists it
 */
record Roster(
    List<ShiftTime> attended,
    List<ShiftTime> unattended,
    List<ShiftTime> overtime,
    List<ShiftTime> opened) {
  Roster {
    attended = List.copyOf(attended);
    unattended = List.copyOf(unattended);
    overtime = List.copyOf(overtime);
    opened = List.copyOf(opened);
  }

  /** Of all shifts of the time in question those that the plan works. */
  static Roster of(Problem problem, Plan plan, List<ShiftTime> all) {
    Opening opening = problem.arranged().opening();
    Set<String> mayOpen = new HashSet<>();
    opening.overtime().forEach(row -> mayOpen.add(row.shift()));
    List<ShiftTime> overtime = all.stream().filter(time -> mayOpen.contains(time.name())).toList();
    List<ShiftTime> opened =
        plan.head().plantWide().opened().stream()
            .flatMap(open -> overtime.stream().filter(time -> means(open, time)).limit(1))
            .distinct()
            .toList();
    List<ShiftTime> worked =
        all.stream()
            .filter(time -> !mayOpen.contains(time.name()) || opened.contains(time))
            .toList();
    Set<String> empty = Set.copyOf(opening.unattended());
    return new Roster(
        worked.stream().filter(time -> !empty.contains(time.name())).toList(),
        worked.stream().filter(time -> empty.contains(time.name())).toList(),
        overtime,
        opened);
  }

  /** True when this is the shift that the plan opens. */
  static boolean means(PlantWide.Opened open, ShiftTime time) {
    return open.shift().equals(time.name())
        && open.fromMin() == time.span().fromMin()
        && open.toMin() == time.span().toMin();
  }
}
