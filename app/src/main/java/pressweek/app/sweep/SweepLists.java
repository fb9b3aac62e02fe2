package pressweek.app.sweep;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pressweek.app.store.row.SweepResult;
import pressweek.app.sweep.Sweeping.Swept;
import pressweek.data.files.AtomicFile;
import pressweek.data.plan.Rule;
import pressweek.data.stress.Estimate;

/** What came of a sweep as files: {@code sweep.csv}, a row a plan, and the same as JSON. */
public final class SweepLists {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> NUMBERS =
      List.of(
          "placed_lines",
          "unplaced_lines",
          "late_lines",
          "late_min",
          "changes",
          "change_min",
          "purge_g");
  private static final List<String> REPLAYED =
      List.of(
          "replays",
          "expected_on_time",
          "expected_on_time_low",
          "expected_on_time_high",
          "expected_late_h",
          "expected_late_low_h",
          "expected_late_high_h",
          "expected_cost",
          "expected_cost_low",
          "expected_cost_high");
  private static final List<Rule> CHARGED =
      Arrays.stream(Rule.values()).filter(rule -> !rule.hard()).toList();

  private SweepLists() {}

  /** Writes both files and gives their places. */
  public static List<Path> write(Swept swept, Path out) throws IOException {
    Path csv = out.resolve("sweep.csv");
    Path json = out.resolve("sweep_results.json");
    AtomicFile.write(csv, csv(swept).getBytes(StandardCharsets.UTF_8));
    AtomicFile.write(json, json(swept).getBytes(StandardCharsets.UTF_8));
    return List.of(csv, json);
  }

  /** A row a plan, in the order of the sweep; money in the plant's currency. */
  static String csv(Swept swept) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      List<String> heading =
          new ArrayList<>(
              List.of("folder", "scenario", "seed", "steps", "done", "currency", "avoidable_cost"));
      heading.addAll(NUMBERS);
      heading.add("findings");
      CHARGED.forEach(rule -> heading.add("cost_" + rule.name().toLowerCase(Locale.ROOT)));
      heading.addAll(List.of("fault", "task"));
      heading.addAll(REPLAYED);
      printer.printRecord(heading);
      for (Sweep.Case each : swept.sweep().cases()) {
        printer.printRecord(row(swept, each));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder cannot fail", e);
    }
    return out.toString();
  }

  private static List<String> row(Swept swept, Sweep.Case each) {
    Optional<SweepFigures> figures = figures(swept, each);
    List<String> row = new ArrayList<>();
    row.add(each.folder());
    row.add(each.scenario());
    row.add(Long.toString(each.seed()));
    row.add(Integer.toString(swept.sweep().steps()));
    row.add(figures.isPresent() ? "yes" : "no");
    row.add(figures.map(SweepFigures::currency).orElse(""));
    row.add(figures.map(f -> money(f.avoidableCost())).orElse(""));
    NUMBERS.forEach(key -> row.add(figures.map(f -> Long.toString(f.number(key))).orElse("")));
    row.add(figures.map(f -> Integer.toString(f.findings())).orElse(""));
    CHARGED.forEach(rule -> row.add(figures.map(f -> money(f.cost(rule))).orElse("")));
    row.add(fault(swept, each));
    row.add(each.task());
    figures
        .flatMap(SweepFigures::replays)
        .ifPresentOrElse(
            r -> row.addAll(replayed(r)),
            () -> row.addAll(Collections.nCopies(REPLAYED.size(), "")));
    return row;
  }

  private static List<String> replayed(ReplayFigures of) {
    List<String> cells = new ArrayList<>();
    cells.add(Integer.toString(of.count()));
    ends(of.onTimeLines()).forEach(v -> cells.add(number(v)));
    ends(of.lateHours()).forEach(v -> cells.add(number(v)));
    ends(of.cost()).forEach(v -> cells.add(money(Math.round(v))));
    return cells;
  }

  private static List<Double> ends(Estimate of) {
    return List.of(of.mean(), of.low(), of.high());
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static String money(long thousandthsOfACent) {
    return BigDecimal.valueOf(thousandthsOfACent, 5).stripTrailingZeros().toPlainString();
  }

  /** What came of a case; empty where it has a fault or is not done. */
  static Optional<SweepFigures> figures(Swept swept, Sweep.Case each) {
    return Optional.ofNullable(swept.results().get(each.task()))
        .filter(SweepResult::isDone)
        .map(result -> SweepFigures.of(result.body()));
  }

  /** Why there are no figures of a case; empty where there are some. */
  static String fault(Swept swept, Sweep.Case each) {
    if (!each.hasTask()) {
      return each.fault();
    }
    SweepResult result = swept.results().get(each.task());
    return result == null ? "not done: the sweep was broken off" : result.fault();
  }

  /** The same as JSON; money in thousandths of a cent. */
  static String json(Swept swept) {
    ObjectNode object = JSON.createObjectNode();
    object.put("steps", swept.sweep().steps());
    if (swept.sweep().replaying().isAsked()) {
      object.put("replays", swept.sweep().replaying().count());
      object.put("replay_seed", swept.sweep().replaying().seed());
    }
    ArrayNode plans = object.putArray("plans");
    for (Sweep.Case each : swept.sweep().cases()) {
      ObjectNode plan = plans.addObject();
      plan.put("folder", each.folder()).put("scenario", each.scenario()).put("seed", each.seed());
      plan.put("task", each.task());
      figures(swept, each).ifPresent(f -> plan.set("figures", f.node()));
      if (!fault(swept, each).isEmpty()) {
        plan.put("fault", fault(swept, each));
      }
    }
    return object.toPrettyString() + "\n";
  }
}
