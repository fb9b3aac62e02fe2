package pressweek.data.week;

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

/**
 * Finds the cycle of a mold on a press: the recorded one that says most, else an estimate from the
 * mold's own cycle and its loading.
 */
final class CycleFinder {
  /** Thousandths of an operator from which there are hands at two stations. */
  private static final int PERSON_A_STATION = 2_000;

  private final RunFigures figures;
  private final Standards standards;
  private final Map<Hand, Timing> estimates = new HashMap<>();

  /**
   * A mold, its loading by hand in seconds a shot, and the lower halves that it has on the table.
   */
  private record Hand(String mold, double loadS, int lowerHalves) {
    boolean beside() {
      return lowerHalves > 1;
    }
  }

  CycleFinder(RunFigures figures, List<StandardRow> rows) {
    this.figures = figures;
    standards = new Standards(rows);
  }

  /** The timing of a mold; empty when the plant has no cycle for it. */
  Optional<Timing> find(Mold mold, String resin, PressRow press, List<InsertNeed> inserts) {
    Optional<StandardRow> recorded = standard(mold, resin, press);
    if (recorded.isPresent()) {
      return Optional.of(recorded(mold, recorded.get()));
    }
    return estimate(mold, press, inserts);
  }

  /** The timing from the mold's own cycle, whatever is recorded; empty when it has none. */
  Optional<Timing> estimate(Mold mold, PressRow press, List<InsertNeed> inserts) {
    return mold.cycleS().isPresent()
        ? Optional.of(estimate(mold, mold.cycleS().getAsDouble(), press, inserts))
        : Optional.empty();
  }

  /** The recorded cycle that says most; empty when there is none. */
  Optional<StandardRow> standard(Mold mold, String resin, PressRow press) {
    return standards.find(mold.id(), resin, press);
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
    Hand hand = new Hand(mold.id(), loadS * mold.cavities().live(), lowerHalves(mold, press));
    return estimates.computeIfAbsent(hand, h -> estimate(mold, moldS, h));
  }

  /**
   * The lower halves that work side by side: stations for unloading and loading of their own need a
   * person each.
   */
  int lowerHalves(Mold mold, PressRow press) {
    int halves = press.build().lowerHalves();
    return operators(mold) >= PERSON_A_STATION ? halves : Math.min(2, halves);
  }

  private Timing estimate(Mold mold, double moldS, Hand hand) {
    double seconds = moldS;
    String basis = "estimate: molds.csv cycle_s";
    if (mold.handLoad()) {
      Loading loading = figures.loading();
      Cycle.Hands hands = new Cycle.Hands(loading.unloadS(), hand.loadS());
      seconds = Cycle.wholeS(hand.lowerHalves(), moldS, hands, loading.indexS());
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
