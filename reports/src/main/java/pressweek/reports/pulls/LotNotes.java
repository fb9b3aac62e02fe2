package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Lot;
import pressweek.reports.schedule.PlanBook;

/**
 * What to mind about the lot of a pull: that it expires while its run goes on, and that a run whose
 * lots must be told apart takes several. A change of lot within a run begins a new sub-lot of what
 * is made.
 */
final class LotNotes {
  private final PlanBook book;
  private final Map<Key, List<Pull>> together = new HashMap<>();
  private final Map<Name, Lot> lots = new HashMap<>();

  private record Key(String run, String what) {}

  private record Name(String what, String lot, String bin) {}

  LotNotes(PlanBook book) {
    this.book = book;
    for (Pull pull : book.plan().pulls()) {
      Key key = new Key(pull.run(), pull.insert());
      together.computeIfAbsent(key, k -> new ArrayList<>()).add(pull);
    }
    for (Lot lot : book.plan().problem().materials().stock().lots()) {
      lots.putIfAbsent(new Name(lot.what(), lot.id(), lot.bin()), lot);
    }
  }

  /** The notes of a pull. */
  List<String> of(Pull pull) {
    Optional<Run> run = book.run(pull.run());
    List<String> notes = new ArrayList<>();
    run.flatMap(r -> expiry(pull, r)).ifPresent(notes::add);
    run.filter(r -> book.job(r).traced()).flatMap(r -> subLots(pull)).ifPresent(notes::add);
    return notes;
  }

  private Optional<String> expiry(Pull pull, Run run) {
    Lot lot = lots.get(new Name(pull.insert(), pull.lot(), pull.bin()));
    return lot == null || lot.expiresMin().orElse(Integer.MAX_VALUE) >= run.endMin()
        ? Optional.empty()
        : Optional.of(
            "lot expires "
                + book.clock().brief(lot.expiresMin().orElseThrow())
                + ", before its run ends: use it first");
  }

  private Optional<String> subLots(Pull pull) {
    List<String> names =
        together.getOrDefault(new Key(pull.run(), pull.insert()), List.of()).stream()
            .filter(p -> !p.lot().isEmpty() || p.receiptMin() > 0)
            .map(this::name)
            .distinct()
            .toList();
    return names.size() < 2
        ? Optional.empty()
        : Optional.of(
            "from "
                + names.size()
                + " lots, in this order: "
                + String.join(", ", names)
                + "; each begins a new sub-lot: do not mix them, and write down where one ends");
  }

  private String name(Pull pull) {
    return pull.lot().isEmpty() ? "receipt " + book.clock().brief(pull.receiptMin()) : pull.lot();
  }
}
