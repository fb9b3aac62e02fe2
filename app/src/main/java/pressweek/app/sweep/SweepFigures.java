package pressweek.app.sweep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Rates;
import pressweek.solver.audit.Finding;
import pressweek.solver.stress.Stress;

/**
 * What a plan of a sweep comes to, as JSON without any time of making: the same task gives the same
 * text. Money in thousandths of a cent, lateness in minutes.
 */
public final class SweepFigures {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String REPLAYS = "replays";

  private final JsonNode node;

  private SweepFigures(JsonNode node) {
    this.node = node;
  }

  /** The text of a plan's figures. */
  static String text(Plan plan, List<Finding> findings) {
    return object(plan, findings).toString();
  }

  /** The same with what its replays come to. */
  static String text(
      Plan plan, List<Finding> findings, Replaying replaying, Stress.Replayed replayed) {
    ObjectNode object = object(plan, findings);
    ReplayFigures.put(object.putObject(REPLAYS), replaying, replayed);
    return object.toString();
  }

  private static ObjectNode object(Plan plan, List<Finding> findings) {
    Figures figures = plan.figures();
    Rates rates = plan.problem().plant().rates();
    ObjectNode object = JSON.createObjectNode();
    object.put("currency", rates.shown() ? rates.currency() : "");
    object.put("avoidable_cost", figures.avoidableCost());
    ObjectNode rules = object.putObject("cost_by_rule");
    for (Rule rule : Rule.values()) {
      if (figures.costByRule().containsKey(rule)) {
        rules.put(rule.name(), figures.costByRule().get(rule));
      }
    }
    object.put("placed_lines", figures.placedLines());
    object.put("unplaced_lines", figures.unplacedLines());
    object.put("late_lines", figures.lateLines());
    object.put("late_min", figures.lateMin());
    object.put("changes", figures.changes());
    object.put("change_min", figures.changeMin());
    object.put("purge_g", figures.purgeG());
    ObjectNode late = object.putObject("late");
    late(plan).forEach(late::put);
    ArrayNode unplaced = object.putArray("unplaced");
    plan.unplaced().stream().map(line -> line.id()).sorted().forEach(unplaced::add);
    ArrayNode broken = object.putArray("findings");
    findings.stream().map(Finding::message).forEach(broken::add);
    return object;
  }

  private static Map<String, Integer> late(Plan plan) {
    Map<String, Integer> due = new HashMap<>();
    plan.problem().jobs().forEach(job -> due.put(job.id(), job.deadline().dueMin()));
    Map<String, Integer> late = new TreeMap<>();
    plan.runs().stream()
        .filter(run -> run.readyMin() > due.getOrDefault(run.job(), Integer.MAX_VALUE))
        .forEach(run -> late.put(run.job(), run.readyMin() - due.getOrDefault(run.job(), 0)));
    return late;
  }

  /** Figures from their text. */
  static SweepFigures of(String text) {
    try {
      return new SweepFigures(JSON.readTree(text));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("no figures: " + text, e);
    }
  }

  /** ISO 4217 code; empty for a plant without rates. */
  public String currency() {
    return node.path("currency").asText();
  }

  /** Avoidable cost, thousandths of a cent. */
  public long avoidableCost() {
    return node.path("avoidable_cost").asLong();
  }

  /** A whole number of the figures, by its key. */
  public long number(String key) {
    return node.path(key).asLong();
  }

  /** What a rule charges, thousandths of a cent. */
  public long cost(Rule rule) {
    return node.path("cost_by_rule").path(rule.name()).asLong();
  }

  /** What its replays come to; empty where it was not replayed. */
  Optional<ReplayFigures> replays() {
    return node.has(REPLAYS)
        ? Optional.of(new ReplayFigures(node.path(REPLAYS)))
        : Optional.empty();
  }

  /** Hard rules that an audit found broken. */
  public int findings() {
    return node.path("findings").size();
  }

  /** The figures as they are kept. */
  JsonNode node() {
    return node;
  }
}
