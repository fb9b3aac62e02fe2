package pressweek.app.sweep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import pressweek.app.sweep.Sweeping.Swept;
import pressweek.data.stress.Estimate;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.TextLines;

/** What came of a sweep as text of at most 80 columns: a row for each folder and scenario. */
public final class SweepText {
  private static final int WIDTH = 80;
  private static final double HOUR = 60;
  private static final int SHOWN = 10;

  private final Swept swept;
  private final TextLines out = new TextLines(WIDTH);

  private SweepText(Swept swept) {
    this.swept = swept;
  }

  /** What cannot be planned, and why, for the start of a sweep; empty where all can. */
  public static String faults(Sweep sweep) {
    Sweeping.Progress none = new Sweeping.Progress(0, 0, 0, 0, Duration.ZERO);
    List<Sweep.Case> bad = sweep.cases().stream().filter(each -> !each.hasTask()).toList();
    SweepText text =
        new SweepText(new Swept(new Sweep(sweep.steps(), sweep.replaying(), bad), Map.of(), none));
    text.faulty();
    return text.out.toString();
  }

  /** The text. */
  public static String of(Swept swept) {
    return new SweepText(swept).write();
  }

  private String write() {
    Map<String, List<SweepFigures>> groups = groups();
    if (groups.isEmpty()) {
      faulty();
      counts();
      return out.toString();
    }
    counts();
    if (faults() > 0) {
      out.heading("");
      faulty();
    }
    table(groups);
    replayed(groups);
    findings();
    return out.toString();
  }

  private void counts() {
    Sweeping.Progress progress = swept.progress();
    out.line(
        "",
        "%s of %s each: %d computed, %d were known, %d failed, %d not done"
            .formatted(
                Headline.counted(swept.sweep().cases().size(), "plan"),
                Headline.counted(swept.sweep().steps(), "step"),
                progress.done() - progress.faults(),
                progress.reused(),
                faults(),
                progress.left()));
  }

  /** Cases without figures whose reason is known. */
  private long faults() {
    return swept.sweep().cases().stream()
        .filter(each -> !each.hasTask() || swept.results().containsKey(each.task()))
        .filter(each -> SweepLists.figures(swept, each).isEmpty())
        .count();
  }

  private Map<String, List<SweepFigures>> groups() {
    Map<String, List<SweepFigures>> groups = new LinkedHashMap<>();
    for (Sweep.Case each : swept.sweep().cases()) {
      Optional<SweepFigures> figures = SweepLists.figures(swept, each);
      figures.ifPresent(f -> groups.computeIfAbsent(name(each), n -> new ArrayList<>()).add(f));
    }
    return groups;
  }

  private void table(Map<String, List<SweepFigures>> groups) {
    boolean money = groups.values().stream().flatMap(List::stream).anyMatch(SweepText::hasMoney);
    out.heading("");
    SweepTable table = new SweepTable(WIDTH);
    table.row("", "plans", "late", "unplaced", "least", "median", "most");
    groups.forEach((name, plans) -> row(table, name, plans));
    table.write(out);
    out.line(
        "",
        (money ? "Avoidable cost" : "Change time")
            + " least, median and most over the seeds; late and unplaced lines likewise from least to most.");
  }

  /** What came of the replays, the plans of a folder and scenario taken together. */
  private void replayed(Map<String, List<SweepFigures>> groups) {
    Replaying replaying = swept.sweep().replaying();
    if (!replaying.isAsked()) {
      return;
    }
    boolean money = groups.values().stream().flatMap(List::stream).allMatch(SweepText::hasMoney);
    out.heading(
        "Each plan replayed %,d times under uncertain times (seed %d): estimates"
            .formatted(replaying.count(), replaying.seed()));
    SweepTable table = new SweepTable(WIDTH);
    table.row("", "lines on time", "late h", money ? "avoidable cost" : "");
    groups.forEach(
        (name, plans) -> {
          List<ReplayFigures> of = plans.stream().flatMap(p -> p.replays().stream()).toList();
          table.row(
              name,
              spread(of, ReplayFigures::onTimeLines, SweepText::one),
              spread(of, ReplayFigures::lateHours, SweepText::one),
              money ? spread(of, ReplayFigures::cost, v -> Money.figure(Math.round(v))) : "");
        });
    table.write(out);
    surest();
    out.line(
        "",
        "Means over the seeds, with what they may be off by for so many replays (95 %). All plans had the same luck, so how rows differ is known better than that.");
  }

