package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.app.desk.Trial;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.Money;

/** What a move would do, with the reasons in words. */
final class TrialJson {
  private static final int SHOWN = 3;

  ObjectNode of(Trial trial) {
    Optional<Run> run = trial.run();
    if (run.isEmpty()) {
      return Asked.object()
          .put("possible", false)
          .put("words", trial.line() + " finds no time there before the horizon ends");
    }
    ObjectNode json = Asked.object().put("possible", trial.broken().isEmpty());
    json.put("words", words(trial));
    json.put("costMore", trial.costsMore()).put("lateMore", trial.lateMore());
    times(json.putObject("line"), trial, run.get());
    ArrayNode lines = json.putArray("lines");
    for (Trial.Shift shift : trial.shifts()) {
      ObjectNode line = lines.addObject().put("line", shift.now().job());
      line.put("press", shift.now().press());
      times(line, trial, shift.now());
      shift
          .was()
          .ifPresent(
              w ->
                  line.putObject("was")
                      .put("press", w.press())
                      .put("from", w.startMin())
                      .put("to", w.endMin()));
    }
    trial.broken().forEach(json.putArray("broken")::add);
    return json;
  }

  private static void times(ObjectNode json, Trial trial, Run run) {
    json.put("from", run.startMin()).put("to", run.endMin()).put("ready", run.readyMin());
    json.put("changeFrom", run.change().startMin()).put("changeTo", run.change().endMin());
    json.put("changeMin", run.change().minutes()).put("lateMin", trial.lateMin(run));
  }

  /** {@code 12.50 EUR dearer: lateness +20.00, change -7.50}, promises that it breaks first. */
  private static String words(Trial trial) {
    if (!trial.broken().isEmpty()) {
      return String.join("; ", trial.broken());
    }
    Rates rates = trial.tried().problem().plant().rates();
    long more = trial.costsMore();
    String whole = whole(rates, more);
    String parts = parts(rates, trial.byRule());
    long late = trial.lateMore();
    String lateness =
        late == 0
            ? ""
            : "; "
                + Minutes.words(Math.abs(late))
                + (late > 0 ? " more" : " less")
                + " late in all";
    return whole + (parts.isEmpty() ? "" : ": " + parts) + lateness;
  }

  private static String whole(Rates rates, long more) {
    if (more == 0) {
      return "costs the same";
    }
    String how = more > 0 ? "dearer" : "cheaper";
    return rates.shown()
        ? Money.words(rates, Math.abs(more)) + " " + how
        : how + " by the default weights";
  }

  private static String parts(Rates rates, Map<Rule, Long> byRule) {
    List<Map.Entry<Rule, Long>> largest =
        byRule.entrySet().stream()
            .sorted(Comparator.comparingLong((Map.Entry<Rule, Long> e) -> -Math.abs(e.getValue())))
            .limit(SHOWN)
            .toList();
    return largest.stream()
        .map(e -> part(rates, e.getKey(), e.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String part(Rates rates, Rule rule, long more) {
    String sign = more > 0 ? "+" : "-";
    return RuleWords.of(rule) + " " + (rates.shown() ? sign + Money.figure(Math.abs(more)) : sign);
  }
}
