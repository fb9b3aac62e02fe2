package pressweek.solver.audit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.Problem;

/** Walks all presses together in the order of time and moves the counted tooling sets. */
final class ToolingSets {
  private final Map<String, Integer> counts = new HashMap<>();

  /** In the plant's order. */
  private final List<PressWalker> floor;

  ToolingSets(Problem problem, List<PressWalker> floor) {
    this.floor = List.copyOf(floor);
    for (CountedThing thing : problem.arranged().things()) {
      counts.putIfAbsent(thing.id(), thing.count());
    }
  }

  /**
   * What happens on each press; of what begins together what is running comes first, changes come
   * before dismounts, and the earlier press first.
   */
  List<PressWalk> walk() {
    for (Optional<PressWalker> next = next(); next.isPresent(); next = next()) {
      next.get().step(this);
    }
    return floor.stream().map(PressWalker::walked).toList();
  }

  private Optional<PressWalker> next() {
    return floor.stream()
        .filter(walker -> walker.nextMin().isPresent())
        .min(
            Comparator.comparingLong(ToolingSets::nextMin)
                .thenComparing(walker -> !walker.runningIsNext())
                .thenComparing(PressWalker::dismountIsNext));
  }

  private static long nextMin(PressWalker walker) {
    OptionalLong next = walker.nextMin();
    return next.orElse(Long.MAX_VALUE);
  }

  /**
   * A change that begins then fits a set in the mold of a press. Where other presses hold all there
   * are, it is taken from the one that has stood longest.
   *
   * @return the presses that hold all there are, when none of them can be taken; else empty
   */
  List<String> fit(String tooling, PressWalker press, long min) {
    int count = counts.getOrDefault(tooling, Integer.MAX_VALUE);
    List<PressWalker> holders =
        floor.stream().filter(other -> !other.equals(press) && other.holds(tooling, min)).toList();
    if (tooling.isEmpty() || holders.size() < count) {
      return List.of();
    }
    Optional<PressWalker> loser =
        holders.stream()
            .filter(other -> other.canLose(tooling, min))
            .min(Comparator.comparingLong(PressWalker::freeMin));
    loser.ifPresent(PressWalker::loseSet);
    return loser.isPresent() ? List.of() : holders.stream().map(PressWalker::pressId).toList();
  }
}
