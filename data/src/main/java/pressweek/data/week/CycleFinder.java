package pressweek.data.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.PlantRow.Loading;
import pressweek.data.files.PlantRow.RunFigures;
import pressweek.data.files.PressRow;
import pressweek.data.files.StandardRow;
import pressweek.data.molding.Amounts;
import pressweek.data.molding.Cycle;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;

/**
 * Finds the cycle of a mold on a press: the recorded one that says most, else an estimate from the
 * mold's own cycle and its loading.
 */
final class CycleFinder {
  private final RunFigures figures;
  private final Map<String, List<StandardRow>> standards = new HashMap<>();

  private final Map<Hand, Timing> estimates = new HashMap<>();

  /** A mold, its loading by hand in seconds a shot, and whether that goes on beside molding. */
  private record Hand(String mold, double loadS, boolean beside) {}

  CycleFinder(RunFigures figures, List<StandardRow> rows) {
    this.figures = figures;
    for (StandardRow row : rows) {
      standards.computeIfAbsent(row.mold(), k -> new ArrayList<>()).add(row);
    }
  }

  /** The timing of a mold; empty when the plant has no cycle for it. */
  Optional<Timing> find(Mold mold, String resin, PressRow press, List<InsertNeed> inserts) {
    Optional<StandardRow> recorded = standard(mold, resin, press);
    if (recorded.isPresent()) {
      return Optional.of(recorded(mold, recorded.get()));
    }
    return mold.cycleS().isPresent()
        ? Optional.of(estimate(mold, mold.cycleS().getAsDouble(), press, inserts))
        : Optional.empty();
  }

  private Optional<StandardRow> standard(Mold mold, String resin, PressRow press) {
    return standards.getOrDefault(mold.id(), List.of()).stream()
        .filter(row -> row.resin().isEmpty() || row.resin().equals(resin))
        .filter(row -> says(row, press) >= 0)
        .max(
            Comparator.comparingInt((StandardRow row) -> says(row, press))
                .thenComparing(row -> !row.resin().isEmpty())
                .thenComparing(row -> -row.at().line()));
  }

  /**
   * How closely a row names the press: 2 by its number, 1 by its kind, 0 not at all, -1 another.
   */
  private static int says(StandardRow row, PressRow press) {
    if (row.press().isEmpty()) {
      return 0;
    }
    if (row.press().equals(press.press())) {
      return 2;
    }
    Press.Build build = press.build();
    boolean kind =
        row.press().equalsIgnoreCase(build.orientation().name())
            || row.press().equalsIgnoreCase(build.table().name());
    return kind ? 1 : -1;
  }

  private Timing recorded(Mold mold, StandardRow row) {
    return new Timing(
        Amounts.cycleMillis(row.cycleS()),
        row.scrapPct().orElse(figures.scrapPct()),
        row.startupShots().orElse(figures.startupShots()),
        row.operatorThousandths().orElse(operators(mold)),
        true,
        row.at().toString());
  }

  private int operators(Mold mold) {
    return mold.handLoad()
        ? figures.operatorThousandthsHandLoad()
        : figures.operatorThousandthsOther();
  }

  private Timing estimate(Mold mold, double moldS, PressRow press, List<InsertNeed> inserts) {
    double loadS = 0;
    for (InsertNeed need : inserts) {
      loadS += need.pieces() * need.loadS().orElse(figures.loading().loadSPerInsert());
    }
    Hand hand =
        new Hand(mold.id(), loadS * mold.cavities().live(), press.build().lowerHalves() >= 2);
    return estimates.computeIfAbsent(hand, h -> estimate(mold, moldS, h));
  }

  private Timing estimate(Mold mold, double moldS, Hand hand) {
    double seconds = moldS;
    String basis = "estimate: molds.csv cycle_s";
    if (mold.handLoad()) {
      Loading loading = figures.loading();
      Cycle.Hands hands = new Cycle.Hands(loading.unloadS(), hand.loadS());
      seconds =
          hand.beside()
              ? Cycle.severalLowerHalvesS(moldS, hands, loading.indexS())
              : Cycle.oneLowerHalfS(moldS, hands);
      basis =
          basis
              + " "
              + Words.amount(moldS)
              + ", hands "
              + Words.amount(loading.unloadS() + hand.loadS())
              + (hand.beside() ? " s beside it" : " s after it");
    }
    return new Timing(
        Amounts.cycleMillis(seconds),
        figures.scrapPct(),
        figures.startupShots(),
        operators(mold),
        false,
        basis);
  }
}