  /** The plan with the most lines on time, the first of those that are alike. */
  private void surest() {
    Optional<Sweep.Case> best =
        swept.sweep().cases().stream()
            .filter(each -> replays(each).isPresent())
            .reduce((one, other) -> onTime(other) > onTime(one) ? other : one);
    best.ifPresent(
        each ->
            out.line(
                "",
                "Most lines on time: %s of %s, seed %d."
                    .formatted(
                        spread(
                            replays(each).stream().toList(),
                            ReplayFigures::onTimeLines,
                            SweepText::one),
                        name(each),
                        each.seed())));
  }

  private double onTime(Sweep.Case each) {
    return replays(each).map(r -> r.onTimeLines().mean()).orElse(0.0);
  }

  private Optional<ReplayFigures> replays(Sweep.Case each) {
    return SweepLists.figures(swept, each).flatMap(SweepFigures::replays);
  }

  /** The interval of a mean of means is no wider than the mean of their intervals. */
  private static String spread(
      List<ReplayFigures> of,
      Function<ReplayFigures, Estimate> figure,
      DoubleFunction<String> words) {
    double mean = of.stream().map(figure).mapToDouble(Estimate::mean).average().orElse(0);
    double high = of.stream().map(figure).mapToDouble(Estimate::high).average().orElse(0);
    return words.apply(mean) + " \u00b1" + words.apply(high - mean);
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%,.1f", value);
  }

  private static String name(Sweep.Case each) {
    String folder = each.folder().replaceAll("[/\\\\]+$", "").replaceAll(".*[/\\\\]", "");
    String scenario = each.scenario().replaceAll("\\.json$", "");
    return scenario.isEmpty() ? folder : folder + " " + scenario;
  }

  private static boolean hasMoney(SweepFigures figures) {
    return !figures.currency().isEmpty();
  }

  private static void row(SweepTable table, String name, List<SweepFigures> plans) {
    boolean money = plans.stream().allMatch(SweepText::hasMoney);
    ToLongFunction<SweepFigures> measure =
        money ? SweepFigures::avoidableCost : f -> f.number("change_min");
    long[] sorted = plans.stream().mapToLong(measure).sorted().toArray();
    table.row(
        name,
        Integer.toString(plans.size()),
        range(plans, "late_lines"),
        range(plans, "unplaced_lines"),
        figure(money, sorted[0]),
        figure(money, (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2),
        figure(money, sorted[sorted.length - 1]));
  }

  private static String figure(boolean money, long amount) {
    return money ? Money.figure(amount) : one(amount / HOUR) + " h";
  }

  private static String range(List<SweepFigures> plans, String key) {
    long least = plans.stream().mapToLong(f -> f.number(key)).min().orElse(0);
    long most = plans.stream().mapToLong(f -> f.number(key)).max().orElse(0);
    return least == most ? Long.toString(least) : least + "-" + most;
  }

  private void findings() {
    long broken =
        swept.sweep().cases().stream()
            .flatMap(each -> SweepLists.figures(swept, each).stream())
            .filter(f -> f.findings() > 0)
            .count();
    if (broken > 0) {
      out.heading(broken + " PLANS BREAK HARD RULES; see findings in sweep_results.json");
    }
  }

  private void faulty() {
    Map<String, Integer> faults = new LinkedHashMap<>();
    for (Sweep.Case each : swept.sweep().cases()) {
      String fault = SweepLists.fault(swept, each);
      if (!fault.isEmpty()) {
        faults.merge(name(each) + ": " + fault, 1, Integer::sum);
      }
    }
    if (faults.isEmpty()) {
      return;
    }
    out.line("", "Without figures");
    faults.entrySet().stream()
        .limit(SHOWN)
        .forEach(
            fault ->
                out.line(
                    "  - ",
                    fault.getKey()
                        + (fault.getValue() == 1 ? "" : " (" + fault.getValue() + " plans)")));
    if (faults.size() > SHOWN) {
      out.line("  - ", "and " + (faults.size() - SHOWN) + " more; see sweep.csv");
    }
  }
}
