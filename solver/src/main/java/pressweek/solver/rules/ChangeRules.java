package pressweek.solver.rules;

import java.util.ArrayList;
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

  /** Recorded changes by number. */
  private static final class Recorded {
    private final List<RecordedChange> rows;
    private final List<String> presses = new ArrayList<>();
    private final List<String> molds;
    private final List<Names.Material> materials;

    Recorded(Problem problem, Names names) {
      rows = problem.floor().recordedChanges();
      problem.floor().presses().forEach(p -> presses.add(p.id()));
      molds = new ArrayList<>(names.molds());
      materials = new ArrayList<>(names.materials());
    }

    boolean isEmpty() {
      return rows.isEmpty();
    }

    void overrule(ChangeRules answer, int press, State from, int mold, int material) {
      String fromMold = from.mold < 0 ? "" : molds.get(from.mold);
      for (RecordedChange row : rows) {
        if (matches(row.press(), presses.get(press))
            && matches(row.from(), fromMold, materials.get(from.material))
            && matches(row.to(), molds.get(mold), materials.get(material))) {
          answer.minutes = row.minutes();
          answer.purgeG = row.purgeG().orElse(answer.purgeG);
          return;
        }
      }
    }

    private static boolean matches(Setup wanted, String mold, Names.Material material) {
      return matches(wanted.mold(), mold)
          && matches(wanted.resin(), material.resin())
          && matches(wanted.colour(), material.colour());
    }

    private static boolean matches(String wanted, String found) {
      return wanted.isEmpty() || wanted.equals(found);
    }
  }
}
