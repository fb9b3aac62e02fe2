package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pressweek.data.plan.Bound;

/**
 * The sum of all parts of a bound for one way to set aside charges for the close.
 *
 * @param singly what the jobs cost singly
 * @param moldExcess by how much each loaded mold exceeds that
 * @param presses by how much loads of presses exceed both
 * @param close least charge for the close
 */
record Figure(Singly singly, long[] moldExcess, List<PressLoads.Best> presses, long close) {
  private static final int NAMED = 5;

  Figure {
    presses = List.copyOf(presses);
  }

  /** All parts together, thousandths of a cent. */
  long amount() {
    return singly.sum()
        + molds().mapToLong(m -> moldExcess[m]).sum()
        + presses.stream().mapToLong(PressLoads.Best::excess).sum()
        + close;
  }

  /** Molds that no load of presses takes the place of. */
  private IntStream molds() {
    Set<Integer> taken =
        presses.stream().flatMap(p -> p.molds().stream()).collect(Collectors.toSet());
    return IntStream.range(0, moldExcess.length).filter(m -> !taken.contains(m));
  }

  /** What it is made of, in words. */
  List<Bound.Part> parts(Lines lines, List<MoldLoads.Loaded> loaded) {
    List<Bound.Part> parts = new ArrayList<>();
    long late = IntStream.range(0, lines.size()).filter(j -> singly.least()[j] > 0).count();
    parts.add(
        new Bound.Part(
            words(late, "line")
                + " late or without a place even if each had its best press to itself",
            singly.sum()));
    int[] over = molds().filter(m -> moldExcess[m] > 0).toArray();
    String names =
        IntStream.of(over)
            .boxed()
            .sorted((a, b) -> Long.compare(moldExcess[b], moldExcess[a]))
            .limit(NAMED)
            .map(m -> loaded.get(m).mold())
            .collect(Collectors.joining(", "));
    parts.add(
        new Bound.Part(
            words(over.length, "mold")
                + " with more work than fits before its lines are due: "
                + names
                + (over.length > NAMED ? " and others" : ""),
            IntStream.of(over).mapToLong(m -> moldExcess[m]).sum()));
    for (PressLoads.Best best : presses) {
      parts.add(
          new Bound.Part(
              words(best.jobs(), "line")
                  + " that need more hours than "
                  + (best.presses() == 1
                      ? "their press works"
                      : "their " + best.presses() + " presses work")
                  + " before they are due",
              best.excess()));
    }
    parts.add(new Bound.Part("time until the last run must end", close));
    return parts;
  }

  /** A number of things. */
  static String words(long count, String what) {
    return String.format(Locale.ROOT, "%,d %s%s", count, what, count == 1 ? "" : "s");
  }
}
