package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Aim;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.Effort;
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
  private static final double LEAST_SURE_PCT = 50;
  private static final double MOST_CAREFUL_PCT = 99.9;
  private static final int MOST_SLACKS = 8;
  private static final BigDecimal LEAST_SLACK_H = new BigDecimal("0.1");
  private static final BigDecimal MOST_SLACK_H = BigDecimal.valueOf(744);
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);
  private static final int MOST_DAYS_ON = 90;
  private static final int MOST_TRIED = 100;
  private static final int LEAST_TRIED_RUNS = 1_000;
  private static final int MOST_TRIED_RUNS = 100_000_000;
  private static final int LEAST_REPLAYS = 20;
  private static final int MOST_REPLAYS = 10_000;

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
            fields.decimal("receipt_late_days", 0, MOST_DAYS)),
        new Aim(fields.decimal("sure_pct", LEAST_SURE_PCT, 100), slack(fields)),
        new Effort(
            fields.whole("after_horizon_days", 0, MOST_DAYS_ON),
            fields.whole("tried_of_a_kind", 0, MOST_TRIED),
            fields.whole("tried_runs", LEAST_TRIED_RUNS, MOST_TRIED_RUNS),
            fields.whole("sure_replays", LEAST_REPLAYS, MOST_REPLAYS),
            fields.decimal("careful_pct", LEAST_SURE_PCT, MOST_CAREFUL_PCT)));
  }

  /** Minutes, each once and the fewest first; an empty list asks nothing. */
  private static List<Integer> slack(JsonFields fields) {
    SortedSet<Integer> minutes = new TreeSet<>();
    for (JsonTree item : fields.items("slack_h")) {
      if (item instanceof JsonTree.Num hours
          && hours.value().compareTo(LEAST_SLACK_H) >= 0
          && hours.value().compareTo(MOST_SLACK_H) <= 0) {
        minutes.add(hours.value().multiply(HOUR).setScale(0, RoundingMode.HALF_UP).intValueExact());
      } else {
        fields.wrong("slack_h", item, "hours from 0.1 to 744, or a list of them");
      }
    }
    if (minutes.size() > MOST_SLACKS) {
      fields.wrong("slack_h", fields.value("slack_h"), "at most " + MOST_SLACKS + " of them");
    }
    return List.copyOf(minutes);
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
