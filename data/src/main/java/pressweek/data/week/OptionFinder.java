package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.RunningRow;
import pressweek.data.molding.Amounts;
import pressweek.data.molding.Shot;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Item;
import pressweek.data.problem.Making;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Standing;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/**
 * Finds every mold and press that can make an order line, with the shots, minutes, operators and
 * inserts that each takes.
 */
final class OptionFinder {
  /**
   * A run longer than this is a mistake in a quantity or a cycle, not a plan: a year of working
   * minutes.
   */
  private static final long LONGEST_RUN_MIN = 366L * 24 * 60;

  private static final long MOST_SHOTS = 100_000_000;
  private static final int SHOWN = 4;

  private final PlantRow plant;
  private final MoldFinder molds;
  private final PressFinder presses;
  private final CycleFinder cycles;
  private final TakeFinder takes;
  private final Families families;

  OptionFinder(
      PlantRow plant, Floors floors, CycleFinder cycles, TakeFinder takes, Families families) {
    this.plant = plant;
    this.molds = floors.molds();
    this.presses = floors.presses();
    this.cycles = cycles;
    this.takes = takes;
    this.families = families;
  }

  /** Where molds and presses are looked up. */
  record Floors(MoldFinder molds, PressFinder presses) {}

  /**
   * What was found.
   *
   * @param options options, the best liked first
   * @param gaps what could not be checked of them
   */
  record Found(List<Option> options, Set<Gap> gaps) {}

  /** What a run takes and how long it lasts: the same on every press with the same timing. */
  private record Run(Making making, Pace pace) {}

  /** One mold for one order line, and the runs that its timings lead to. */
  private record Maker(
      Work work, Mold mold, String resin, String tooling, Map<Timing, Attempt<Run>> runs) {
    static Maker of(Work work, Mold mold) {
      String resin = work.item().value(Item.RESIN);
      String tooling = MoldFinder.tooling(mold, work.item());
      return new Maker(work, mold, resin, tooling, new HashMap<>());
    }
  }

  /** Every option of an order line; stopped, with a reason for each press, when there is none. */
  Attempt<Found> find(Work work) {
    if (work.running().isPresent()) {
      return running(work, work.running().get());
    }
    return molds.find(work.item()).then(fitting -> find(work, fitting));
  }

  private Attempt<Found> find(Work work, List<Mold> fitting) {
    List<Option> options = new ArrayList<>();
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    List<String> reasons = new ArrayList<>();
    for (Mold mold : fitting) {
      gaps.addAll(takes.gaps(work.item(), mold));
      Maker maker = Maker.of(work, mold);
      List<PressFit> fits = presses.fits(mold, work.resin(), work.item().standMm());
      for (PressFit fit : fits) {
        if (fit.fits() && option(maker, fit) instanceof Done<Option> done) {
          options.add(done.value());
          gaps.addAll(fit.gaps());
          if (done.value().pace().basis().startsWith("estimate")) {
            gaps.add(Gap.CYCLE);
          }
        }
      }
      if (options.isEmpty()) {
        reasons.add("no press takes mold " + mold.id() + ": " + objections(maker, fits));
      }
    }
    if (options.isEmpty()) {
      return new Stopped<>(
          several(reasons),
          "record a press that runs it in molds.csv runs_on, or correct the figures of mold and press");
    }
    takes.claim(work, options);
    return new Done<>(new Found(options, gaps));
  }

  /** Why no press takes the mold: presses of the same objection together. */
  private String objections(Maker maker, List<PressFit> fits) {
    Map<String, List<String>> pressesByObjection = new LinkedHashMap<>();
    for (PressFit fit : fits) {
      if (option(maker, fit) instanceof Stopped<Option> stopped) {
        pressesByObjection
            .computeIfAbsent(stopped.reason(), k -> new ArrayList<>())
            .add(fit.press().press());
      }
    }
    List<String> words = new ArrayList<>();
    pressesByObjection.forEach(
        (objection, ids) -> words.add(Words.few(ids, SHOWN) + " " + objection));
    return words.isEmpty() ? "there is no press" : String.join("; ", words);
  }

  private static String several(List<String> reasons) {
    int shown = Math.min(3, reasons.size());
    String first = String.join(". ", reasons.subList(0, shown));
    int more = reasons.size() - shown;
    return more == 0 ? first : first + ". " + more + " more molds likewise";
  }

