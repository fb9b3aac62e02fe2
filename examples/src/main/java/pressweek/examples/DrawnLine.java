package pressweek.examples;

import java.util.List;
import java.util.Optional;

/**
 * A drawn order line.
 *
 * @param id order and line, {@code 10023/2}
 * @param head what it is of
 * @param resin resin
 * @param colour colour
 * @param insert insert; empty for an all-plastic head
 * @param food true for food-grade work
 * @param workday working day on which it is due, 0 for the day of the start
 * @param quantity pieces
 */
record DrawnLine(
    String id,
    DrawnHead head,
    String resin,
    String colour,
    Optional<DrawnInsert> insert,
    boolean food,
    int workday,
    int quantity) {
  /** Order number. */
  String order() {
    return id.substring(0, id.indexOf('/'));
  }

  /** Line number within the order. */
  String line() {
    return id.substring(id.indexOf('/') + 1);
  }

  /** Item code. */
  String item() {
    return head.symbol() + "-" + resin + "-" + colour + insert.map(i -> "-" + i.id()).orElse("");
  }

  /** Presses that may run it. */
  List<DrawnPress> presses() {
    return head.mold().presses().stream()
        .filter(p -> food ? p.takesFood() : !p.foodOnly())
        .toList();
  }

  /** The same line for so many pieces. */
  DrawnLine withQuantity(int pieces) {
    return new DrawnLine(id, head, resin, colour, insert, food, workday, pieces);
  }

  /** Mean tenths of a second a shot on its presses. */
  int cycleTenths() {
    int load = insert.map(DrawnInsert::loadTenths).orElse(0);
    int sum = presses().stream().mapToInt(p -> head.mold().cycleTenths(p, load)).sum();
    return sum / presses().size();
  }

  /** Shots for its pieces and their scrap. */
  int shots() {
    int goodPerHundred = (100 - PlantSheet.SCRAP_PCT) * head.mold().cavities();
    return (100 * quantity + goodPerHundred - 1) / goodPerHundred;
  }

  /**
   * Inserts that it needs at most: those in all its shots and in start-up shots, with some to
   * spare.
   */
  int insertPieces() {
    int parts = (shots() + PlantSheet.STARTUP_SHOTS) * head.mold().cavities();
    return parts + parts / 50 + 10;
  }
}
