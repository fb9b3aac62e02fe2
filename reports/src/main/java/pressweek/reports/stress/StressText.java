package pressweek.reports.stress;

import java.util.List;
import java.util.Locale;
import pressweek.data.stress.Estimate;
import pressweek.data.stress.Gain;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.SlackGain;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.schedule.TextLines;

/** How sure a plan is, in lines of at most 80 columns. */
public final class StressText {
  private static final int SHOWN = 15;

  private final StressReport report;
  private final StressLead lead;
  private final PlantClock clock;
  private final TextLines out = new TextLines(80);

  private StressText(StressReport report) {
    this.report = report;
    this.lead = new StressLead(report);
    this.clock = PlantClock.of(report.plan().problem().plant().hours());
  }

  /**
   * The text.
   *
   * @param files what was written
   */
  public static String of(StressReport report, List<String> files) {
    return new StressText(report).write(files);
  }

  private String write(List<String> files) {
    lead.sentences().forEach(s -> out.line("", s));
    out.line("", lead.wholeWeek());
    out.heading("");
    totals("", "by the plan", "in the mean", "95 % interval");
    lead.rows().forEach(r -> totals(r.what(), r.planned(), r.mean(), r.interval()));
    comparison();
    lines();
    gains();
    slack();
    out.heading("What the luck rests on");
    lead.basis().forEach(b -> out.line("  ", b));
    if (!files.isEmpty()) {
      out.heading("Written");
      files.forEach(f -> out.line("  ", f));
    }
    return out.toString();
  }

  private void totals(String what, String planned, String mean, String interval) {
    out.verbatim(
        String.format(Locale.ROOT, "  %-22s %13s %13s  %s", what, planned, mean, interval)
            .stripTrailing());
  }

  private void comparison() {
    List<String> sentences = lead.comparison();
    if (!sentences.isEmpty()) {
      out.heading("Against the other plan, under the same luck");
      sentences.forEach(s -> out.line("  ", s));
    }
  }

  private void lines() {
    List<LineChance> shaky = lead.shaky();
    out.heading(lead.shakyHeading());
    if (shaky.isEmpty()) {
      return;
    }
    row("line", "press", "due", "ready, " + lead.sure(), "on time % (95 %)", "late h", "slack");
    for (LineChance line : shaky.subList(0, Math.min(SHOWN, shaky.size()))) {
      row(
          line.line(),
          line.press(),
          clock.brief(line.dueMin()),
          clock.brief(line.ready().sureMin()),
          Figure.brief(line.onTime()),
          Figure.one(line.lateHours()),
          Figure.hoursUp(line.slackNeededMin()).toString());
    }
    if (shaky.size() > SHOWN) {
      out.line("  ", "and " + (shaky.size() - SHOWN) + " more in stress.csv");
    }
    out.line("  ", lead.slackNeeded());
  }

  private void row(String... cells) {
    String line =
        String.format(
            Locale.ROOT,
            "  %-9s %-5s %-15s %-15s %-16s %6s %6s",
            fitted(cells[0], 9),
            fitted(cells[1], 5),
            cells[2],
            cells[3],
            cells[4],
            cells[5],
            cells[6]);
    out.verbatim(line.stripTrailing());
  }

  private void gains() {
    List<Gain> all = report.stressed().gains();
    gains(
        "What it would bring, under the same luck",
        all.stream().filter(StressText::isWhole).toList());
    List<Gain> links = all.stream().filter(g -> !isWhole(g)).toList();
    List<Gain> weak = links.stream().filter(StressText::surelyHelps).toList();
    gains("Weakest links: what each of them costs", weak);
    if (links.size() > weak.size()) {
      int others = links.size() - weak.size();
      String tried = others == 1 ? " more was tried and brings" : " more were tried and bring";
      out.line("  ", others + tried + " nothing for sure; see stress_gains.csv");
    }
  }

  private void slack() {
    if (report.stressed().slack().isEmpty()) {
      return;
    }
    out.heading("What more time before each shipping cut-off would bring");
    String sure = "sure (" + lead.sure() + ")";
    slack("later by", "lines more on time (95 %)", "late h fewer", sure, "by the plan");
    for (SlackGain gain : report.stressed().slack()) {
      slack(
          Figure.hours(gain.minutes()) + " h",
          Figure.signed(gain.moreOnTime().mean())
              + " ("
              + Figure.signedInterval(gain.moreOnTime())
              + ")",
          Figure.one(gain.fewerLateHours().mean()),
          Integer.toString(gain.sureLines()),
          Integer.toString(gain.plannedLines()));
    }
    lead.slack().forEach(s -> out.line("  ", s));
  }

  private void slack(String... cells) {
    out.verbatim(
        String.format(
            Locale.ROOT,
            "  %-9s %-26s %12s %13s %12s",
            cells[0],
            cells[1],
            cells[2],
            cells[3],
            cells[4]));
  }

  private static boolean isWhole(Gain gain) {
    return gain.kind().isWhole();
  }

  /** By as much as the table shows. */
  private static boolean surelyHelps(Gain gain) {
    return shows(gain.moreOnTime())
        || gain.moreOnTime().mean() >= 0 && shows(gain.fewerLateHours());
  }

  private static boolean shows(Estimate gained) {
    return Figure.decimal(gained.low()).signum() > 0;
  }

  private void gains(String heading, List<Gain> shown) {
    if (shown.isEmpty()) {
      return;
    }
    out.heading(heading);
    gain("if", "lines more on time (95 %)", "late h fewer");
    for (Gain gain : shown) {
      gain(
          gain.words(),
          Figure.signed(gain.moreOnTime().mean())
              + " ("
              + Figure.signedInterval(gain.moreOnTime())
              + ")",
          Figure.one(gain.fewerLateHours().mean()));
    }
  }

  private void gain(String what, String lines, String hours) {
    String row = String.format(Locale.ROOT, "  %-38s %-25s %12s", fitted(what, 38), lines, hours);
    out.verbatim(row);
  }

  private static String fitted(String text, int most) {
    return text.length() > most ? text.substring(0, most - 1) + "\u2026" : text;
  }
}
