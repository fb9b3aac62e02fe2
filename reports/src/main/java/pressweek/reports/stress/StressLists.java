package pressweek.reports.stress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import pressweek.data.stress.Gain;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.SlackGain;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** How sure a plan is, as lists. */
public final class StressLists {
  private static final String CAUTION =
      "Estimates: as good as the figures of uncertainty that they rest on.";

  /** Thousandths of a cent are money with so many decimals. */
  private static final int MONEY_SCALE = 5;

  private StressLists() {}

  /** A row an order line, the least sure first. */
  public static Listing lines(StressReport report) {
    PlantClock clock = PlantClock.of(report.plan().problem().plant().hours());
    return new ListingColumns<LineChance>()
        .text("line", LineChance::line)
        .text("run", LineChance::run)
        .text("press", LineChance::press)
        .time("due", l -> clock.at(l.dueMin()))
        .time("planned_ready", l -> clock.at(l.plannedMin()))
        .time("ready_90_pct", l -> clock.at(l.ready().ninetyMin()))
        .headed("ready by in 9 of 10")
        .decimal("on_time_pct", l -> percent(l.onTime().share()))
        .headed("on time %")
        .decimal("on_time_low_pct", l -> percent(l.onTime().low()))
        .headed("at least %")
        .decimal("on_time_high_pct", l -> percent(l.onTime().high()))
        .headed("at most %")
        .decimal("late_h", l -> Figure.decimal(l.lateHours()))
        .headed("late h")
        .decimal("slack_needed_h", l -> Figure.hoursUp(l.slackNeededMin()))
        .headed("slack h")
        .listing(
            "stress",
            "How sure each order line is",
            new Paper(CAUTION, "", false, "The plan has no runs."),
            report.stressed().lines());
  }

  /** A row a thing that could go otherwise, those of the plant as a whole first. */
  public static Listing gains(StressReport report) {
    boolean money = report.plan().problem().plant().rates().shown();
    return new ListingColumns<Gain>()
        .text("kind", g -> g.kind().words())
        .headed("if it went otherwise")
        .text("what", Gain::what)
        .decimal("more_on_time", g -> one(g.moreOnTime().mean()))
        .headed("lines more on time")
        .decimal("more_on_time_low", g -> one(g.moreOnTime().low()))
        .headed("at least")
        .decimal("more_on_time_high", g -> one(g.moreOnTime().high()))
        .headed("at most")
        .decimal("fewer_late_h", g -> one(g.fewerLateHours().mean()))
        .headed("late hours fewer")
        .decimal("fewer_late_low_h", g -> one(g.fewerLateHours().low()))
        .headed("at least")
        .decimal("fewer_late_high_h", g -> one(g.fewerLateHours().high()))
        .headed("at most")
        .decimalIfAny("cheaper", g -> money ? money(g.cheaper().mean()) : Optional.empty())
        .listing(
            "stress_gains",
            "What would bring most, under the same luck",
            new Paper(CAUTION, "", false, "There was nothing to try."),
            report.stressed().gains());
  }

  /** A row for each length of time more before the shipping cut-offs. */
  public static Listing slack(StressReport report) {
    String sure = new StressLead(report).sure();
    return new ListingColumns<SlackGain>()
        .decimal("slack_h", s -> new BigDecimal(Figure.hours(s.minutes())))
        .headed("hours more before each cut-off")
        .decimal("more_on_time", s -> one(s.moreOnTime().mean()))
        .headed("lines more on time")
        .decimal("more_on_time_low", s -> one(s.moreOnTime().low()))
        .headed("at least")
        .decimal("more_on_time_high", s -> one(s.moreOnTime().high()))
        .headed("at most")
        .decimal("fewer_late_h", s -> one(s.fewerLateHours().mean()))
        .headed("late hours fewer")
        .decimal("fewer_late_low_h", s -> one(s.fewerLateHours().low()))
        .headed("at least")
        .decimal("fewer_late_high_h", s -> one(s.fewerLateHours().high()))
        .headed("at most")
        .number("sure_lines", SlackGain::sureLines)
        .headed("sure lines (" + sure.replace(' ', '\u00a0') + ")")
        .number("planned_lines", SlackGain::plannedLines)
        .headed("on time by the plan")
        .listing(
            "stress_slack",
            "What more time before each shipping cut-off would bring, under the same luck",
            new Paper(CAUTION, "", false, "The plant asks of no such time (slack_h)."),
            report.stressed().slack());
  }

  private static BigDecimal percent(double share) {
    return Figure.decimalPercent(share);
  }

  private static BigDecimal one(double value) {
    return Figure.decimal(value);
  }

  private static Optional<BigDecimal> money(double amount) {
    return Optional.of(
        BigDecimal.valueOf(Math.round(amount), MONEY_SCALE).setScale(2, RoundingMode.HALF_UP));
  }
}
