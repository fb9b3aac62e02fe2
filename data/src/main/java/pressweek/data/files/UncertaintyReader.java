package pressweek.data.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.LateReceipts;
import pressweek.data.problem.Uncertainty.PressBreakdown;
import pressweek.data.problem.Uncertainty.Spread;

/** Reads {@code uncertainty} of {@code plant.json}: how far a week may differ from its plan. */
final class UncertaintyReader {
  private static final double LEAST_PCT = 10;
  private static final double MOST_PCT = 1000;
  private static final double MOST_SPREAD_PCT = 300;
  private static final double MOST_H = 100_000;
  private static final double MOST_MIN = 100_000;
  private static final double MOST_DAYS = 366;

  private UncertaintyReader() {}

  static Uncertainty read(JsonFields fields) {
    Breakdown all = breakdown(fields);
    return new Uncertainty(
        new Spread(
            fields.decimal("cycle_pct", LEAST_PCT, MOST_PCT),
            fields.decimal("cycle_spread_pct", 0, MOST_SPREAD_PCT)),
        fields.decimal("scrap_spread_pct", 0, MOST_SPREAD_PCT),
        new Spread(
            fields.decimal("change_pct", LEAST_PCT, MOST_PCT),
            fields.decimal("change_spread_pct", 0, MOST_SPREAD_PCT)),
        all,
        presses(fields, all),
        new LateReceipts(
            fields.decimal("receipt_late_pct", 0, 100),
            fields.decimal("receipt_late_days", 0, MOST_DAYS)));
  }

  private static Breakdown breakdown(JsonFields fields) {
    return new Breakdown(
        fields.decimal("breakdown_every_h", 0, MOST_H),
        fields.decimal("repair_min", 0, MOST_MIN),
        fields.decimal("repair_spread_pct", 0, MOST_SPREAD_PCT));
  }

  /** What a press does not say is as for all. */
  private static List<PressBreakdown> presses(JsonFields fields, Breakdown all) {
    JsonTree.Obj shape =
        new JsonTree.Obj(
            0,
            Map.of(
                "press", new JsonTree.Text(0, ""),
                "breakdown_every_h", number(all.everyH()),
                "repair_min", number(all.repairMin()),
                "repair_spread_pct", number(all.repairSpreadPct())));
    List<PressBreakdown> presses = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (JsonTree.Obj given : fields.objects("presses")) {
      JsonFields one = new JsonFields(fields.notes(), fields.path("presses") + ".", given, shape);
      String press = one.text("press");
      if (press.isEmpty() || !seen.add(press)) {
        fields.wrong("presses", given, "a \"press\" in each, every press once");
      } else {
        presses.add(new PressBreakdown(press, breakdown(one)));
      }
    }
    return presses;
  }

  private static JsonTree.Num number(double value) {
    return new JsonTree.Num(0, BigDecimal.valueOf(value));
  }
}
