package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import pressweek.data.problem.Component;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;
import pressweek.data.week.RushWeek;

/** Adds to an earlier week's materials what new order lines need and it did not know. */
final class MaterialsMerge {
  private MaterialsMerge() {}

  /** The materials of both; what the earlier week knows stays as it is. */
  static Materials of(Materials was, RushWeek rush) {
    Materials more = rush.materials();
    return new Materials(
        both(was.resins(), more.resins(), Resin::id),
        both(was.colours(), more.colours(), c -> c.resin() + ":" + c.id()),
        both(was.inserts(), more.inserts(), Insert::id),
        stock(was.stock(), rush),
        was.preparation());
  }

  /** Stock of what new lines take and the earlier week had no row of. */
  private static Stock stock(Stock was, RushWeek rush) {
    Set<String> known = new HashSet<>();
    was.lots().forEach(lot -> known.add(lot.what()));
    was.receipts().forEach(receipt -> known.add(receipt.what()));
    Set<String> taken = new HashSet<>();
    for (Job job : rush.jobs()) {
      job.options().stream()
          .flatMap(option -> option.making().takes().stream())
          .filter(take -> was.checked() || take.component() != Component.INSERT)
          .map(Take::insert)
          .filter(what -> !known.contains(what))
          .forEach(taken::add);
    }
    List<Lot> lots = new ArrayList<>(was.lots());
    rush.materials().stock().lots().stream()
        .filter(lot -> taken.contains(lot.what()))
        .forEach(lots::add);
    List<Receipt> receipts = new ArrayList<>(was.receipts());
    rush.materials().stock().receipts().stream()
        .filter(receipt -> taken.contains(receipt.what()))
        .forEach(receipts::add);
    return new Stock(was.checked(), lots, receipts);
  }

  /** What kits need; an earlier week without any takes over that of the new lines. */
  static Kitting of(Kitting was, RushWeek rush) {
    Kitting more = rush.kitting();
    return new Kitting(
        was.lookAlikes(),
        was.declarations(),
        was.lotPapers(),
        both(was.tips(), more.tips(), tip -> tip.of() + ":" + tip.id()),
        both(was.recipes(), more.recipes(), r -> r.resin() + ":" + r.colour()),
        was.resinLots(),
        was.dryers(),
        was.bringing());
  }

  private static <T> List<T> both(List<T> was, List<T> more, Function<T, String> id) {
    Set<String> known = new HashSet<>(was.stream().map(id).toList());
    List<T> both = new ArrayList<>(was);
    more.stream().filter(each -> known.add(id.apply(each))).forEach(both::add);
    return both;
  }
}
