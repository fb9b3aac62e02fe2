package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws presses. Vertical ones come first, then horizontal ones, each kind from small to large:
 * {@code P001,vertical,shuttle,2,350,...}
 */
final class PressSheet {
  private static final int[][] VERTICAL = {{350, 60}, {500, 95}, {750, 150}, {1000, 220}};
  private static final int[][] HORIZONTAL = {{500, 95}, {800, 160}, {1200, 260}, {1600, 400}};
  private static final List<String> TABLES = List.of("fixed", "shuttle", "fixed", "rotary");

  private PressSheet() {}

  static List<DrawnPress> draw(PlantSize size) {
    List<DrawnPress> presses = new ArrayList<>();
    int vertical = size.verticalPresses();
    for (int i = 0; i < size.presses(); i++) {
      boolean up = i < vertical;
      int place = up ? i : i - vertical;
      int[] build =
          up ? VERTICAL[4 * place / vertical] : HORIZONTAL[4 * place / (size.presses() - vertical)];
      String table = up ? TABLES.get(place % 4) : "fixed";
      presses.add(
          new DrawnPress(
              String.format(Locale.ROOT, "P%03d", i + 1),
              up,
              table,
              table.equals("fixed") ? 1 : 2,
              build[0],
              build[1],
              food(up, place)));
    }
    return List.copyOf(presses);
  }

  static String csv(List<DrawnPress> presses) {
    Sheet sheet =
        new Sheet(
            "press",
            "cell",
            "orientation",
            "table",
            "lower_halves",
            "clamp_kn",
            "shot_ps_g",
            "rate_per_h",
            "food");
    for (DrawnPress p : presses) {
      sheet.row(
          p.id(),
          p.vertical() ? "V" : "H",
          p.vertical() ? "vertical" : "horizontal",
          p.table(),
          p.lowerHalves(),
          p.clampKn(),
          p.shotPsG(),
          p.ratePerHour(),
          p.food());
    }
    return sheet.text();
  }

  /**
   * Of fourteen vertical presses the last is for food-grade work alone; of seven presses one is
   * kept for it and one is open to it.
   */
  private static String food(boolean vertical, int place) {
    if (vertical && place % 14 == 13) {
      return "only";
    }
    return switch (place % 7) {
      case 0 -> "kept";
      case 3 -> "open";
      default -> "never";
    };
  }
}
