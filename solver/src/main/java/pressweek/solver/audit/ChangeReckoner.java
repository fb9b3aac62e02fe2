package pressweek.solver.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;

/** Works out what a change between two setups must be: section "Changes" of docs/rules.md. */
final class ChangeReckoner {
  private final Ids ids;
  private final ChangeTable table;
  private final List<RecordedChange> recorded;
  private final int barrelDefaultG;

  ChangeReckoner(Problem problem, Ids ids) {
    this.ids = ids;
    table = problem.plant().changes();
    recorded = problem.floor().recordedChanges();
    barrelDefaultG = problem.plant().barrelDefaultG();
  }

  /** Minutes and thousandths of a barrel of work on the barrel. */
  private record BarrelWork(long minutes, long purgeThousandths) {
    static final BarrelWork NONE = new BarrelWork(0, 0);

    BarrelWork larger(BarrelWork other) {
      return new BarrelWork(
          Math.max(minutes, other.minutes), Math.max(purgeThousandths, other.purgeThousandths));
    }
  }

  /** The change on a press from one setup to the next, with a food clearance when one is needed. */
  DueChange change(Press press, Setup from, Setup to, boolean clearance) {
    List<ChangeKind> kinds = exchanged(from, to);
    long minutes = 0;
    long purgeG = 0;
    if (!kinds.isEmpty()) {
      BarrelWork barrel = barrelWork(kinds, from, to);
      Optional<RecordedChange> known =
          recorded.stream().filter(row -> matches(row, press, from, to)).findFirst();
      minutes =
          known
              .map(row -> (long) row.minutes())
              .orElseGet(() -> tableMinutes(kinds, from, to, barrel.minutes()));
      purgeG =
          known.stream()
              .flatMapToInt(row -> row.purgeG().stream())
              .asLongStream()
              .findFirst()
              .orElseGet(() -> ceil(barrel.purgeThousandths() * barrelG(press), 1000));
    }
    List<ChangeKind> all = new ArrayList<>(kinds);
    if (clearance) {
      all.add(ChangeKind.FOOD_CLEARANCE);
      minutes += table.foodClearMin();
    }
    return new DueChange(all, minutes, purgeG);
  }

  /** Working minutes to take a mold off. */
  long dismountMin(String mold) {
    return ceil((long) changeMin(mold) * table.dismountPct(), 100);
  }

  private static List<ChangeKind> exchanged(Setup from, Setup to) {
    List<ChangeKind> kinds = new ArrayList<>();
    if (!from.mold().equals(to.mold())) {
      kinds.add(ChangeKind.MOLD);
    } else if (!from.tooling().equals(to.tooling())) {
      kinds.add(ChangeKind.TOOLING);
    }
    if (!from.resin().isEmpty() && !to.resin().isEmpty() && !from.resin().equals(to.resin())) {
      kinds.add(ChangeKind.RESIN);
    }
    if (!from.colour().isEmpty() && !to.colour().isEmpty() && !from.colour().equals(to.colour())) {
      kinds.add(ChangeKind.COLOUR);
    }
    return kinds;
  }

  private long tableMinutes(List<ChangeKind> kinds, Setup from, Setup to, long barrelMinutes) {
    long moldMinutes = 0;
    if (kinds.contains(ChangeKind.MOLD)) {
      long dismount = from.mold().isEmpty() ? 0 : dismountMin(from.mold());
      moldMinutes = dismount + changeMin(to.mold()) - dismountMin(to.mold());
    } else if (kinds.contains(ChangeKind.TOOLING)) {
      moldMinutes = table.toolingMin();
    }
    long both =
        table.colourWorkBeside()
            ? Math.max(moldMinutes, barrelMinutes)
            : moldMinutes + barrelMinutes;
    return both + table.firstArticleMin();
  }

  private BarrelWork barrelWork(List<ChangeKind> kinds, Setup from, Setup to) {
    BarrelWork resin = kinds.contains(ChangeKind.RESIN) ? resinWork(from, to) : BarrelWork.NONE;
    BarrelWork colour = kinds.contains(ChangeKind.COLOUR) ? colourWork(from, to) : BarrelWork.NONE;
    return resin.larger(colour);
  }

  private BarrelWork resinWork(Setup from, Setup to) {
    ChangeTable.ResinStep step = table.resin();
    OptionalDouble old = ids.resin(from.resin()).map(Resin::meltC).orElse(OptionalDouble.empty());
    OptionalDouble next = ids.resin(to.resin()).map(Resin::meltC).orElse(OptionalDouble.empty());
    long minutes = step.sameMin();
    if (old.isPresent() && next.isPresent()) {
      BigDecimal hotter = difference(old.getAsDouble(), next.getAsDouble());
      if (hotter.abs().compareTo(BigDecimal.valueOf(step.toleranceC())) > 0) {
        minutes = hotter.signum() > 0 ? step.upMin() : step.downMin();
      }
    }
    return new BarrelWork(minutes, step.purgeThousandths());
  }

  private BarrelWork colourWork(Setup from, Setup to) {
    ChangeTable.ColourStep step = table.colour();
    OptionalDouble old = ids.lightness(from);
    OptionalDouble next = ids.lightness(to);
    if (old.isEmpty() || next.isEmpty()) {
      return new BarrelWork(step.unknownMin(), step.purgeLighterThousandths());
    }
    BigDecimal lighter = difference(old.getAsDouble(), next.getAsDouble());
    if (lighter.signum() <= 0) {
      return new BarrelWork(step.darkerMin(), step.purgeDarkerThousandths());
    }
    long further =
        lighter
            .multiply(BigDecimal.valueOf(step.lighterPer100Min()))
            .movePointLeft(2)
            .setScale(0, RoundingMode.CEILING)
            .longValue();
    return new BarrelWork(step.lighterMin() + further, step.purgeLighterThousandths());
  }

  /** The difference of two figures as they are written, without the error of binary fractions. */
  private static BigDecimal difference(double old, double next) {
    return BigDecimal.valueOf(next).subtract(BigDecimal.valueOf(old));
  }

  private static boolean matches(RecordedChange row, Press press, Setup from, Setup to) {
    return matches(row.press(), press.id()) && matches(row.from(), from) && matches(row.to(), to);
  }

  private static boolean matches(Setup row, Setup setup) {
    return matches(row.mold(), setup.mold())
        && matches(row.resin(), setup.resin())
        && matches(row.colour(), setup.colour());
  }

  private static boolean matches(String cell, String id) {
    return cell.isEmpty() || cell.equals(id);
  }

  private int changeMin(String mold) {
    return ids.mold(mold).map(Mold::change).map(Mold.MoldChange::changeMin).stream()
        .flatMapToInt(minutes -> minutes.stream())
        .findFirst()
        .orElse(table.moldMin());
  }

  private long barrelG(Press press) {
    OptionalDouble shotG = press.size().shotPsG();
    return shotG.isPresent() ? (long) Math.ceil(shotG.getAsDouble()) : barrelDefaultG;
  }

  private static long ceil(long amount, long divisor) {
    return -Math.floorDiv(-amount, divisor);
  }
}
