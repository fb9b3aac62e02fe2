package pressweek.app.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import pressweek.app.sweep.Sweeping.Swept;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.TextLines;

/** What came of a sweep as text of at most 80 columns: a row for each folder and scenario. */
public final class SweepText {
  private static final int NAME = 26;
  private static final int SHOWN = 10;

  private final Swept swept;
  private final TextLines out = new TextLines(80);

  private SweepText(Swept swept) {
    this.swept = swept;
  }

  /** The text. */
  public static String of(Swept swept) {
    return new SweepText(swept).write();
  }

  private String write() {
    Sweeping.Progress progress = swept.progress();
    out.line(
        "",
        "%d plans of %d steps each: %d computed, %d were known, %d failed, %d not done"
            .formatted(
                swept.sweep().cases().size(),
                swept.sweep().steps(),
                progress.done() - progress.faults(),
                progress.reused(),
                faults(),
                progress.left()));
    table();
    findings();
    faulty();
    return out.toString();
  }

  /** Cases without figures whose reason is known. */
  private long faults() {
    return swept.sweep().cases().stream()
        .filter(each -> !each.hasTask() || swept.results().containsKey(each.task()))
        .filter(each -> SweepLists.figures(swept, each).isEmpty())
        .count();
  }

  private void table() {
    Map<String, List<SweepFigures>> groups = new LinkedHashMap<>();
    for (Sweep.Case each : swept.sweep().cases()) {
      Optional<SweepFigures> figures = SweepLists.figures(swept, each);
      figures.ifPresent(f -> groups.computeIfAbsent(name(each), n -> new ArrayList<>()).add(f));
    }
    if (groups.isEmpty()) {
      return;
    }
    out.heading("");
    row("", "plans", "late", "unplaced", "least", "median", "most");
    groups.forEach(this::row);
    boolean money = groups.values().stream().flatMap(List::stream).anyMatch(SweepText::hasMoney);
    out.line(
        "",
        (money ? "Avoidable cost" : "Change time")
            + " least, median and most over the seeds; late and unplaced lines likewise from least to most.");
  }

  private static String name(Sweep.Case each) {
    String folder = each.folder().replaceAll("[/\\\\]+$", "").replaceAll(".*[/\\\\]", "");
    String scenario = each.scenario().replaceAll("\\.json$", "");
    return scenario.isEmpty() ? folder : folder + " " + scenario;
  }

  private static boolean hasMoney(SweepFigures figures) {
    return !figures.currency().isEmpty();
  }

  private void row(String name, List<SweepFigures> plans) {
    boolean money = plans.stream().allMatch(SweepText::hasMoney);
    ToLongFunction<SweepFigures> measure =
        money ? SweepFigures::avoidableCost : f -> f.number("change_min");
    long[] sorted = plans.stream().mapToLong(measure).sorted().toArray();
    row(
        name,
        Integer.toString(plans.size()),
        range(plans, "late_lines"),
        range(plans, "unplaced_lines"),
        figure(money, sorted[0]),
        figure(money, sorted[(sorted.length - 1) / 2]),
        figure(money, sorted[sorted.length - 1]));
  }

  private static String figure(boolean money, long amount) {
    return money ? Money.figure(amount) : Minutes.hours(amount);
  }

  private static String range(List<SweepFigures> plans, String key) {
    long least = plans.stream().mapToLong(f -> f.number(key)).min().orElse(0);
    long most = plans.stream().mapToLong(f -> f.number(key)).max().orElse(0);
    return least == most ? Long.toString(least) : least + "-" + most;
  }

  private void row(String name, String... cells) {
    String fitted = name.length() > NAME ? name.substring(0, NAME - 1) + "\u2026" : name;
    out.verbatim(
        String.format(
            Locale.ROOT,
            "%-26s %5s %6s %8s %9s %9s %9s",
            fitted,
            cells[0],
            cells[1],
            cells[2],
            cells[3],
            cells[4],
            cells[5]));
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
    out.heading("Without figures");
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
