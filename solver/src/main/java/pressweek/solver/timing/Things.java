package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Problem;
import pressweek.solver.rules.Names;

/** Tooling sets and devices that exist a counted number of times. */
final class Things {
  /** How many there are of a tooling set; -1 for one that is not counted. */
  private final int[] toolingCount;

  /** Counted devices of a mold. */
  private final int[][] devices;

  private final int[] deviceCount;
  private final List<String> deviceNames = new ArrayList<>();
  private final boolean any;
  private final PressStates states;

  /** A set that leaves a press, and until when the press still holds it. */
  private final int[] leaving;

  private final int[] leavingUntil;

  /** The mold whose devices a press uses, and until when. */
  private final int[] usedBy;

  private final int[] usedUntil;

  /** The press that a set is to be taken from for the last {@link #toolingAt}; -1 for none. */
  int giver = -1;

  Things(Problem problem, Names names, PressStates states) {
    this.states = states;
    Map<String, Integer> counts = new HashMap<>();
    for (CountedThing thing : problem.arranged().things()) {
      counts.put(thing.id(), thing.count());
    }
    toolingCount =
        names.toolings().stream()
            .mapToInt(t -> t.isEmpty() ? -1 : counts.getOrDefault(t, -1))
            .toArray();
    List<List<Integer>> needs = new ArrayList<>();
    names.molds().forEach(m -> needs.add(new ArrayList<>()));
    Map<String, Integer> molds = new HashMap<>();
    names.molds().forEach(m -> molds.put(m, molds.size()));
    for (DeviceNeed need : problem.arranged().devices()) {
      Integer mold = molds.get(need.mold());
      if (mold != null && counts.containsKey(need.device())) {
        if (!deviceNames.contains(need.device())) {
          deviceNames.add(need.device());
        }
        needs.get(mold).add(deviceNames.indexOf(need.device()));
      }
    }
    devices =
        needs.stream()
            .map(n -> n.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    deviceCount = deviceNames.stream().mapToInt(counts::get).toArray();
    any = !counts.isEmpty();
    int presses = states.free.length;
    leaving = new int[presses];
    leavingUntil = new int[presses];
    usedBy = new int[presses];
    usedUntil = new int[presses];
  }

  boolean any() {
    return any;
  }

  void name(Snapshot.Changing all) {
    all.add(leaving, leavingUntil, usedBy, usedUntil);
  }

  void reset() {
    Arrays.fill(leavingUntil, 0);
    Arrays.fill(usedUntil, 0);
  }

  /** The name of the first device of a mold; empty for none. */
  String deviceOf(int mold) {
    return devices[mold].length == 0 ? "" : deviceNames.get(devices[mold][0]);
  }

  /**
   * The start itself when a press may take a tooling set into its mold then; otherwise the next
   * time at which that could be otherwise. {@link #giver} is the press that must give one up.
   */
  int toolingAt(int press, int mold, int set, int start) {
    giver = -1;
    if (toolingCount[set] < 0) {
      return start;
    }
    if (states.mold[press] == mold && states.tooling[press] == set) {
      return start;
    }
    int held = 0;
    int next = Spans.FAR;
    for (int q = 0; q < leaving.length; q++) {
      if (q == press) {
        continue;
      }
      boolean leaves = leavingUntil[q] > start && leaving[q] == set;
      boolean holds = states.tooling[q] == set;
      if (leaves || holds) {
        held++;
        next = leaves ? Math.min(next, leavingUntil[q]) : next;
      }
      if (holds) {
        if (states.lastEnd[q] > start) {
          next = Math.min(next, states.lastEnd[q]);
        } else if (giver < 0 || states.lastEnd[q] < states.lastEnd[giver]) {
          giver = q;
        }
      }
    }
    if (held < toolingCount[set]) {
      giver = -1;
      return start;
    }
    return giver >= 0 ? start : next;
  }

  /** The start itself when the devices of a mold are there; otherwise when the next comes free. */
  int devicesAt(int press, int mold, int start) {
    int at = start;
    for (int device : devices[mold]) {
      int used = 0;
      int next = Spans.FAR;
      for (int q = 0; q < usedBy.length; q++) {
        if (q != press && usedUntil[q] > start && uses(usedBy[q], device)) {
          used++;
          next = Math.min(next, usedUntil[q]);
        }
      }
      if (used >= deviceCount[device]) {
        at = Math.max(at, next);
      }
    }
    return at;
  }

  private boolean uses(int mold, int device) {
    for (int d : devices[mold]) {
      if (d == device) {
        return true;
      }
    }
    return false;
  }

  /** A press takes out its old set by a time. */
  void leave(int press, int until) {
    leaving[press] = states.tooling[press];
    leavingUntil[press] = until;
  }

  /** A press uses the devices of a mold until a time. */
  void use(int press, int mold, int until) {
    usedBy[press] = mold;
    usedUntil[press] = until;
  }
}
