package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Problem;
import pressweek.solver.rules.Names;

/** Dryers, what is in them, and until when runs draw from them. */
final class Dryers {
  private static final int EMPTY = -1;

  /** What a dryer must hold for a material; -1 for one that is not dried. */
  private final int[] content;

  private final int[] dryMin;

  /** Dryers that may feed a press. */
  private final int[][] feeding;

  private final int cleanMin;
  private final int start;
  private final int[] heldAtStart;
  private final int[] dryAtStart;
  private final List<String> contents = new ArrayList<>();

  private final int[] held;
  private final int[] until;
  private final int[] dryFrom;

  /** Until when runs draw another content than is held, as what was running at the start may. */
  private final int[] othersUntil;

  /** The dryer that the last {@link #ready} chose; -1 for none. */
  int chosen = -1;

  Dryers(Problem problem, WeekTables week) {
    Drying drying = problem.arranged().drying();
    Names names = week.names;
    cleanMin = drying.cleanMin();
    start = week.start;
    content = new int[names.materials().size()];
    dryMin = new int[content.length];
    Arrays.fill(content, -1);
    for (Drying.Dried dried : drying.materials()) {
      int m = names.materials().indexOf(new Names.Material(dried.resin(), dried.colour()));
      if (m >= 0 && dried.minutes() > 0) {
        if (!contents.contains(dried.content())) {
          contents.add(dried.content());
        }
        content[m] = contents.indexOf(dried.content());
        dryMin[m] = dried.minutes();
      }
    }
    feeding = feeding(drying, week);
    heldAtStart = heldAtStart(drying, week);
    dryAtStart =
        drying.dryers().stream()
            .mapToInt(f -> f.holds().map(h -> Math.max(start, h.dryFromMin())).orElse(start))
            .toArray();
    int n = drying.dryers().size();
    held = new int[n];
    until = new int[n];
    dryFrom = new int[n];
    othersUntil = new int[n];
  }

  /** Dryers by the press that they may feed. */
  private static int[][] feeding(Drying drying, WeekTables week) {
    List<List<Integer>> feeds = new ArrayList<>();
    for (int p = 0; p < week.presses; p++) {
      feeds.add(new ArrayList<>());
    }
    for (int d = 0; d < drying.dryers().size(); d++) {
      for (String press : drying.dryers().get(d).presses()) {
        feeds.get(week.names.press(press)).add(d);
      }
    }
    return feeds.stream()
        .map(f -> f.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private int[] heldAtStart(Drying drying, WeekTables week) {
    int[] at = new int[drying.dryers().size()];
    for (int d = 0; d < at.length; d++) {
      at[d] = EMPTY;
      Optional<Drying.Held> said = drying.dryers().get(d).holds();
      if (said.isPresent()) {
        at[d] = content(said.get().content());
        continue;
      }
      for (String press : drying.dryers().get(d).presses()) {
        int p = week.names.press(press);
        int there = content[week.standingMaterial[p]];
        if (at[d] == EMPTY && there >= 0 && feeding[p][0] == d) {
          at[d] = there;
        }
      }
    }
    return at;
  }

  /** The number of a content, which no run of the week may need. */
  private int content(String name) {
    if (!contents.contains(name)) {
      contents.add(name);
    }
    return contents.indexOf(name);
  }

  void name(Snapshot.Changing all) {
    all.add(held, until, dryFrom, othersUntil);
  }

  void reset() {
    System.arraycopy(heldAtStart, 0, held, 0, held.length);
    Arrays.fill(until, start);
    System.arraycopy(dryAtStart, 0, dryFrom, 0, dryFrom.length);
    Arrays.fill(othersUntil, start);
  }

  /** Whether a material has to come out of a dryer on a press. */
  boolean needed(int press, int material) {
    return content[material] >= 0 && feeding[press].length > 0;
  }

  /**
   * The first time, not before another, at which a run can begin with dry material; the dryer is
   * {@link #chosen}. What is running already needs a dryer that nobody draws from, and no time.
   */
  int ready(int press, int material, int from, boolean running) {
    int best = Spans.FAR;
    boolean bestSame = false;
    chosen = -1;
    for (int d : feeding[press]) {
      boolean same = held[d] == content[material];
      int clean = held[d] == EMPTY ? 0 : cleanMin;
      int other = until[d] + (running ? 0 : clean + dryMin[material]);
      int at = Math.max(from, same ? Math.max(dryFrom[d], othersUntil[d]) : other);
      if (at < best || (at == best && same && !bestSame)) {
        best = at;
        bestSame = same;
        chosen = d;
      }
    }
    return running && chosen >= 0 ? from : best;
  }

  /** When drying begins for a run from the chosen dryer. */
  int dryingFrom(int dryer, int material, int runStart) {
    return held[dryer] == content[material] ? runStart : runStart - dryMin[material];
  }

  /** A run draws from a dryer. */
  void take(int dryer, int material, int runStart, int runEnd) {
    if (held[dryer] != content[material]) {
      othersUntil[dryer] = until[dryer];
      held[dryer] = content[material];
      dryFrom[dryer] = runStart;
    }
    until[dryer] = Math.max(until[dryer], runEnd);
  }

  /** What a dryer holds, by name. */
  String content(int material) {
    return content[material] < 0 ? "" : contents.get(content[material]);
  }
}
