package pressweek.reports.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Preparation;
import pressweek.data.problem.Resin;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/** What to mind when a run's resin is dried. */
final class DryerCautions {
  private static final double HOUR = 60;
  private static final double ROUNDING = 1e-9;

  private final PlanBook book;
  private final PlantClock clock;
  private final Preparation preparation;
  private final DryerBook dryers;

  DryerCautions(PlanBook book, Preparation preparation, DryerBook dryers) {
    this.book = book;
    this.clock = book.clock();
    this.preparation = preparation;
    this.dryers = dryers;
  }

  /** A line each, the most pressing first. */
  List<String> of(DryerUse use) {
    List<String> lines = new ArrayList<>();
    dryers.clashes(use).forEach(other -> lines.add(clash(use, other)));
    dryers.foodBeside(use).forEach(run -> lines.add(beside(use, run)));
    if (book.stay(use.run()) == Stay.RUNNING) {
      lines.add("running already: its resin is in the dryer, the amount is what it still takes");
    } else {
      start(use, lines);
    }
    hopper(use, lines);
    longest(use, lines);
    cleaning(use, lines);
    return lines;
  }

  /** For a food-grade run whose resin is not dried: what else is in the dryer of its press. */
  List<String> ofFood(Run run) {
    return dryers.besideFood(run).stream()
        .map(
            use ->
                "dryer %s must be empty and clean for it, but holds %s from %s to %s (%s on %s)"
                    .formatted(
                        use.dryer(),
                        use.resin(),
                        clock.brief(use.held().fromMin()),
                        clock.brief(use.held().toMin()),
                        use.run().id(),
                        use.run().press()))
        .toList();
  }

  private String beside(DryerUse use, Run food) {
    int from = Math.min(food.change().startMin(), food.startMin());
    return "food-grade run %s on %s wants dryer %s empty and clean from %s to %s"
        .formatted(
            food.id(), food.press(), use.dryer(), clock.brief(from), clock.brief(food.endMin()));
  }

  /**
   * Plastic that is not in the house when it is wanted.
   *
   * @param needByMin when it is wanted
   */
  List<String> late(Run run, Optional<DryerUse> use, int needByMin) {
    return book.plan().pulls().stream()
        .filter(p -> p.run().equals(run.id()) && p.receiptMin() > needByMin)
        .filter(p -> book.component(run, p.insert()).weighed())
        .map(p -> late(run, use, p))
        .toList();
  }

  private String late(Run run, Optional<DryerUse> use, Pull pull) {
    String comes =
        "%s comes with the receipt of %s".formatted(pull.insert(), clock.brief(pull.receiptMin()));
    boolean dries = book.component(run, pull.insert()) == Component.RESIN;
    if (use.isEmpty() || !dries) {
      return comes;
    }
    int dried = pull.receiptMin() + run.startMin() - use.get().held().fromMin();
    return "%s: dried no earlier than %s, %s after the first shot"
        .formatted(comes, clock.brief(dried), Minutes.hours(dried - run.startMin()));
  }

  private String clash(DryerUse use, DryerUse other) {
    String where = other.run().id() + " on " + other.run().press();
    if (other.run().startMin() > use.run().startMin()) {
      return "dryer %s must take %s from %s (%s); this run needs it until %s"
          .formatted(
              use.dryer(),
              other.resin(),
              clock.brief(other.held().fromMin()),
              where,
              clock.brief(use.held().toMin()));
    }
    int dried = other.held().toMin() + use.run().startMin() - use.held().fromMin();
    return "dryer %s holds %s until %s (%s): dried there no earlier than %s, %s after the first shot"
        .formatted(
            use.dryer(),
            other.resin(),
            clock.brief(other.held().toMin()),
            where,
            clock.brief(dried),
            Minutes.hours(dried - use.run().startMin()));
  }

  private void start(DryerUse use, List<String> lines) {
    int from = use.held().fromMin();
    int planned = book.plan().problem().plant().hours().startMin();
    if (from < planned) {
      lines.add("drying should have begun " + clock.moment(from) + ", before the plan starts");
    } else if (book.shifts().at(from, List.of(s -> true)).isEmpty()) {
      book.shifts()
          .before(from)
          .ifPresent(
              s ->
                  lines.add(
                      "nobody in the house at %s: load before %s, or let a timer start it"
                          .formatted(clock.brief(from), clock.brief(s.span().toMin()))));
    }
  }

  private void hopper(DryerUse use, List<String> lines) {
    OptionalDouble holds =
        preparation.dryer(use.run().press()).map(Dryer::hopperL).orElse(OptionalDouble.empty());
    if (holds.isEmpty() || use.litres().isEmpty()) {
      return;
    }
    double hopperL = holds.getAsDouble();
    List<DryerUse> together = dryers.together(use);
    double needed = Math.max(use.litres().getAsDouble(), DryerBook.litres(together));
    if (needed <= hopperL + ROUNDING) {
      return;
    }
    String others =
        together.stream()
            .filter(u -> u != use)
            .map(u -> u.run().id() + " on " + u.run().press())
            .collect(Collectors.joining(", "));
    boolean alone = use.litres().getAsDouble() > hopperL + ROUNDING || others.isEmpty();
    lines.add(
        "hopper of %s too small%s: %s L needed, %s L there"
            .formatted(
                use.dryer(),
                alone ? "" : " with " + others,
                StagingRow.text(alone ? use.litres().getAsDouble() : needed),
                StagingRow.text(hopperL)));
  }

  /** What is loaded in one go leaves the dryer with the run's last shot. */
  private void longest(DryerUse use, List<String> lines) {
    OptionalDouble most =
        preparation.granules(use.resin()).map(Granules::dryMaxH).orElse(OptionalDouble.empty());
    double hours = use.held().minutes() / HOUR;
    if (most.isPresent() && hours > most.getAsDouble() + ROUNDING) {
      lines.add(
          "loaded in one go it would be %s h in the dryer, %s h at most: load in portions, and for"
                  .formatted(StagingRow.text(hours), StagingRow.text(most.getAsDouble()))
              + " closed hours do as the resin sheet says");
    }
  }

  private void cleaning(DryerUse use, List<String> lines) {
    if (use.before().isEmpty()) {
      return;
    }
    String dryer = use.dryer().isEmpty() ? "the dryer" : "dryer " + use.dryer();
    String line = "clean %s, hopper and loader: %s was in".formatted(dryer, use.before());
    lines.add(
        forbidden(use.resin(), use.before())
            ? line
                + "; the two must never meet, hot they can break down violently, the resin sheets"
                + " rule"
            : line);
  }

  private boolean forbidden(String one, String other) {
    List<Resin> resins = book.plan().problem().materials().resins();
    return resins.stream()
        .anyMatch(
            r ->
                r.id().equals(one) && r.neverNextTo().contains(other)
                    || r.id().equals(other) && r.neverNextTo().contains(one));
  }
}
