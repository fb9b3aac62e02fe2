package pressweek.data.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import pressweek.data.files.ActualRow;
import pressweek.data.files.PlantRow;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.PressBreakdown;
import pressweek.data.problem.Uncertainty.Spread;

/**
 * How far a week may differ from its plan, by what runs took: the middle and the spread of real
 * over planned, and breakdowns by running hours. What too few runs tell of stays as the plant says.
 *
 * @param uncertainty the figures
 * @param learnt a sentence for each that comes from past runs, by the name of what it replaces
 */
public record LearnedLuck(Uncertainty uncertainty, Map<Source, String> learnt) {
  /** A figure that past runs may tell. */
  public enum Source {
    CYCLE,
    SCRAP,
    CHANGE,
    BREAKDOWN
  }

  private static final double PCT = 100;

  public LearnedLuck {
    learnt = Map.copyOf(learnt);
  }

  /** The figures of a plant with what its past runs say. */
  public static LearnedLuck of(PlantRow plant, List<ActualRow> all) {
    int least = plant.learnFromRuns();
    List<ActualRow> rows = Learning.byDate(all, plant.hours().zone());
    Map<Source, String> learnt = new LinkedHashMap<>();
    Uncertainty luck = plant.uncertainty();
    Optional<Robust> cycle = ratios(rows, r -> r.cycleS().ratio(), least);
    if (cycle.isPresent()) {
      luck = luck.withCycle(spread(cycle.get()));
      learnt.put(Source.CYCLE, "cycles: " + words(cycle.get(), rows));
    }
    Optional<Robust> scrap = ratios(rows, r -> r.scrapPct().ratio(), least);
    if (scrap.isPresent()) {
      luck = luck.withScrap(spread(scrap.get()).spreadPct());
      learnt.put(
          Source.SCRAP,
          String.format(
              Locale.ROOT,
              "scrap: spread %.1f %% of what the plan allows (%s, %d runs)",
              luck.scrapSpreadPct(),
              name(rows),
              scrap.get().n()));
    }
    Optional<Robust> change = ratios(rows, r -> r.changeMin().ratio(), least);
    if (change.isPresent()) {
      luck = luck.withChange(spread(change.get()));
      learnt.put(Source.CHANGE, "changes: " + words(change.get(), rows));
    }
    Optional<Uncertainty> broken = breakdowns(luck, rows, least);
    if (broken.isPresent()) {
      luck = broken.get();
      learnt.put(Source.BREAKDOWN, words(luck, rows));
    }
    return new LearnedLuck(luck, learnt);
  }

  private static Optional<Robust> ratios(
      List<ActualRow> rows, Function<ActualRow, OptionalDouble> ratio, int least) {
    double[] values =
        rows.stream()
            .map(ratio)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .toArray();
    return values.length < least
        ? Optional.empty()
        : Optional.of(Robust.of(values)).filter(r -> r.middle() > 0);
  }

  private static Spread spread(Robust of) {
    return new Spread(PCT * of.middle(), PCT * of.spread() / of.middle());
  }

  private static String words(Robust of, List<ActualRow> rows) {
    return String.format(
        Locale.ROOT,
        "%.1f %% of the planned in the middle (95 %%: %.1f to %.1f), spread %.1f %% (%s,"
            + " %d runs)",
        PCT * of.middle(),
        PCT * of.low(),
        PCT * of.high(),
        spread(of).spreadPct(),
        name(rows),
        of.n());
  }

  /** Running hours, breakdowns and minutes of repair of some runs. */
  private record Stood(double runH, int breakdowns, double minutes) {
    static Stood of(List<ActualRow> rows) {
      double hours = 0;
      int count = 0;
      double minutes = 0;
      for (ActualRow row : rows) {
        boolean known = row.stops().runH().isPresent() && row.stops().breakdowns().isPresent();
        int stops = row.stops().breakdowns().orElse(0);
        if (known && (stops == 0 || row.stops().minutes().isPresent())) {
          hours += row.stops().runH().getAsDouble();
          count += stops;
          minutes += stops == 0 ? 0 : row.stops().minutes().getAsDouble();
        }
      }
      return new Stood(hours, count, minutes);
    }

    Breakdown with(double spreadPct) {
      return new Breakdown(runH / breakdowns, minutes / breakdowns, spreadPct);
    }
  }

  private static Optional<Uncertainty> breakdowns(
      Uncertainty luck, List<ActualRow> rows, int least) {
    Stood all = Stood.of(rows);
    if (all.breakdowns() < least) {
      return Optional.empty();
    }
    double spread = luck.breakdown().repairSpreadPct();
    Map<String, List<ActualRow>> byPress = new LinkedHashMap<>();
    rows.forEach(r -> byPress.computeIfAbsent(r.press(), p -> new ArrayList<>()).add(r));
    List<PressBreakdown> presses = new ArrayList<>();
    byPress.forEach(
        (press, runs) -> {
          Stood one = Stood.of(runs);
          if (one.breakdowns() >= least) {
            presses.add(new PressBreakdown(press, one.with(spread)));
          }
        });
    return Optional.of(luck.withBreakdowns(all.with(spread), presses));
  }

  private static String words(Uncertainty luck, List<ActualRow> rows) {
    Breakdown all = luck.breakdown();
    String own =
        luck.presses().isEmpty()
            ? ""
            : ", of its own for " + String.join(", ", names(luck.presses()));
    return String.format(
        Locale.ROOT,
        "a press breaks down every %.1f h of running in the mean, repair %.0f min%s (%s,"
            + " %d breakdowns in %.0f h; their spread is the plant's)",
        all.everyH(),
        all.repairMin(),
        own,
        name(rows),
        Stood.of(rows).breakdowns(),
        Stood.of(rows).runH());
  }

  /** The file that they stand in. */
  private static String name(List<ActualRow> rows) {
    return rows.get(0).at().file();
  }

  private static List<String> names(List<PressBreakdown> presses) {
    return presses.stream().map(PressBreakdown::press).toList();
  }
}
