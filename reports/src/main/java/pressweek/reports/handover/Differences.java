package pressweek.reports.handover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Press;
import pressweek.data.problem.Unplaced;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/**
 * Finds what is not as it was. Runs of one order line are matched by their place in time: the first
 * with the first. A run that had ended when the new plan starts is past and not said to be gone; of
 * a run under way only press, mold and lateness are compared, since what is left of it changes with
 * every piece made.
 */
final class Differences {
  private final PlanBook earlier;
  private final PlanBook later;
  private final Plan plan;

  Differences(Plan earlier, Plan plan) {
    this.earlier = PlanBook.of(earlier);
    this.later = PlanBook.of(plan);
    this.plan = plan;
  }

  /** The rows, by press in the plant's order, then by time. */
  List<HandoverRow> rows() {
    Map<String, RunState> before = states(earlier);
    Map<String, RunState> now = states(later);
    Map<String, Unplaced> out = unplaced(plan);
    List<HandoverRow> rows = new ArrayList<>();
    now.forEach(
        (key, state) -> row(Optional.ofNullable(before.get(key)), state).ifPresent(rows::add));
    before.forEach(
        (key, state) -> {
          if (!now.containsKey(key)) {
            gone(state, Optional.ofNullable(out.get(state.run().job()))).ifPresent(rows::add);
          }
        });
    rows.addAll(neverPlaced(before, out));
    List<String> presses = plan.problem().floor().presses().stream().map(Press::id).toList();
    rows.sort(
        Comparator.comparingInt((HandoverRow r) -> place(presses, r.press()))
            .thenComparingInt(HandoverRow::startMin));
    return rows;
  }

  /** The place of a press in the plant's order; none and an unknown one come last. */
  private static int place(List<String> presses, String press) {
    int place = presses.indexOf(press);
    return place < 0 ? presses.size() : place;
  }

  /** Runs by order line and place in time: {@code 4711/1 0}. */
  private static Map<String, RunState> states(PlanBook book) {
    Map<String, List<Pull>> pulls =
        book.plan().pulls().stream().collect(Collectors.groupingBy(Pull::run));
    Map<String, Integer> count = new HashMap<>();
    Map<String, RunState> states = new LinkedHashMap<>();
    book.plan().runs().stream()
        .sorted(Comparator.comparingInt(Run::startMin))
        .forEach(
            r -> {
              int nth = count.merge(r.job(), 1, Integer::sum);
              states.put(
                  r.job() + " " + nth, RunState.of(book, r, pulls.getOrDefault(r.id(), List.of())));
            });
    return states;
  }

  private static Map<String, Unplaced> unplaced(Plan plan) {
    return plan.unplaced().stream()
        .collect(Collectors.toMap(Unplaced::id, u -> u, (first, second) -> first));
  }

  private Optional<HandoverRow> row(Optional<RunState> before, RunState now) {
    List<Difference> what =
        before.map(b -> differences(b, now)).orElseGet(() -> List.of(Difference.ADDED));
    if (before.isEmpty() && now.lateMin() > 0) {
      what = List.of(Difference.ADDED, Difference.NEWLY_LATE);
    }
    return what.isEmpty()
        ? Optional.empty()
        : Optional.of(of(what, now, before, Optional.of(now), ""));
  }

  private List<Difference> differences(RunState before, RunState now) {
    List<Difference> what = new ArrayList<>();
    add(what, Difference.PRESS, !before.run().press().equals(now.run().press()));
    add(what, Difference.MOLD, !before.run().mold().equals(now.run().mold()));
    if (later.stay(now.run()) != Stay.RUNNING) {
      int moved = Math.abs(now.run().startMin() - before.run().startMin());
      add(what, Difference.START, moved > plan.problem().plant().moveToleranceMin());
      add(what, Difference.QUANTITY, before.job().quantity().good() != now.job().quantity().good());
      add(what, Difference.INSERTS, !before.inserts().equals(now.inserts()));
    }
    add(what, Difference.NEWLY_LATE, before.lateMin() == 0 && now.lateMin() > 0);
    add(what, Difference.NO_LONGER_LATE, before.lateMin() > 0 && now.lateMin() == 0);
    return what;
  }

  private static void add(List<Difference> what, Difference difference, boolean seen) {
    if (seen) {
      what.add(difference);
    }
  }

  private Optional<HandoverRow> gone(RunState before, Optional<Unplaced> out) {
    boolean past = before.run().endMin() <= plan.problem().plant().hours().startMin();
    if (past && out.isEmpty()) {
      return Optional.empty();
    }
    List<Difference> what = new ArrayList<>(List.of(Difference.GONE));
    add(what, Difference.NEWLY_UNPLACED, out.isPresent());
    String reason = out.map(Unplaced::reason).orElse("");
    return Optional.of(of(what, before, Optional.of(before), Optional.empty(), reason));
  }

  private static HandoverRow of(
      List<Difference> what,
      RunState either,
      Optional<RunState> before,
      Optional<RunState> now,
      String reason) {
    return new HandoverRow(
        what,
        either.job().line().order(),
        either.job().line().line(),
        either.job().item().code(),
        before,
        now,
        reason);
  }

  /** Lines that are unplaced now and were not known before at all. */
  private List<HandoverRow> neverPlaced(Map<String, RunState> before, Map<String, Unplaced> out) {
    Set<String> known =
        before.values().stream().map(s -> s.run().job()).collect(Collectors.toSet());
    known.addAll(unplaced(earlier.plan()).keySet());
    return out.values().stream()
        .filter(u -> !known.contains(u.id()))
        .sorted(Comparator.comparing(Unplaced::id))
        .map(
            u ->
                new HandoverRow(
                    List.of(Difference.NEWLY_UNPLACED),
                    u.order(),
                    u.line(),
                    u.item(),
                    Optional.empty(),
                    Optional.empty(),
                    u.reason()))
        .toList();
  }
}
