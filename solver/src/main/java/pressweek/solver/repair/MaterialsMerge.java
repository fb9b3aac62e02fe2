package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Component;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Link;
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

  /** What is arranged: links between parts of new lines, and how what they are made of is dried. */
  static Arrangements of(Arrangements was, RushWeek rush) {
    Arrangements more = rush.arranged();
    Set<String> jobs = new HashSet<>(rush.jobs().stream().map(Job::id).toList());
    List<Link> links = new ArrayList<>(was.links());
    more.links().stream().filter(link -> jobs.contains(link.job())).forEach(links::add);
    Drying drying = was.drying();
    List<Drying.Dried> dried =
        drying.dryers().isEmpty()
            ? drying.materials()
            : both(
                drying.materials(), more.drying().materials(), d -> d.resin() + ":" + d.colour());
    return new Arrangements(
        was.things(),
        was.devices(),
        was.services(),
        was.trials(),
        links,
        both(was.surplus(), more.surplus(), s -> s.mold() + ":" + s.item()),
        was.opening(),
        new Arrangements.Settled(
            new Drying(drying.dryers(), dried, drying.cleanMin()), was.terms()));
  }

  private static <T> List<T> both(List<T> was, List<T> more, Function<T, String> id) {
    Set<String> known = new HashSet<>(was.stream().map(id).toList());
    List<T> both = new ArrayList<>(was);
    more.stream().filter(each -> known.add(id.apply(each))).forEach(both::add);
    return both;
  }
}
