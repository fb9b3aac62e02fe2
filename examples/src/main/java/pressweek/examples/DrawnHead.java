package pressweek.examples;

import java.util.List;

/**
 * A drawn head: what the lines order, in some resins, colours and inserts.
 *
 * @param symbol head symbol, the beginning of its item codes
 * @param popularity weight by which lines are drawn for it
 * @param resins resins it is sold in
 * @param colours colours it is sold in
 * @param inserts inserts it is sold with; empty for an all-plastic head
 * @param mold the mold that makes it
 * @param copies ids of its molds, one or two
 */
record DrawnHead(
    String symbol,
    int popularity,
    List<String> resins,
    List<String> colours,
    List<DrawnInsert> inserts,
    DrawnMold mold,
    List<String> copies) {
  DrawnHead {
    resins = List.copyOf(resins);
    colours = List.copyOf(colours);
    inserts = List.copyOf(inserts);
    copies = List.copyOf(copies);
  }

  /** True when its mold is hung on vertical presses. */
  boolean vertical() {
    return mold.presses().get(0).vertical();
  }

  /** Threads of its inserts. */
  List<String> threads() {
    return inserts.stream().map(DrawnInsert::thread).distinct().sorted().toList();
  }

  /** The tooling set for a thread: one a thread when there are several, else none. */
  String tooling(String thread) {
    return threads().size() < 2 ? "" : symbol + "-N" + (threads().indexOf(thread) + 1);
  }

  /** True when there is a press, a resin and an insert for food-grade work. */
  boolean canBeFood() {
    return mold.presses().stream().anyMatch(DrawnPress::takesFood)
        && resins.stream().anyMatch(ResinSheet::food)
        && (inserts.isEmpty() || inserts.stream().anyMatch(DrawnInsert::food));
  }
}
