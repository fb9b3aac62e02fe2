package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Draws order lines. Their pieces fill the presses ({@link RunLengths}); most runs are near the
 * mean, a few are three times as long.
 */
final class OrderSheet {
  /** How long a run is, of a hundred the mean. */
  private static final List<Integer> LENGTHS =
      List.of(20, 30, 45, 55, 65, 75, 85, 95, 110, 130, 170, 320);

  /** Customers of our own invention. */
  private static final List<String> CUSTOMERS =
      List.of(
          "Tarnbeck Galleys",
          "Merrowdale Dials",
          "Pinnock & Vane",
          "Skarholt Deckware",
          "Oxlip Mixers",
          "Dunmarrow Ovens",
          "Ravelstone Stages",
          "Hobbin Winches");

  private final Draw draw;
  private final PlantSize size;

  OrderSheet(Draw draw, PlantSize size) {
    this.draw = draw;
    this.size = size;
  }

  /** All lines, in the order of the file. */
  List<DrawnLine> lines(List<DrawnHead> heads) {
    List<Integer> weights = heads.stream().map(DrawnHead::popularity).toList();
    List<DrawnLine> lines = new ArrayList<>();
    int order = 10000;
    int line = 0;
    for (int i = 0; i < size.jobs(); i++) {
      boolean next = line == 0 || draw.chance(60);
      order += next ? 1 : 0;
      line = next ? 1 : line + 1;
      lines.add(line(order + "/" + line, heads.get(draw.weighted(weights))));
    }
    return scaled(lines);
  }

  /** A line whose quantity is still the length of its run, of a hundred the mean. */
  private DrawnLine line(String id, DrawnHead head) {
    boolean food = head.canBeFood() && draw.chance(20);
    List<String> resins = head.resins().stream().filter(r -> !food || ResinSheet.food(r)).toList();
    List<DrawnInsert> inserts = head.inserts().stream().filter(i -> !food || i.food()).toList();
    return new DrawnLine(
        id,
        head,
        draw.of(resins),
        draw.of(food ? ResinSheet.FOOD_COLOURS : head.colours()),
        inserts.isEmpty() ? Optional.empty() : Optional.of(draw.of(inserts)),
        food,
        workday(),
        draw.of(LENGTHS));
  }

  /** A few lines are overdue, a few are due after the horizon, the others are spread over it. */
  private int workday() {
    int kind = draw.below(100);
    if (kind < 4) {
      return -draw.between(1, 3);
    }
    return kind < 12 ? size.weeks() * 5 + draw.between(1, 4) : draw.between(1, size.weeks() * 5);
  }

  private List<DrawnLine> scaled(List<DrawnLine> lines) {
    List<Integer> shares = lines.stream().map(DrawnLine::quantity).toList();
    List<Integer> minutes = RunLengths.of(size, lines, shares);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> scaled(lines.get(i), minutes.get(i)))
        .toList();
  }

  private static DrawnLine scaled(DrawnLine line, long minutes) {
    long shots = minutes * 600 * PlantSheet.EFFICIENCY_PCT / 100 / line.cycleTenths();
    long good = shots * line.head().mold().cavities() * (100 - PlantSheet.SCRAP_PCT) / 100;
    return line.withQuantity((int) Math.max(10, good / 10 * 10));
  }

  /**
   * The lines as {@code orders.csv}; those due on Wednesday or later may not start before Tuesday
   * now and then.
   */
  String csv(List<DrawnLine> lines) {
    Sheet sheet =
        new Sheet(
            "order",
            "line",
            "customer",
            "item",
            "quantity",
            "due",
            "weight",
            "earliest",
            "needs",
            "insert",
            "resin",
            "colour");
    for (DrawnLine l : lines) {
      boolean late = l.workday() >= 2 && draw.chance(6);
      sheet.row(
          l.order(),
          l.line(),
          CUSTOMERS.get(Integer.parseInt(l.order()) * 7 % CUSTOMERS.size()),
          l.item(),
          l.quantity(),
          PlantSize.workday(l.workday()),
          draw.of(List.of("1", "1", "1", "1", "1", "1", "0.5", "2", "2", "5")),
          late ? PlantSize.START.plusDays(1) + "T06:00" : "",
          l.food() ? "food" : "",
          l.insert().map(DrawnInsert::id).orElse(""),
          l.resin(),
          l.colour());
    }
    return sheet.text();
  }
}
