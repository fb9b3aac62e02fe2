package pressweek.reports.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;
import pressweek.reports.schedule.PlanBook;

/** Free stock of each component as the plan uses it: what is reserved or held is not in it. */
final class FreeStock {
  private final Stock stock;
  private final int endMin;
  private final Map<Key, Long> pulledFrom = new HashMap<>();
  private final Map<String, List<Use>> uses = new HashMap<>();

  private record Key(String what, String lot, String bin) {}

  /** What a run takes from free stock: how much, and when it must be at the press. */
  record Use(Run run, int needMin, long pieces) {}

  FreeStock(PlanBook book) {
    stock = book.plan().problem().materials().stock();
    endMin = book.plan().problem().plant().hours().endMin();
    Map<Key, Use> byRun = new HashMap<>();
    for (Pull pull : book.plan().pulls()) {
      pulledFrom.merge(
          new Key(pull.insert(), pull.lot(), pull.bin()), (long) pull.pieces(), Long::sum);
      book.run(pull.run())
          .ifPresent(
              run ->
                  byRun.merge(
                      new Key(pull.insert(), run.id(), ""),
                      new Use(run, pull.needByMin(), pull.pieces()),
                      (a, b) -> new Use(run, a.needMin(), a.pieces() + b.pieces())));
    }
    byRun.forEach(
        (key, use) -> {
          long pieces = use.pieces() - reserved(book, use.run(), key.what());
          uses.computeIfAbsent(key.what(), what -> new ArrayList<>())
              .add(new Use(use.run(), use.needMin(), pieces));
        });
  }

  private static long reserved(PlanBook book, Run run, String what) {
    boolean changed =
        run.change().kinds().stream().anyMatch(kind -> kind != ChangeKind.FOOD_CLEARANCE);
    return book.option(run).stream()
        .flatMap(option -> option.making().takes().stream())
        .filter(take -> take.insert().equals(what))
        .mapToLong(take -> take.reserved(changed))
        .sum();
  }

  /** What the runs of the plan take of a component. */
  List<Use> uses(String what) {
    return uses.getOrDefault(what, List.of());
  }

  /**
   * What has come in free by a minute, taken or not; of a lot that has expired by then only what
   * the plan takes from it.
   */
  long cameIn(String what, int minute) {
    long lots =
        stock.lots().stream()
            .filter(lot -> lot.what().equals(what) && free(lot))
            .mapToLong(lot -> lot.expiresMin().orElse(endMin) > minute ? lot.onHand() : used(lot))
            .sum();
    long received =
        receipts(what).stream()
            .filter(receipt -> receipt.usableMin() <= minute)
            .mapToLong(Receipt::quantity)
            .sum();
    return lots + received;
  }

  private static boolean free(Lot lot) {
    return lot.status() == LotStatus.USABLE && lot.reservedFor().isEmpty();
  }

  private long used(Lot lot) {
    return Math.min(
        lot.onHand(), pulledFrom.getOrDefault(new Key(lot.what(), lot.id(), lot.bin()), 0L));
  }

  /** Pieces in lots that are held. */
  long held(String what) {
    return stock.lots().stream()
        .filter(lot -> lot.what().equals(what) && lot.status() == LotStatus.HELD)
        .mapToLong(Lot::onHand)
        .sum();
  }

  /** Deliveries of a component by the time from which they may be used. */
  List<Receipt> receipts(String what) {
    return stock.receipts().stream()
        .filter(receipt -> receipt.what().equals(what))
        .sorted((a, b) -> Integer.compare(a.usableMin(), b.usableMin()))
        .toList();
  }

  /** What is free from a minute to the end of the week whatever the plan still takes. */
  long spare(String what, int from) {
    IntStream changes =
        IntStream.concat(
            IntStream.of(from, endMin - 1),
            IntStream.concat(
                uses(what).stream().mapToInt(Use::needMin),
                stock.lots().stream().flatMapToInt(lot -> lot.expiresMin().stream())));
    long least =
        changes
            .filter(minute -> minute >= from && minute < endMin)
            .mapToLong(minute -> cameIn(what, minute) - taken(what, minute))
            .min()
            .orElse(0);
    return Math.max(0, least);
  }

  private long taken(String what, int minute) {
    return uses(what).stream().filter(use -> use.needMin() <= minute).mapToLong(Use::pieces).sum();
  }
}
