package pressweek.examples;

import java.util.Locale;

/**
 * The {@code plant.json} of a drawn plant. The figures here are those by which its orders are
 * scaled: five days of two shifts, a shorter one on Saturday, setters for a fifth of the presses
 * and operators for most of them.
 */
final class PlantSheet {
  static final int EFFICIENCY_PCT = 85;
  static final int SCRAP_PCT = 3;
  static final int STARTUP_SHOTS = 10;
  static final int UNLOAD_S = 5;
  static final int INDEX_S = 2;

  private static final String WEEKDAYS = "\"MON\", \"TUE\", \"WED\", \"THU\", \"FRI\"";

  private static final String TEXT =
      """
      {
        "name": "Drawn plant of %1$d lines and %2$d presses, seed %3$d",
        "zone": "Europe/Berlin",
        "plan_start": "%4$sT06:00",
        "horizon_days": %5$d,
        "shifts": [
          %6$s,
          %7$s,
          %8$s
        ],
        "calendars": {"all": ["early", "late", "saturday"]},
        "efficiency_pct": %9$d,
        "change": {"mold_min": 60, "dismount_pct": 40, "tooling_min": 20, "food_clear_min": 30, "first_article_min": 10},
        "run": {"scrap_pct": %10$d, "startup_shots": %11$d, "unload_s": %12$d, "index_s": %13$d},
        "food": {"needs": ["food"], "kept_with_food": []},
        "rates": {"currency": "EUR", "late_step": 100, "late_day": 60, "change_h": 45, "purge_kg": 3, "kept_press_h": 25, "unplaced": 400}
      }
      """;

  private PlantSheet() {}

  static String json(PlantSize size, long seed) {
    return String.format(
        Locale.ROOT,
        TEXT,
        size.jobs(),
        size.presses(),
        seed,
        PlantSize.START,
        7 * size.weeks(),
        shift("early", WEEKDAYS, "06:00", "14:00", breakAt("10:00", "10:30")) + crew(size),
        shift("late", WEEKDAYS, "14:00", "22:00", breakAt("18:00", "18:30")) + crew(size),
        shift("saturday", "\"SAT\"", "06:00", "12:00", "") + crew(size),
        EFFICIENCY_PCT,
        SCRAP_PCT,
        STARTUP_SHOTS,
        UNLOAD_S,
        INDEX_S);
  }

  private static String shift(String name, String days, String from, String to, String breaks) {
    return String.format(
        Locale.ROOT,
        "{\"name\": \"%s\", \"days\": [%s], \"from\": \"%s\", \"to\": \"%s\", \"breaks\": [%s], ",
        name,
        days,
        from,
        to,
        breaks);
  }

  private static String breakAt(String from, String to) {
    return String.format(Locale.ROOT, "{\"from\": \"%s\", \"to\": \"%s\"}", from, to);
  }

  /** Operators for nine of ten vertical presses and, a quarter each, for the horizontal ones. */
  private static String crew(PlantSize size) {
    int vertical = size.verticalPresses();
    int tenths = Math.max(10, vertical * 9 + (size.presses() - vertical) * 10 / 4);
    return String.format(
        Locale.ROOT, "\"setters\": %d, \"operators\": %s}", size.setters(), Sheet.tenths(tenths));
  }
}
