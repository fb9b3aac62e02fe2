package pressweek.solver.offer;

import java.util.List;

/**
 * What would help a new line that cannot be there in time with nobody made late. Each change is
 * tried in the order of the answers and in every place; none is searched further.
 *
 * @param changes how many changes there are to try
 * @param tried those of them that were tried to the end, in words
 * @param places places in which the line was tried for them, each by carrying the plan out anew
 * @param helping what helps, the best first
 */
public record Cures(int changes, List<String> tried, int places, List<Help> helping) {
  public Cures {
    tried = List.copyOf(tried);
    helping = List.copyOf(helping);
  }

  /** True when not all of it was tried. */
  public boolean cutShort() {
    return tried.size() < changes;
  }

  /** The few that are worth naming: those that bring it in time, where there are any. */
  public List<Help> best(int most) {
    List<Help> inTime = helping.stream().filter(h -> h.gain() == Help.Gain.IN_TIME).toList();
    List<Help> shown = inTime.isEmpty() ? helping : inTime;
    return shown.subList(0, Math.min(most, shown.size()));
  }
}
