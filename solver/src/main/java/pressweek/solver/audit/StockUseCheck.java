package pressweek.solver.audit;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Take;

/**
 * LOTS, over the week: the pulls of a component add up to what all runs take of it, and no lot or
 * receipt gives more than it holds.
 */
final class StockUseCheck {
  private StockUseCheck() {}

  /** A lot, or all receipts of a component that may be used from the same time. */
  private record Place(String what, String lot, String bin, int receiptMin) {}

  static void check(Week week, Findings findings) {
    Map<String, Long> used = new LinkedHashMap<>();
    for (Stay stay : week.stays()) {
      for (Take take : stay.option().making().takes()) {
        used.merge(take.insert(), stay.freePieces(take) + stay.reservedPieces(take), Long::sum);
      }
    }
    Map<String, Long> pulled = new LinkedHashMap<>();
    Set<String> unreckoned = unreckoned(week);
    for (Pull pull : week.plan().pulls()) {
      if (!unreckoned.contains(pull.run())) {
        pulled.merge(pull.insert(), (long) pull.pieces(), Long::sum);
      }
    }
    Set<String> all = new LinkedHashSet<>(used.keySet());
    all.addAll(pulled.keySet());
    for (String what : all) {
      long use = used.getOrDefault(what, 0L);
      long sum = pulled.getOrDefault(what, 0L);
      if (use != sum) {
        findings.add(
            Rule.LOTS,
            what,
            "over the week %d of %s are pulled, and its runs take %d".formatted(sum, what, use));
      }
    }
    overdrawn(week, findings);
  }

  /** Runs of the plan of which it is not known what they take, since they make no job of it. */
  private static Set<String> unreckoned(Week week) {
    Set<String> runs = new HashSet<>();
    week.plan().runs().forEach(run -> runs.add(run.id()));
    week.stays().forEach(stay -> runs.remove(stay.run().id()));
    return runs;
  }

  private static void overdrawn(Week week, Findings findings) {
    Map<Place, Long> left = new LinkedHashMap<>();
    week.problem().materials().stock().lots().stream()
        .forEach(
            lot ->
                left.merge(
                    new Place(lot.what(), lot.id(), lot.bin(), 0), (long) lot.onHand(), Long::sum));
    week.problem().materials().stock().receipts().stream()
        .forEach(
            receipt ->
                left.merge(
                    new Place(receipt.what(), "", "", receipt.usableMin()),
                    (long) receipt.quantity(),
                    Long::sum));
    List<Pull> named =
        week.plan().pulls().stream()
            .filter(pull -> !pull.lot().isEmpty() || pull.receiptMin() != 0)
            .toList();
    for (Pull pull : named) {
      Place place = new Place(pull.insert(), pull.lot(), pull.bin(), pull.receiptMin());
      left.computeIfPresent(place, (p, pieces) -> pieces - pull.pieces());
    }
    left.forEach(
        (place, pieces) -> {
          if (pieces < 0) {
            String name =
                place.lot().isEmpty()
                    ? "the receipt of " + week.clock().text(place.receiptMin())
                    : "lot " + place.lot();
            findings.add(
                Rule.LOTS,
                place.what(),
                "over the week %d more of %s are pulled from %s than it holds"
                    .formatted(-pieces, place.what(), name));
          }
        });
  }
}
