package pressweek.data.molding;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;

/**
 * What exchanging molds, tooling, resins and colours takes in a plant: its change table, beaten by
 * its recorded changes. The rules are those of {@code docs/rules.md}, section Changes. Figures come
 * from the plant; no table of them is published.
 */
public final class Changeover {
  /** Takes off what binary fractions add to decimals, so that 67.7 to 87.7 is a step of 20. */
  private static final double HALF_DIGITS = 1e-9;

  private final ChangeTable table;
  private final Map<String, Integer> changeMinByMold = new HashMap<>();
  private final Map<String, Integer> barrelGByPress = new HashMap<>();
  private final Map<String, OptionalDouble> meltCByResin = new HashMap<>();
  private final Map<ColourKey, OptionalDouble> lightness = new HashMap<>();
  private final Map<String, List<RecordedChange>> recordedByPress = new HashMap<>();

  private record ColourKey(String resin, String colour) {}

  /**
   * What happens between two runs.
   *
   * @param kinds what is exchanged, in the order of the enum; empty when nothing is
   * @param minutes working minutes of one setter
   * @param purgeG resin purged, grams
   */
  public record Step(List<ChangeKind> kinds, int minutes, int purgeG) {
    public Step {
      kinds = List.copyOf(kinds);
    }

    /**
     * True when a mold, tooling, resin or colour is exchanged; a food clearance alone exchanges
     * nothing.
     */
    public boolean exchanges() {
      return kinds.stream().anyMatch(kind -> kind != ChangeKind.FOOD_CLEARANCE);
    }
  }

  /** Minutes of barrel work and the purge factor, thousandths of a barrel. */
  public record BarrelWork(int minutes, int purgeThousandths) {
    private static final BarrelWork NONE = new BarrelWork(0, 0);

    /** Both at once: one purge does for both. */
    BarrelWork with(BarrelWork other) {
      return new BarrelWork(
          Math.max(minutes, other.minutes), Math.max(purgeThousandths, other.purgeThousandths));
    }
  }

  /** The changes of a problem's presses, molds, resins and colours. */
  public Changeover(Problem problem) {
    table = problem.plant().changes();
    for (Mold mold : problem.floor().molds()) {
      changeMinByMold.put(mold.id(), mold.change().changeMin().orElse(table.moldMin()));
    }
    for (Press press : problem.floor().presses()) {
      barrelGByPress.put(
          press.id(), barrelG(press.size().shotPsG(), problem.plant().barrelDefaultG()));
      recordedByPress.put(press.id(), recordedFor(press.id(), problem));
    }
    for (Resin resin : problem.materials().resins()) {
      meltCByResin.put(resin.id(), resin.meltC());
    }
    for (Colour colour : problem.materials().colours()) {
      lightness.put(new ColourKey(colour.resin(), colour.id()), colour.lightness());
    }
  }

  private static List<RecordedChange> recordedFor(String press, Problem problem) {
    return problem.floor().recordedChanges().stream()
        .filter(change -> matches(change.press(), press))
        .toList();
  }

  /** Minutes to take a mold off a press. */
  public int dismountMin(String mold) {
    return ceilDiv((long) changeMin(mold) * table.dismountPct(), 100);
  }

  /** Minutes to put a mold on a press from which the old one has been taken off. */
  public int mountMin(String mold) {
    return changeMin(mold) - dismountMin(mold);
  }

  /**
   * What it takes to run {@code to} on a press that is set up as {@code from}.
   *
   * @param press press
   * @param from what is in it; an empty mold for none, an empty resin or colour for an empty or
   *     unknown barrel
   * @param to what the run needs
   * @param foodGrade true when the run is food-grade
   * @param cleared true when the press is cleared for food-grade work
   */
  public Step between(String press, Setup from, Setup to, boolean foodGrade, boolean cleared) {
    Set<ChangeKind> kinds = kinds(from, to);
    int minutes = 0;
    int purgeG = 0;
    if (!kinds.isEmpty()) {
      BarrelWork barrel = barrelWork(from, to);
      int moldMin = moldMinutes(kinds, from, to);
      minutes =
          table.colourWorkBeside()
              ? Math.max(moldMin, barrel.minutes())
              : moldMin + barrel.minutes();
      minutes += table.firstArticleMin();
      purgeG = purgeG(press, barrel.purgeThousandths());
      for (RecordedChange recorded : recordedByPress.getOrDefault(press, List.of())) {
        if (matches(recorded.from(), from) && matches(recorded.to(), to)) {
          minutes = recorded.minutes();
          OptionalInt recordedPurge = recorded.purgeG();
          purgeG = recordedPurge.orElse(purgeG);
          break;
        }
      }
    }
    if (foodGrade && !cleared) {
      kinds.add(ChangeKind.FOOD_CLEARANCE);
      minutes += table.foodClearMin();
    }
    return new Step(new ArrayList<>(kinds), minutes, purgeG);
  }

