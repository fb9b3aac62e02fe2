package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.PlantRow.RunFigures;
import pressweek.data.molding.Amounts;
import pressweek.data.problem.Component;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

/** Counts what a run takes from stock: inserts, tips, cartons, labels, resin and masterbatch. */
final class TakeFinder {
  private final RunFigures figures;
  private final Reservations reservations;
  private final PlasticFinder plastic;

  TakeFinder(RunFigures figures, Reservations reservations, PlasticFinder plastic) {
    this.figures = figures;
    this.reservations = reservations;
    this.plastic = plastic;
  }

  /** Pieces of a component for a run, and further ones for its start-up shots. */
  private record Amount(Component kind, int run, int startup) {
    Amount and(Amount more) {
      return new Amount(kind, run + more.run, startup + more.startup);
    }
  }

  /**
   * A run by its shots, and the parts of its start-up shots that take inserts and tips.
   *
   * @param beside what a family mold makes beside the item
   * @param live cavities that make the item
   * @param shots shots of the run
   * @param startup shots after a change, which take inserts and tips unless the mold runs them with
   *     plugs
   */
  record Shots(Mold mold, List<Families.Beside> beside, int live, long shots, int startup) {
    Shots of(Families.Beside other) {
      return new Shots(mold, List.of(), other.cavities(), shots, startup);
    }

    long parts() {
      return shots * live;
    }

    int startupParts() {
      return mold.change().dummyPlugs() ? 0 : startup * live;
    }
  }

  /** What a run takes, each component once. */
  List<Take> takes(Work work, Shots shots) {
    Map<String, Amount> needs = needs(work, shots);
    List<Take> takes = new ArrayList<>();
    needs.forEach(
        (id, amount) -> {
          Take take = take(work, id, work.running().isPresent() ? left(work, amount) : amount);
          if (take.free(true) + take.reserved(true) > 0) {
            takes.add(take);
          }
        });
    return takes;
  }

  private Map<String, Amount> needs(Work work, Shots shots) {
    Map<String, Amount> needs = new LinkedHashMap<>();
    for (InsertNeed need : work.item().inserts()) {
      if (!need.insert().isEmpty()) {
        needs.merge(need.insert(), inParts(Component.INSERT, need.pieces(), shots), Amount::and);
      }
    }
    for (ComponentNeed need : work.item().components()) {
      Amount amount =
          need.kind() == Component.TIP
              ? inParts(need.kind(), need.pieces(), shots)
              : new Amount(need.kind(), Amounts.packs(work.good(), need.pieces(), need.per()), 0);
      needs.merge(need.id(), amount, Amount::and);
    }
    shots.beside().forEach(other -> beside(needs, other.item(), shots.of(other)));
    plastic
        .masses(work.item(), shots.mold(), shots.shots(), shots.startup())
        .forEach(
            mass ->
                needs.merge(
                    mass.id(),
                    new Amount(mass.kind(), mass.grams(), mass.startupGrams()),
                    Amount::and));
    return needs;
  }

  /** Inserts and tips of what is made beside, of which no samples are kept. */
  private void beside(Map<String, Amount> needs, ReadItem item, Shots shots) {
    for (InsertNeed need : item.inserts()) {
      if (!need.insert().isEmpty()) {
        Amount amount = inParts(Component.INSERT, need.pieces(), shots, 0);
        needs.merge(need.insert(), amount, Amount::and);
      }
    }
    for (ComponentNeed need : item.components()) {
      if (need.kind() == Component.TIP) {
        needs.merge(need.id(), inParts(need.kind(), need.pieces(), shots, 0), Amount::and);
      }
    }
  }

  private Amount inParts(Component kind, int pieces, Shots shots) {
    return inParts(kind, pieces, shots, figures.samples());
  }

  /** What is in every part, good or not: inserts and tips. */
  private Amount inParts(Component kind, int pieces, Shots shots, int samples) {
    int run = Amounts.inserts(shots.parts(), pieces, figures.insertLossPct(), samples);
    return new Amount(kind, run, shots.startupParts() * pieces);
  }

  /**
   * A run in progress takes the inserts that are not at its press yet, and never starts up again;
   * all else that it needs is there.
   */
  private static Amount left(Work work, Amount amount) {
    int atPress = work.running().flatMap(row -> present(row.insertsAtPress())).orElse(amount.run());
    boolean insert = amount.kind() == Component.INSERT;
    return new Amount(amount.kind(), insert ? Math.max(0, amount.run() - atPress) : 0, 0);
  }

  private static Optional<Integer> present(java.util.OptionalInt number) {
    return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
  }

  private Take take(Work work, String id, Amount amount) {
    int available = reservations.available(id, work.order().order(), work.order().id());
    int own = Math.min(amount.run(), available);
    int startupOwn = Math.min(amount.startup(), available - own);
    return new Take(amount.kind(), id, amount.run() - own, amount.startup() - startupOwn, own)
        .withReservedStartup(startupOwn);
  }

  /** What of an item's components is not checked, beside its inserts. */
  Set<Gap> gaps(ReadItem item, Mold mold) {
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    gaps.addAll(plastic.gaps(item, mold));
    if (item.components().stream().anyMatch(need -> !plastic.lists(need.id()))) {
      gaps.add(Gap.COMPONENT_STOCK);
    }
    return gaps;
  }

  /**
   * Claims the reserved pieces that the hungriest of the options takes, so that no other line
   * counts on them.
   */
  void claim(Work work, List<Option> options) {
    Map<String, Integer> most = new LinkedHashMap<>();
    for (Option option : options) {
      for (Take take : option.making().takes()) {
        most.merge(take.insert(), take.reserved(true), Math::max);
      }
    }
    most.forEach(
        (insert, pieces) ->
            reservations.claim(insert, work.order().order(), work.order().id(), pieces));
  }
}
