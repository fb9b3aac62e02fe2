package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.solver.timing.ShiftTimes.Worked;

/**
 * The shifts that are worked: all but overtime shifts, and of those the ones that a plan opens. An
 * overtime shift of the horizon is a bit of a number, in the order of their starts.
 */
final class OpenShifts {
  /** Overtime shifts that can be told apart by the bits of a long; later ones are never opened. */
  private static final int MOST = 62;

  private final Hours hours;
  private final Opening opening;
  private final List<Worked> windows;

  OpenShifts(Problem problem) {
    hours = problem.plant().hours();
    opening = problem.arranged().opening();
    windows = windows();
  }

  private List<Worked> windows() {
    List<String> names = opening.overtime().stream().map(Opening.Overtime::shift).toList();
    List<Worked> all = new ArrayList<>();
    for (Worked worked : ShiftTimes.of(hours, names, 0)) {
      if (worked.from() >= hours.startMin() && worked.from() < hours.endMin()) {
        all.add(worked);
      }
    }
    all.sort(Comparator.comparingInt(Worked::from).thenComparing(w -> w.shift().name()));
    return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
  }

  /** Overtime shifts that may be opened, by start. */
  List<Worked> overtime() {
    return windows;
  }

  /** What an hour of an overtime shift costs, thousandths of a cent. */
  long perHour(Worked window) {
    return opening.overtime().stream()
        .filter(o -> o.shift().equals(window.shift().name()))
        .mapToLong(Opening.Overtime::perHour)
        .findFirst()
        .orElse(0);
  }

  /** Whether there are shifts without people. */
  boolean hasUnattended() {
    return !opening.unattended().isEmpty();
  }

  /** Shifts with people of these names that are worked when so many overtime shifts are open. */
  List<Worked> attended(List<String> names, int daysAfter, long open) {
    return worked(names, daysAfter, open, false);
  }

  /** Shifts without people of these names. */
  List<Worked> unattended(List<String> names, int daysAfter, long open) {
    return worked(names, daysAfter, open, true);
  }

  private List<Worked> worked(List<String> names, int daysAfter, long open, boolean without) {
    List<String> wanted =
        names.stream().filter(n -> opening.unattended().contains(n) == without).toList();
    List<Worked> all = ShiftTimes.of(hours, wanted, daysAfter);
    if (opening.overtime().isEmpty()) {
      return all;
    }
    Set<String> priced = new HashSet<>();
    opening.overtime().forEach(o -> priced.add(o.shift()));
    Set<String> opened = new HashSet<>();
    for (int i = 0; i < windows.size(); i++) {
      if ((open >> i & 1) != 0) {
        opened.add(key(windows.get(i)));
      }
    }
    return all.stream()
        .filter(w -> !priced.contains(w.shift().name()) || opened.contains(key(w)))
        .toList();
  }

  private static String key(Worked worked) {
    return worked.shift().name() + "\n" + worked.from();
  }
}