  private static Set<ChangeKind> kinds(Setup from, Setup to) {
    Set<ChangeKind> kinds = EnumSet.noneOf(ChangeKind.class);
    if (!from.mold().equals(to.mold())) {
      kinds.add(ChangeKind.MOLD);
    } else if (!from.tooling().equals(to.tooling())) {
      kinds.add(ChangeKind.TOOLING);
    }
    if (differ(from.resin(), to.resin())) {
      kinds.add(ChangeKind.RESIN);
    }
    if (differ(from.colour(), to.colour())) {
      kinds.add(ChangeKind.COLOUR);
    }
    return kinds;
  }

  private static boolean differ(String from, String to) {
    return !from.isEmpty() && !to.isEmpty() && !from.equals(to);
  }

  private int moldMinutes(Set<ChangeKind> kinds, Setup from, Setup to) {
    if (kinds.contains(ChangeKind.TOOLING)) {
      return table.toolingMin();
    }
    if (!kinds.contains(ChangeKind.MOLD)) {
      return 0;
    }
    return (from.mold().isEmpty() ? 0 : dismountMin(from.mold())) + mountMin(to.mold());
  }

  /** What another resin or colour in the barrel takes; molds and tooling do not matter. */
  public BarrelWork barrelWork(Setup from, Setup to) {
    BarrelWork resin =
        differ(from.resin(), to.resin()) ? resinWork(from.resin(), to.resin()) : BarrelWork.NONE;
    BarrelWork colour = differ(from.colour(), to.colour()) ? colourWork(from, to) : BarrelWork.NONE;
    return resin.with(colour);
  }

  private BarrelWork resinWork(String from, String to) {
    ChangeTable.ResinStep step = table.resin();
    OptionalDouble old = meltCByResin.getOrDefault(from, OptionalDouble.empty());
    OptionalDouble next = meltCByResin.getOrDefault(to, OptionalDouble.empty());
    int minutes = step.sameMin();
    if (old.isPresent() && next.isPresent()) {
      double hotterC = next.getAsDouble() - old.getAsDouble();
      if (hotterC - HALF_DIGITS > step.toleranceC()) {
        minutes = step.upMin();
      } else if (-hotterC - HALF_DIGITS > step.toleranceC()) {
        minutes = step.downMin();
      }
    }
    return new BarrelWork(minutes, step.purgeThousandths());
  }

  private BarrelWork colourWork(Setup from, Setup to) {
    ChangeTable.ColourStep step = table.colour();
    OptionalDouble old = lightness(from);
    OptionalDouble next = lightness(to);
    if (old.isEmpty() || next.isEmpty()) {
      return new BarrelWork(step.unknownMin(), step.purgeLighterThousandths());
    }
    double lighter = next.getAsDouble() - old.getAsDouble();
    if (lighter <= 0) {
      return new BarrelWork(step.darkerMin(), step.purgeDarkerThousandths());
    }
    int further = (int) Math.ceil(step.lighterPer100Min() * lighter / 100 - HALF_DIGITS);
    return new BarrelWork(step.lighterMin() + further, step.purgeLighterThousandths());
  }

  private OptionalDouble lightness(Setup setup) {
    OptionalDouble anyResin =
        lightness.getOrDefault(new ColourKey("", setup.colour()), OptionalDouble.empty());
    return lightness.getOrDefault(new ColourKey(setup.resin(), setup.colour()), anyResin);
  }

  /** Grams in so many thousandths of the barrel of a press, rounded up. */
  public int purgeG(String press, int thousandths) {
    return purgeG(barrelGByPress.getOrDefault(press, 0), thousandths);
  }

  /** Grams in so many thousandths of a barrel, rounded up. */
  public static int purgeG(int barrelG, int thousandths) {
    return ceilDiv((long) thousandths * barrelG, 1000);
  }

  /**
   * The barrel of a press, whole grams: its rated shot, or the plant's figure where it has none.
   */
  public static int barrelG(OptionalDouble shotPsG, int defaultG) {
    return shotPsG.isPresent() ? (int) Math.ceil(shotPsG.getAsDouble()) : defaultG;
  }

  private int changeMin(String mold) {
    return changeMinByMold.getOrDefault(mold, table.moldMin());
  }

  private static boolean matches(Setup recorded, Setup actual) {
    return matches(recorded.mold(), actual.mold())
        && matches(recorded.tooling(), actual.tooling())
        && matches(recorded.resin(), actual.resin())
        && matches(recorded.colour(), actual.colour());
  }

  private static boolean matches(String recorded, String actual) {
    return recorded.isEmpty() || recorded.equals(actual);
  }

  private static int ceilDiv(long amount, long by) {
    return Math.toIntExact((amount + by - 1) / by);
  }
}
