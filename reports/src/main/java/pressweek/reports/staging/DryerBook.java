package pressweek.reports.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pressweek.data.molding.Drying;
import pressweek.data.plan.Run;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Option;
import pressweek.data.problem.Preparation;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/**
 * Which dryer holds which resin from when to when. A dryer is warm when the run that it fed before
 * was of the same resin; at the start of the plan only what is running says what it holds.
 */
final class DryerBook {
  private static final int HOUR = 60;

  private final PlanBook book;
  private final Preparation preparation;
  private final Map<String, DryerUse> uses = new LinkedHashMap<>();

  DryerBook(PlanBook book, Preparation preparation) {
    this.book = book;
    this.preparation = preparation;
    Map<String, List<Run>> byDryer = new TreeMap<>();
    for (Run run : book.plan().runs()) {
      if (dryH(run) > 0) {
        String key = dryer(run).map(d -> "dryer " + d).orElse("press " + run.press());
        byDryer.computeIfAbsent(key, k -> new ArrayList<>()).add(run);
      }
    }
    byDryer.values().forEach(this::enter);
  }

  private void enter(List<Run> runs) {
    runs.sort(Comparator.comparingInt(Run::startMin));
    String holds = "";
    for (Run run : runs) {
      DryerUse use = use(run, holds);
      uses.put(run.id(), use);
      holds = use.resin();
    }
  }

  private DryerUse use(Run run, String holds) {
    String resin = book.job(run).resin();
    boolean running = book.stay(run) == Stay.RUNNING;
    boolean cold = !holds.equals(resin);
    double hours =
        running ? 0 : Drying.hoursBeforeFirstShot(dryH(run), preparation.coldStartH(), cold);
    OptionalDouble kg = hopperKg(run);
    OptionalDouble bulk = granules(run).map(Granules::bulkKgL).orElse(OptionalDouble.empty());
    OptionalDouble litres =
        kg.isEmpty() || bulk.isEmpty()
            ? OptionalDouble.empty()
            : Drying.litres(kg.getAsDouble(), bulk.getAsDouble());
    return new DryerUse(
        run,
        resin,
        dryer(run).orElse(""),
        new Span(run.startMin() - (int) Math.ceil(hours * HOUR), run.endMin()),
        hours,
        cold ? holds : "",
        kg,
        litres);
  }

  /** What the run takes in the hours of drying, or all of it when that is less. */
  private OptionalDouble hopperKg(Run run) {
    Batch batch = Batch.of(book, preparation, run);
    Optional<Option> option = book.option(run);
    if (batch.shotG().isEmpty() || batch.plasticG().isEmpty() || option.isEmpty()) {
      return OptionalDouble.empty();
    }
    double cycleS = option.get().pace().cycleMillis() / 1000.0;
    OptionalDouble rate = Drying.rateKgH(batch.shotG().getAsDouble(), cycleS);
    double all = (batch.plasticG().get() - batch.purgeG()) / 1000.0;
    return rate.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.min(all, Drying.hopperKg(rate.getAsDouble(), dryH(run))));
  }

  private double dryH(Run run) {
    return granules(run).map(Granules::dryH).orElse(OptionalDouble.empty()).orElse(0);
  }

  private Optional<Granules> granules(Run run) {
    return preparation.granules(book.job(run).resin());
  }

  private Optional<String> dryer(Run run) {
    return preparation.dryer(run.press()).map(Dryer::id);
  }

  /** The use of a run; empty when its resin is not dried or it is not known whether. */
  Optional<DryerUse> of(Run run) {
    return Optional.ofNullable(uses.get(run.id()));
  }

  /** Food-grade runs that draw undried resin beside a dryer while a use holds it. */
  List<Run> foodBeside(DryerUse use) {
    return book.plan().runs().stream().filter(run -> beside(run, use)).toList();
  }

  /** Uses that hold the dryer of the press of a food-grade run whose own resin is not dried. */
  List<DryerUse> besideFood(Run run) {
    return uses.values().stream()
        .filter(use -> beside(run, use))
        .sorted(Comparator.comparingInt(u -> u.held().fromMin()))
        .toList();
  }

  private boolean beside(Run run, DryerUse use) {
    int from = Math.min(run.change().startMin(), run.startMin());
    return book.job(run).foodGrade()
        && !uses.containsKey(run.id())
        && !use.dryer().isEmpty()
        && dryer(run).filter(use.dryer()::equals).isPresent()
        && new Span(from, run.endMin()).within(use.held()).minutes() > 0;
  }

  /** Uses of another resin that want the same dryer at the same time, in order of time. */
  List<DryerUse> clashes(DryerUse use) {
    return uses.values().stream()
        .filter(use::clashes)
        .sorted(Comparator.comparingInt(u -> u.held().fromMin()))
        .toList();
  }

  /**
   * The uses of the same resin that are in the dryer at the time when, together with this one, they
   * need most of it; this one among them. Runs of one press follow each other and draw from one
   * filling, so that only other presses come on top.
   */
  List<DryerUse> together(DryerUse use) {
    List<DryerUse> joined = uses.values().stream().filter(u -> u == use || use.joins(u)).toList();
    return joined.stream()
        .map(at -> Math.max(at.held().fromMin(), use.held().fromMin()))
        .map(minute -> onePerPress(use, joined, minute))
        .max(Comparator.comparingDouble(DryerBook::litres))
        .orElse(List.of(use));
  }

  private static List<DryerUse> onePerPress(DryerUse use, List<DryerUse> joined, int minute) {
    Map<String, DryerUse> byPress = new LinkedHashMap<>(Map.of(use.run().press(), use));
    joined.stream()
        .filter(u -> !u.run().press().equals(use.run().press()) && u.held().contains(minute))
        .forEach(
            u ->
                byPress.merge(
                    u.run().press(),
                    u,
                    (a, b) -> litres(List.of(a)) >= litres(List.of(b)) ? a : b));
    return List.copyOf(byPress.values());
  }

  /** Litres of all of them, those not known left out. */
  static double litres(List<DryerUse> uses) {
    return uses.stream().mapToDouble(u -> u.litres().orElse(0)).sum();
  }
}
