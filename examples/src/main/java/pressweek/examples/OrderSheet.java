package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws order lines. Their pieces are scaled so that runs and typical changes fill about 92 % of
 * the vertical presses' hours and 85 % of the horizontal ones'. Runs are 20 minutes to 20 hours
 * long, most of them near the mean and a few of three times that.
 */
final class OrderSheet {
  /** How long a run is, of a hundred the mean. */
  private static final List<Integer> LENGTHS =
      List.of(20, 30, 45, 55, 65, 75, 85, 95, 110, 130, 170, 320);

  private static final int CHANGE_MIN = 45;
  private static final int VERTICAL_PCT = 92;
  private static final int HORIZONTAL_PCT = 85;
  private static final int SHORTEST_MIN = 20;
  private static final int LONGEST_MIN = 1200;

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
    boolean food = head.canBeFood() && draw.chance(14);
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
    int vertical = size.verticalPresses();
    long up = budget(lines, true, vertical * VERTICAL_PCT);
    long flat = budget(lines, false, (size.presses() - vertical) * HORIZONTAL_PCT);
    long upLengths = lengths(lines, true);
    long flatLengths = lengths(lines, false);
    return lines.stream()
        .map(
            l ->
                scaled(
                    l,
                    l.head().vertical()
                        ? l.quantity() * up / upLengths
                        : l.quantity() * flat / flatLengths))
        .toList();
  }

  /** Minutes for runs on one orientation: its presses' minutes less changes. */
  private long budget(List<DrawnLine> lines, boolean vertical, int pressPct) {
    long count = lines.stream().filter(l -> l.head().vertical() == vertical).count();
    return (long) size.pressMinutes() * pressPct / 100 - count * CHANGE_MIN;
  }

  private static long lengths(List<DrawnLine> lines, boolean vertical) {
    return lines.stream()
        .filter(l -> l.head().vertical() == vertical)
        .mapToLong(DrawnLine::quantity)
        .sum();
  }

  private static DrawnLine scaled(DrawnLine line, long minutes) {
    long within = Math.max(SHORTEST_MIN, Math.min(LONGEST_MIN, minutes));
    long shots = within * 600 * PlantSheet.EFFICIENCY_PCT / 100 / line.cycleTenths();
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
