package pressweek.solver.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.molding.Changeover;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;

/**
 * Minutes and purge of every change of a problem, as {@code docs/rules.md} says, prepared so that
 * the search can ask millions of times. The answer to {@link #ask} stays in the fields until the
 * next question.
 */
public final class ChangeRules {
  /** Bits of {@link #kinds}, in the order of {@link pressweek.data.plan.ChangeKind}. */
  public static final int MOLD = 1;

  public static final int TOOLING = 2;
  public static final int RESIN = 4;
  public static final int COLOUR = 8;
  public static final int FOOD = 16;

  /** Working minutes of the change. */
  public int minutes;

  /** Grams purged. */
  public int purgeG;

  /** What is exchanged, as bits. */
  public int kinds;

  private final ChangeTable table;
  private final int materials;
  private final int[] barrelMinutes;
  private final int[] barrelPurge;
  private final int[] barrelKinds;
  private final boolean[] forbidden;
  private final int[] dismount;
  private final int[] mount;
  private final int[] barrelG;
  private final Recorded recorded;

  public ChangeRules(Problem problem, Names names) {
    table = problem.plant().changes();
    List<Names.Material> list = new ArrayList<>(names.materials());
    materials = list.size();
    barrelMinutes = new int[materials * materials];
    barrelPurge = new int[materials * materials];
    barrelKinds = new int[materials * materials];
    forbidden = new boolean[materials * materials];
    Changeover changeover = new Changeover(problem);
    Map<String, Resin> resins = new HashMap<>();
    problem.materials().resins().forEach(r -> resins.put(r.id(), r));
    for (int a = 0; a < materials; a++) {
      for (int b = 0; b < materials; b++) {
        int at = a * materials + b;
        Setup from = new Setup("", "", list.get(a).resin(), list.get(a).colour());
        Setup to = new Setup("", "", list.get(b).resin(), list.get(b).colour());
        Changeover.BarrelWork work = changeover.barrelWork(from, to);
        barrelMinutes[at] = work.minutes();
        barrelPurge[at] = work.purgeThousandths();
        barrelKinds[at] = differ(from.resin(), to.resin()) ? RESIN : 0;
        barrelKinds[at] |= differ(from.colour(), to.colour()) ? COLOUR : 0;
        forbidden[at] =
            names(resins, from.resin(), to.resin()) || names(resins, to.resin(), from.resin());
      }
    }
    dismount = names.molds().stream().mapToInt(changeover::dismountMin).toArray();
    mount = names.molds().stream().mapToInt(changeover::mountMin).toArray();
    barrelG =
        problem.floor().presses().stream().mapToInt(p -> changeover.purgeG(p.id(), 1000)).toArray();
    recorded = new Recorded(problem, names);
  }

  private static boolean differ(String from, String to) {
    return !from.isEmpty() && !to.isEmpty() && !from.equals(to);
  }

  private static boolean names(Map<String, Resin> resins, String resin, String other) {
    Resin record = resins.get(resin);
    return record != null && record.neverNextTo().contains(other);
  }

  /** Minutes to take a mold off a press. */
  public int dismountMin(int mold) {
    return dismount[mold];
  }

  /** Whether a material may not follow another in a barrel. */
  public boolean forbidden(int from, int to) {
    return forbidden[from * materials + to];
  }

  /**
   * Asks for the change of a press from one setup to another. A mold of -1 is none.
   *
   * @param clear true when the press has to be cleared for food-grade work, too
   */
  public void ask(int press, State from, int mold, int tooling, int material, boolean clear) {
    int at = from.material * materials + material;
    int moldMin = 0;
    kinds = barrelKinds[at];
    if (from.mold != mold) {
      moldMin = mount[mold] + (from.mold >= 0 ? dismount[from.mold] : 0);
      kinds |= MOLD;
    } else if (from.tooling != tooling) {
      moldMin = table.toolingMin();
      kinds |= TOOLING;
    }
    int barrelMin = barrelMinutes[at];
    minutes = table.colourWorkBeside() ? Math.max(moldMin, barrelMin) : moldMin + barrelMin;
    purgeG = (int) (((long) barrelPurge[at] * barrelG[press] + 999) / 1000);
    if (kinds != 0) {
      minutes += table.firstArticleMin();
      if (!recorded.isEmpty()) {
        recorded.overrule(this, press, from, mold, material);
      }
    }
    if (clear) {
      kinds |= FOOD;
      minutes += table.foodClearMin();
    }
  }

