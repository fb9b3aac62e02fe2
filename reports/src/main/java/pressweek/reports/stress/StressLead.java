package pressweek.reports.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.data.problem.Rates;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.Rival;
import pressweek.data.stress.Stressed;
import pressweek.data.stress.Totals;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Money;

/** How sure a plan is, in a few sentences and a small table. */
public final class StressLead {
  private final StressReport report;
  private final Stressed stressed;
  private final Rates rates;

  /** The words about a report. */
  public StressLead(StressReport report) {
    this.report = report;
    this.stressed = report.stressed();
    this.rates = report.plan().problem().plant().rates();
  }

  /**
   * A row of a small table.
   *
   * @param what what it is
   * @param planned as the plan has it
   * @param mean in the mean over the replays
   * @param interval the interval of the mean
   */
  public record Row(String what, String planned, String mean, String interval) {}

  /** What was done, and what came of it. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    Totals totals = stressed.totals();
    int all = stressed.lines().size() + stressed.asPlanned().leftOut();
    sentences.add(
        "Plan %s replayed %s with other luck each time (seed %d)."
            .formatted(
                report.plan().head().number(),
                Headline.counted(stressed.luck().replays(), "time"),
                stressed.luck().seed()));
    sentences.add("All figures are estimates.");
    sentences.add(
        "Of %s, %d are on time if all goes by the plan, and %s in the mean (95 %% sure: %s)."
            .formatted(
                Headline.counted(all, "order line"),
                stressed.asPlanned().onTimeLines(),
                Figure.one(totals.onTimeLines().mean()),
                Figure.interval(totals.onTimeLines())));
    if (stressed.luck().tried() < stressed.luck().replays()) {
      sentences.add(
          "What could go otherwise is tried in the first %s."
              .formatted(Headline.counted(stressed.luck().tried(), "replay")));
    }
    if (stressed.asPlanned().otherRuns() > 0) {
      sentences.add(
          "%s of this plan cannot be replayed to the minute from its order; see docs/stress.md."
              .formatted(Headline.counted(stressed.asPlanned().otherRuns(), "run")));
    }
    return sentences;
  }

  /** Lines on time, hours late, cost: planned and replayed. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    Totals totals = stressed.totals();
    rows.add(
        new Row(
            "lines on time",
            Integer.toString(stressed.asPlanned().onTimeLines()),
            Figure.one(totals.onTimeLines().mean()),
            Figure.interval(totals.onTimeLines())));
    rows.add(
        new Row(
            "hours late, all lines",
            Figure.one(stressed.asPlanned().lateMin() / 60.0),
            Figure.one(totals.lateHours().mean()),
            Figure.interval(totals.lateHours())));
    if (rates.shown()) {
      rows.add(
          new Row(
              "avoidable cost, " + rates.currency(),
              Money.figure(stressed.asPlanned().cost()),
              money(totals.cost().mean()),
              money(totals.cost().low()) + " to " + money(totals.cost().high())));
    }
    return rows;
  }

  /** Lines that the plan has on time and that are not sure to be, the least sure first. */
  public List<LineChance> shaky() {
    return stressed.lines().stream()
        .filter(l -> l.plannedMin() <= l.dueMin() && l.slackNeededMin() > 0)
        .toList();
  }

  /** What is said above the shaky lines. */
  public String shakyHeading() {
    int shaky = shaky().size();
    String sure = sure();
    return shaky == 0
        ? "Every line that the plan has on time is so in " + sure + " of the replays or more."
        : "On time by the plan, and in less than %s of the replays: %s"
            .formatted(sure, Headline.counted(shaky, "line"));
  }

  /** The share of replays in which a line ought to be on time: {@code 90 %}. */
  String sure() {
    return Figure.plain(stressed.luck().uncertainty().aim().surePct()) + " %";
  }

  /** What the hours of slack beside a line are. */
  public String slackNeeded() {
    return "Slack: hours by which a line would have to be promised later, or be ready earlier, to be"
        + " on time in %s of the replays.".formatted(sure());
  }

  /** What is asked about more time before the shipping cut-offs; empty where nothing is. */
  public List<String> slack() {
    if (stressed.slack().isEmpty()) {
      return List.of();
    }
    long sure = stressed.lines().stream().filter(l -> l.slackNeededMin() <= 0).count();
    long planned = stressed.lines().stream().filter(l -> l.plannedMin() <= l.dueMin()).count();
    return List.of(
        "Sure is a line that is on time in %s of the replays or more; by the plan are those that are on time if all goes by it. As it is: %d and %d of %s."
            .formatted(
                sure(), sure, planned, Headline.counted(stressed.lines().size(), "planned line")),
        "The same replays, every line due so much later; nothing is planned anew.",
        "For a plan that holds better by itself see plan --sure.");
  }

  /** How the plan stands to another one, if it is compared with one. */
  public List<String> comparison() {
    return stressed.rival().map(this::comparison).orElse(List.of());
  }

  private List<String> comparison(Rival rival) {
    List<Versus> figures = new ArrayList<>();
    figures.add(
        new Versus("lines on time", "", rival.onTimeLines(), true, Figure::one, "more", "fewer"));
    figures.add(
        new Versus("late hours", "", rival.lateHours(), false, Figure::one, "more", "fewer"));
    if (rates.shown()) {
      figures.add(
          new Versus(
              "avoidable cost",
              rates.currency() + " ",
              rival.costs(),
              false,
              StressLead::money,
              "dearer",
              "cheaper"));
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "This plan is %s (%s), the other one %s (%s)."
            .formatted(
                report.file(), report.plan().head().number(), report.other(), rival.number()));
    sentences.add(Versus.verdict(figures));
    figures.forEach(f -> sentences.add(f.sentence()));
    sentences.add(
        "This plan has more lines on time, or as many and fewer late hours, in %s of the replays."
            .formatted(Figure.percent(rival.better())));
    return sentences;
  }

  /** Where the figures of luck come from. */
  public List<String> basis() {
    return stressed.luck().basis();
  }

  private static String money(double amount) {
    return Money.figure(Math.round(amount));
  }

  /** The chance that every line of the plan is on time. */
  public String wholeWeek() {
    return String.format(
        Locale.ROOT,
        "Every planned line on time: in %s of the replays.",
        Figure.percent(stressed.totals().allOnTime()));
  }
}
