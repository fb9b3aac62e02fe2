package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.Lot;
import pressweek.reports.schedule.PlanBook;

/**
 * How every pull leaves its bin, in order of time: what is there, what is brought where the plant
 * brings whole cartons or bins, and what comes back. More than the run takes is brought only when
 * no other run needs the rest before this one ends.
 */
final class Draws {
  private final PlanBook book;
  private final Bringing bringing;
  private final Map<Pull, Draw> draws = new IdentityHashMap<>();

  private record Place(String what, String lot, String bin) {
    static Place of(Pull pull) {
      return new Place(pull.insert(), pull.lot(), pull.bin());
    }
  }

  private Draws(PlanBook book) {
    this.book = book;
    this.bringing = book.kitting().bringing();
  }

  static Draws of(PlanBook book) {
    Draws all = new Draws(book);
    Map<Place, Integer> inBin = new HashMap<>();
    for (Lot lot : book.plan().problem().materials().stock().lots()) {
      inBin.merge(new Place(lot.what(), lot.id(), lot.bin()), lot.onHand(), Integer::sum);
    }
    Map<Place, List<Pull>> byPlace = new HashMap<>();
    for (Pull pull : book.plan().pulls()) {
      byPlace.computeIfAbsent(Place.of(pull), p -> new ArrayList<>()).add(pull);
    }
    byPlace.forEach((place, pulls) -> all.empty(Optional.ofNullable(inBin.get(place)), pulls));
    return all;
  }

  /** How a pull of the plan leaves its bin. */
  Draw of(Pull pull) {
    return draws.getOrDefault(pull, new Draw(Optional.empty(), pull.pieces(), 0, ""));
  }

  private void empty(Optional<Integer> onHand, List<Pull> pulls) {
    int taken = 0;
    for (int i = 0; i < pulls.size(); i++) {
      Pull pull = pulls.get(i);
      int before = taken;
      Optional<Integer> there = onHand.map(n -> n - before).filter(n -> n >= pull.pieces());
      int others = needed(pulls.subList(i + 1, pulls.size()), end(pull));
      draws.put(pull, draw(pull, there, others));
      taken += pull.pieces();
    }
  }

  private int end(Pull pull) {
    return book.run(pull.run()).map(Run::endMin).orElse(pull.needByMin());
  }

  private static int needed(List<Pull> later, int endMin) {
    return later.stream().filter(p -> p.needByMin() < endMin).mapToInt(Pull::pieces).sum();
  }

  private Draw draw(Pull pull, Optional<Integer> there, int others) {
    boolean weighed = weighed(pull);
    int wished =
        switch (weighed ? Bringing.By.PIECES : bringing.by()) {
          case PIECES -> pull.pieces();
          case CARTONS -> cartons(pull.pieces());
          case BINS -> there.orElse(pull.pieces());
        };
    boolean free = there.map(n -> n - others >= wished).orElse(true);
    int bring = free ? wished : pull.pieces();
    int back = bring - pull.pieces();
    return new Draw(there, bring, back, words(pull, there, bring, weighed ? " g" : ""));
  }

  private boolean weighed(Pull pull) {
    return book.run(pull.run()).filter(r -> book.component(r, pull.insert()).weighed()).isPresent();
  }

  private int cartons(int pieces) {
    int carton = bringing.cartonPieces();
    return Math.toIntExact(((long) pieces + carton - 1) / carton * carton);
  }

  private static String words(Pull pull, Optional<Integer> there, int bring, String unit) {
    String bin = pull.bin().isEmpty() ? "its bin" : "bin " + pull.bin();
    String takes =
        there
            .map(
                n ->
                    n == pull.pieces()
                        ? "takes all " + count(n) + unit + " in " + bin
                        : "takes " + count(pull.pieces()) + " of " + count(n) + unit + " in " + bin)
            .orElse("");
    if (bring == pull.pieces()) {
      return takes;
    }
    String brings =
        "bring " + count(bring) + ", at least " + count(bring - pull.pieces()) + " come back";
    return takes.isEmpty() ? brings : takes + "; " + brings;
  }

  private static String count(int pieces) {
    return String.format(Locale.ROOT, "%,d", pieces);
  }
}