  private Attempt<Option> option(Maker maker, PressFit fit) {
    if (!fit.fits()) {
      return new Stopped<>(fit.objection(), "");
    }
    FoodUse food = fit.press().food();
    if (maker.work().foodGrade() && food == FoodUse.NEVER) {
      return new Stopped<>("not for food-grade work", "");
    }
    if (!maker.work().foodGrade() && food == FoodUse.ONLY) {
      return new Stopped<>("for food-grade work only", "");
    }
    return timed(maker, fit);
  }

  private Attempt<Option> timed(Maker maker, PressFit fit) {
    Mold mold = maker.mold();
    Optional<Timing> timing =
        cycles.find(mold, maker.resin(), fit.press(), maker.work().item().inserts());
    if (timing.isEmpty()) {
      return new Stopped<>("no cycle known (molds.csv cycle_s or standards.csv)", "");
    }
    return maker
        .runs()
        .computeIfAbsent(timing.get(), t -> run(maker.work(), mold, t))
        .then(
            run ->
                new Done<>(
                    new Option(
                        fit.press().press(),
                        mold.id(),
                        maker.tooling(),
                        run.making(),
                        run.pace(),
                        fit.standing(),
                        notes(maker, fit, timing.get()))));
  }

  /** What a person should know: of the press, and of melt that stays too long in its barrel. */
  private List<String> notes(Maker maker, PressFit fit, Timing timing) {
    List<String> notes = new ArrayList<>(fit.notes());
    ResidenceCheck.of(plant.fit(), fit.press(), maker.mold(), maker.work().resin())
        .flatMap(check -> check.note(timing.cycleMillis() / 1000.0))
        .ifPresent(notes::add);
    return notes;
  }

  private Attempt<Run> run(Work work, Mold mold, Timing timing) {
    int live = families.live(mold.id(), work.item().item().code()).orElse(mold.cavities().live());
    long shots = Amounts.shots(work.good(), timing.scrapPct(), live);
    double efficiency = plant.efficiencyPct();
    long runMin = Math.max(1, Amounts.minutes(shots, timing.cycleMillis(), efficiency));
    if (runMin > LONGEST_RUN_MIN || shots > MOST_SHOTS) {
      return new Stopped<>("the run would take %d days".formatted(runMin / (24 * 60)), "");
    }
    long startupMin = Amounts.minutes(timing.startupShots(), timing.cycleMillis(), efficiency);
    Making making =
        new Making(
            (int) shots,
            live,
            timing.startupShots(),
            startupGrams(mold, timing.startupShots()),
            takes.takes(
                work,
                new TakeFinder.Shots(
                    mold,
                    families.beside(mold.id(), work.item().item().code()),
                    live,
                    shots,
                    timing.startupShots())));
    Pace pace =
        new Pace(
            timing.cycleMillis(),
            (int) runMin,
            (int) Math.min(startupMin, LONGEST_RUN_MIN),
            timing.operatorThousandths(),
            timing.basis());
    return new Done<>(new Run(making, pace));
  }

  private static int startupGrams(Mold mold, int startupShots) {
    OptionalDouble partG = mold.cavities().partG();
    if (partG.isEmpty()) {
      return 0;
    }
    double shotG =
        Shot.grams(
            mold.cavities().live(), partG.getAsDouble(), mold.cavities().runnerG().orElse(0));
    return (int) Math.ceil(startupShots * shotG);
  }

  /** What is running stays where it is: its mold on its press, whatever a check would say. */
  private Attempt<Found> running(Work work, RunningRow row) {
    Optional<Mold> mold = molds.byId(row.setup().mold());
    Optional<PressRow> press = presses.byId(row.press());
    if (mold.isEmpty() || press.isEmpty()) {
      return new Stopped<>(
          row.at() + " says that it is running, but not in which mold",
          "give the mold in running.csv");
    }
    PressFit fit =
        new PressFit(press.get(), Standing.PROVEN, "", List.of("running there now"), Set.of());
    Attempt<Option> option = timed(Maker.of(work, mold.get()), fit);
    if (option instanceof Done<Option> done) {
      takes.claim(work, List.of(done.value()));
    }
    return option.then(one -> new Done<>(new Found(List.of(one), Set.of())));
  }
}
