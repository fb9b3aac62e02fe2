package pressweek.examples;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Draws the cartons and labels of items and counts what all lines need of them, of resin and of
 * masterbatch.
 */
final class ComponentSheet {
  private static final List<Integer> PARTS_IN_A_CARTON = List.of(25, 50, 100, 200);
  private static final int TENTHS_IN_A_KILOGRAM = 10_000;

  private final Sheet bom = new Sheet("item", "component", "pieces", "per", "kind");
  private final Map<String, Integer> pieces = new TreeMap<>();
  private final Map<String, Long> tenths = new TreeMap<>();

  ComponentSheet(Draw draw, List<DrawnLine> lines) {
    Map<String, Integer> cartons = new TreeMap<>();
    Set<String> listed = new LinkedHashSet<>();
    for (DrawnLine line : lines) {
      int parts = cartons.computeIfAbsent(line.head().symbol(), head -> draw.of(PARTS_IN_A_CARTON));
      if (listed.add(line.item())) {
        bom.row(line.item(), "CARTON-" + parts, 1, parts, "carton");
        bom.row(line.item(), "LABEL", 2, parts, "label");
      }
      int full = (line.quantity() + parts - 1) / parts;
      pieces.merge("CARTON-" + parts, full, Integer::sum);
      pieces.merge("LABEL", 2 * full, Integer::sum);
      plastic(line);
    }
  }

  /** The plastic of all shots and of those of the start, as if all of it were resin. */
  private void plastic(DrawnLine line) {
    DrawnMold mold = line.head().mold();
    long shots = (long) line.shots() + PlantSheet.STARTUP_SHOTS;
    long all = shots * (mold.cavities() * mold.partTenths() + mold.runnerTenths());
    tenths.merge(line.resin(), all, Long::sum);
    if (!line.colour().equals(ResinSheet.NATURAL)) {
      long masterbatch = all * ResinSheet.LET_DOWN_PCT / 100 + 1;
      tenths.merge(ResinSheet.masterbatch(line.colour()), masterbatch, Long::sum);
    }
  }

  /** Pieces of cartons and labels for all lines. */
  Map<String, Integer> pieces() {
    return pieces;
  }

  /** Kilograms of resins and masterbatches for all lines, rounded up. */
  Map<String, Integer> kilograms() {
    Map<String, Integer> kilograms = new TreeMap<>();
    tenths.forEach((what, all) -> kilograms.put(what, (int) (all / TENTHS_IN_A_KILOGRAM + 1)));
    return kilograms;
  }

  /** The file {@code bom.csv}. */
  String csv() {
    return bom.text();
  }
}
