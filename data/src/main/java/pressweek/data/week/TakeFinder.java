package pressweek.data.week;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.files.PlantRow.RunFigures;
import pressweek.data.files.RunningRow;
import pressweek.data.molding.Amounts;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

/** Counts the inserts that a run takes from stock. */
final class TakeFinder {
  private final RunFigures figures;
  private final Reservations reservations;

  TakeFinder(RunFigures figures, Reservations reservations) {
    this.figures = figures;
    this.reservations = reservations;
  }

  /**
   * The inserts of a run.
   *
   * @param shots shots of the run
   * @param startupShots shots after a change, which take inserts unless the mold runs them with
   *     plugs
   */
  List<Take> takes(Work work, Mold mold, long shots, int startupShots) {
    Map<String, Integer> perPart = new LinkedHashMap<>();
    for (InsertNeed need : work.item().inserts()) {
      if (!need.insert().isEmpty()) {
        perPart.merge(need.insert(), need.pieces(), Integer::sum);
      }
    }
    int live = mold.cavities().live();
    int startupParts = mold.change().dummyPlugs() ? 0 : startupShots * live;
    List<Take> takes = new ArrayList<>();
    perPart.forEach(
        (insert, pieces) -> {
          int needed =
              Amounts.inserts(shots * live, pieces, figures.insertLossPct(), figures.samples());
          Take take =
              work.running().isPresent()
                  ? continued(work, insert, needed, work.running().get())
                  : fresh(work, insert, needed, startupParts * pieces);
          if (take.pieces() + take.startupPieces() + take.reservedPieces() > 0) {
            takes.add(take);
          }
        });
    return takes;
  }

  /** A run in progress takes what is not at the press yet, and never starts up again. */
  private Take continued(Work work, String insert, int needed, RunningRow running) {
    int left = Math.max(0, needed - running.insertsAtPress().orElse(needed));
    return fresh(work, insert, left, 0);
  }

  private Take fresh(Work work, String insert, int needed, int startup) {
    int own =
        Math.min(needed, reservations.available(insert, work.order().order(), work.order().id()));
    return new Take(insert, needed - own, startup, own);
  }

  /**
   * Claims the reserved pieces that the hungriest of the options takes, so that no other line
   * counts on them.
   */
  void claim(Work work, List<Option> options) {
    Map<String, Integer> most = new LinkedHashMap<>();
    for (Option option : options) {
      for (Take take : option.making().takes()) {
        most.merge(take.insert(), take.reservedPieces(), Math::max);
      }
    }
    most.forEach(
        (insert, pieces) ->
            reservations.claim(insert, work.order().order(), work.order().id(), pieces));
  }
}
