package pressweek.app.sweep;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import pressweek.data.stress.Chance;
import pressweek.data.stress.Estimate;
import pressweek.data.stress.LineChance;
import pressweek.solver.stress.Stress;

/**
 * What the replays of a plan of a sweep come to, as JSON with a fixed number of decimals: the same
 * replays give the same text on every machine. Money in thousandths of a cent.
 *
 * @param node the JSON
 */
record ReplayFigures(JsonNode node) {
  private static final int DECIMALS = 4;

  /** Adds the figures to an object. */
  static void put(ObjectNode object, Replaying replaying, Stress.Replayed replayed) {
    object.put("count", replaying.count());
    object.put("seed", replaying.seed());
    put(object.putObject("on_time_lines"), replayed.totals().onTimeLines(), DECIMALS);
    put(object.putObject("late_h"), replayed.totals().lateHours(), DECIMALS);
    put(object.putObject("avoidable_cost"), replayed.totals().cost(), 0);
    put(object.putObject("all_on_time"), replayed.totals().allOnTime());
    ArrayNode lines = object.putArray("lines");
    for (LineChance line : replayed.lines()) {
      ObjectNode one = lines.addObject();
      one.put("line", line.line());
      put(one, line.onTime());
      one.put("late_h", rounded(line.lateHours(), DECIMALS));
    }
  }

  private static void put(ObjectNode object, Estimate estimate, int decimals) {
    object.put("mean", rounded(estimate.mean(), decimals));
    object.put("low", rounded(estimate.low(), decimals));
    object.put("high", rounded(estimate.high(), decimals));
  }

  private static void put(ObjectNode object, Chance chance) {
    object.put("on_time", rounded(chance.share(), DECIMALS));
    object.put("low", rounded(chance.low(), DECIMALS));
    object.put("high", rounded(chance.high(), DECIMALS));
  }

  private static BigDecimal rounded(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /** How many replays. */
  int count() {
    return node.path("count").asInt();
  }

  /** Lines on time. */
  Estimate onTimeLines() {
    return estimate("on_time_lines");
  }

  /** Hours late, all lines together. */
  Estimate lateHours() {
    return estimate("late_h");
  }

  /** Avoidable cost, thousandths of a cent. */
  Estimate cost() {
    return estimate("avoidable_cost");
  }

  private Estimate estimate(String key) {
    JsonNode of = node.path(key);
    return new Estimate(
        of.path("mean").asDouble(), of.path("low").asDouble(), of.path("high").asDouble());
  }
}