  /** How a press is set up, by numbers; a mold of -1 is none. */
  public static final class State {
    public int mold;
    public int tooling;
    public int material;
  }

  /** Recorded changes by number; -1 matches anything. */
  private static final class Recorded {
    private static final int COLUMNS = 7;

    /** Bits of the number of answers that are kept. */
    private static final int BITS = 15;

    private final int[] keys;
    private final int[] minutes;
    private final int[] purgeG;
    private final int[] resin;
    private final int[] colour;
    private final long molds;
    private final long materials;

    /** What has been asked before, and the row that answered it. */
    private final long[] asked;

    private final int[] answered;

    Recorded(Problem problem, Names names) {
      List<RecordedChange> rows = problem.floor().recordedChanges();
      List<Names.Material> list = names.materials();
      molds = names.molds().size() + 1L;
      materials = list.size();
      asked = new long[rows.isEmpty() ? 0 : 1 << BITS];
      answered = new int[asked.length];
      Arrays.fill(asked, -1);
      Map<String, Integer> resins = new HashMap<>();
      Map<String, Integer> colours = new HashMap<>();
      resin = list.stream().mapToInt(m -> number(resins, m.resin())).toArray();
      colour = list.stream().mapToInt(m -> number(colours, m.colour())).toArray();
      keys = new int[rows.size() * COLUMNS];
      minutes = rows.stream().mapToInt(RecordedChange::minutes).toArray();
      purgeG = rows.stream().mapToInt(r -> r.purgeG().orElse(-1)).toArray();
      int i = 0;
      for (RecordedChange row : rows) {
        keys[i++] = row.press().isEmpty() ? -1 : names.press(row.press());
        keys[i++] = row.from().mold().isEmpty() ? -1 : names.mold(row.from().mold());
        keys[i++] = row.from().resin().isEmpty() ? -1 : number(resins, row.from().resin());
        keys[i++] = row.from().colour().isEmpty() ? -1 : number(colours, row.from().colour());
        keys[i++] = row.to().mold().isEmpty() ? -1 : names.mold(row.to().mold());
        keys[i++] = row.to().resin().isEmpty() ? -1 : number(resins, row.to().resin());
        keys[i++] = row.to().colour().isEmpty() ? -1 : number(colours, row.to().colour());
      }
    }

    private static int number(Map<String, Integer> numbers, String name) {
      return numbers.computeIfAbsent(name, n -> numbers.size());
    }

    boolean isEmpty() {
      return minutes.length == 0;
    }

    void overrule(ChangeRules answer, int press, State from, int mold, int material) {
      long key = (long) press * molds + from.mold + 1;
      key = (key * materials + from.material) * molds + mold + 1;
      key = key * materials + material;
      int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> (64 - BITS));
      if (asked[slot] != key) {
        asked[slot] = key;
        answered[slot] = row(press, from, mold, material);
      }
      int row = answered[slot];
      if (row >= 0) {
        answer.minutes = minutes[row];
        answer.purgeG = purgeG[row] < 0 ? answer.purgeG : purgeG[row];
      }
    }

    /** The first row that matches, or -1. */
    private int row(int press, State from, int mold, int material) {
      for (int row = 0, i = 0; row < minutes.length; row++, i += COLUMNS) {
        if (is(i, press)
            && is(i + 1, from.mold)
            && is(i + 2, resin[from.material])
            && is(i + 3, colour[from.material])
            && is(i + 4, mold)
            && is(i + 5, resin[material])
            && is(i + 6, colour[material])) {
          return row;
        }
      }
      return -1;
    }

    private boolean is(int key, int found) {
      return keys[key] < 0 || keys[key] == found;
    }
  }
}
