package pressweek.reports.compare;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Rule;
import pressweek.reports.schedule.Money;

/** A figure by which plans are compared: its words, its unit, and which way is better. */
public enum Figure {
  LINES("order lines", Unit.COUNT, Better.NEITHER, f -> f.delivery().lines()),
  ON_TIME("lines on time (due)", Unit.COUNT, Better.MORE, f -> f.delivery().onTime()),
  ON_TIME_PCT(
      "lines on time, share",
      Unit.PERCENT,
      Better.MORE,
      f -> share(f.delivery().onTime(), f.delivery().lines())),
  WEIGHT_ON_TIME_PCT(
      "on time by weight, share",
      Unit.PERCENT,
      Better.MORE,
      f -> share(f.delivery().weightOnTime(), f.delivery().weight())),
  ON_REQUEST("lines ready when requested", Unit.COUNT, Better.MORE, f -> f.delivery().onRequest()),
  ON_REQUEST_PCT(
      "ready when requested, share",
      Unit.PERCENT,
      Better.MORE,
      f -> share(f.delivery().onRequest(), f.delivery().lines())),
  WEIGHT_ON_REQUEST_PCT(
      "ready when requested by weight, share",
      Unit.PERCENT,
      Better.MORE,
      f -> share(f.delivery().weightOnRequest(), f.delivery().weight())),
  LATE("lines late", Unit.COUNT, Better.LESS, f -> f.delivery().placed() - f.delivery().onTime()),
  UNPLACED(
      "lines unplaced", Unit.COUNT, Better.LESS, f -> f.delivery().lines() - f.delivery().placed()),
  LATE_DAYS("days late, all lines", Unit.DAYS, Better.LESS, f -> f.delivery().lateMin()),
  COST("avoidable cost", Unit.MONEY, Better.LESS, PlanFigures::avoidableCost),
  LATE_COST("of it lateness", Unit.MONEY, Better.LESS, f -> cost(f, Rule.LATE)),
  CHANGES("changes and dismounts", Unit.COUNT, Better.LESS, f -> f.changing().count()),
  CHANGE_HOURS("change hours", Unit.HOURS, Better.LESS, f -> f.changing().minutes()),
  MOLD_CHANGES("mold changes", Unit.COUNT, Better.LESS, f -> kind(f, ChangeKind.MOLD)),
  TOOLING_CHANGES("tooling set changes", Unit.COUNT, Better.LESS, f -> kind(f, ChangeKind.TOOLING)),
  RESIN_CHANGES(
      "resin changes in a mold that stays",
      Unit.COUNT,
      Better.LESS,
      f -> kind(f, ChangeKind.RESIN)),
  COLOUR_CHANGES("colour changes alone", Unit.COUNT, Better.LESS, f -> kind(f, ChangeKind.COLOUR)),
  CLEARANCES(
      "food clearances alone", Unit.COUNT, Better.LESS, f -> kind(f, ChangeKind.FOOD_CLEARANCE)),
  DISMOUNTS(
      "molds taken off for another press", Unit.COUNT, Better.LESS, f -> f.changing().dismounts()),
  MOLD_HOURS("hours of mold changes", Unit.HOURS, Better.LESS, f -> hours(f, ChangeKind.MOLD)),
  TOOLING_HOURS(
      "hours of tooling set changes", Unit.HOURS, Better.LESS, f -> hours(f, ChangeKind.TOOLING)),
  RESIN_HOURS("hours of resin changes", Unit.HOURS, Better.LESS, f -> hours(f, ChangeKind.RESIN)),
  COLOUR_HOURS(
      "hours of colour changes", Unit.HOURS, Better.LESS, f -> hours(f, ChangeKind.COLOUR)),
  CLEARANCE_HOURS(
      "hours of food clearances alone",
      Unit.HOURS,
      Better.LESS,
      f -> hours(f, ChangeKind.FOOD_CLEARANCE)),
  DISMOUNT_HOURS("hours of dismounts", Unit.HOURS, Better.LESS, f -> f.changing().dismountMin()),
  PURGE_KG("purge", Unit.KG, Better.LESS, f -> f.changing().purgeG()),
  AVAILABILITY("availability", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().availability())),
  EFFECTIVENESS("effectiveness", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().effectiveness())),
  QUALITY("quality ratio", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().quality())),
  OEE("OEE index", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().oee())),
  NEE("NEE index", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().nee())),
  ALLOCATION(
      "allocation efficiency", Unit.PERCENT, Better.NEITHER, f -> pct(f.times().allocation())),
  SETUP_RATIO("setup ratio", Unit.PERCENT, Better.LESS, f -> pct(f.times().setupRatio())),
  OPERATOR_HOURS("operator hours", Unit.HOURS, Better.LESS, f -> f.people().operatorMin()),
  SETTER_HOURS("setter hours", Unit.HOURS, Better.LESS, f -> f.people().setterMin()),
  OVERTIME_SHIFTS(
      "overtime shifts opened", Unit.COUNT, Better.LESS, f -> f.people().overtimeShifts()),
  OVERTIME_HOURS("overtime hours", Unit.HOURS, Better.LESS, f -> f.people().overtimeMin()),
  SHORTAGES("components that run short", Unit.COUNT, Better.LESS, f -> f.flow().shortages()),
  CAMPAIGNS("campaigns", Unit.COUNT, Better.LESS, f -> f.flow().campaigns()),
  CAMPAIGN_HOURS("a campaign on average", Unit.HOURS, Better.MORE, Figure::campaign),
  LONGEST_CAMPAIGN("the longest campaign", Unit.HOURS, Better.NEITHER, f -> f.flow().longestMin()),
  MOVED(
      "runs moved against the promised plan",
      Unit.COUNT,
      Better.LESS,
      f -> f.flow().moved().orElse(0));

  /** What a figure is counted in. */
  public enum Unit {
    COUNT("", 1),
    PERCENT("%", 1),
    HOURS("h", 60),
    DAYS("d", 1440),
    KG("kg", 1000),
    /** Thousandths of a cent. */
    MONEY("", 1);

    private static final double WHOLE_MONEY = 100_000;

    private final String symbol;
    private final double per;

    Unit(String symbol, double per) {
      this.symbol = symbol;
      this.per = per;
    }

    /** How it is written; empty for what is only counted, and for money. */
    public String symbol() {
      return symbol;
    }

    /** A value in this unit. */
    double shown(double value) {
      return value / per;
    }
  }

  /** Which way a figure is better. */
  public enum Better {
    LESS,
    MORE,
    /** It tells something, but more of it is neither good nor bad. */
    NEITHER
  }

  private static final double ALL = 100;

  private final String words;
  private final Unit unit;
  private final Better better;
  private final Function<PlanFigures, Number> of;

  Figure(String words, Unit unit, Better better, Function<PlanFigures, Number> of) {
    this.words = words;
    this.unit = unit;
    this.better = better;
    this.of = of;
  }

  private static double share(long part, long whole) {
    return whole == 0 ? ALL : ALL * part / whole;
  }

  private static double pct(OptionalDouble ratio) {
    return ALL * ratio.orElse(0);
  }

  private static long cost(PlanFigures figures, Rule rule) {
    return figures.cost().getOrDefault(rule, 0L);
  }

  private static int kind(PlanFigures figures, ChangeKind kind) {
    return figures.changing().countByKind().getOrDefault(kind, 0);
  }

  private static long hours(PlanFigures figures, ChangeKind kind) {
    return figures.changing().minutesByKind().getOrDefault(kind, 0L);
  }

  private static double campaign(PlanFigures figures) {
    int count = figures.flow().campaigns();
    return count == 0 ? 0 : (double) figures.flow().campaignMin() / count;
  }

  /** What it is, as a table says it. */
  public String words() {
    return words;
  }

  /** What it is counted in. */
  public Unit unit() {
    return unit;
  }

  /** Which way it is better. */
  public Better better() {
    return better;
  }

  /**
   * Its value: minutes for hours and days, grams for kilograms, thousandths of a cent for money.
   */
  public double of(PlanFigures figures) {
    return of.apply(figures).doubleValue();
  }

  /** What a program calls it, for example {@code on_time_pct}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** A value as a person reads it, without its unit. */
  public String text(double value) {
    if (unit == Unit.MONEY) {
      return Money.figure(Math.round(value));
    }
    return unit == Unit.COUNT
        ? String.format(Locale.ROOT, "%,d", Math.round(value))
        : String.format(Locale.ROOT, "%,.1f", unit.shown(value));
  }

  /** A value where there is little room: money in whole units of the currency. */
  public String brief(double value) {
    return unit == Unit.MONEY
        ? String.format(Locale.ROOT, "%,d", Math.round(value / Unit.WHOLE_MONEY))
        : text(value);
  }

  /** What it is about, for headings. */
  public String group() {
    if (compareTo(LATE_DAYS) <= 0) {
      return "Delivery";
    }
    if (compareTo(LATE_COST) <= 0) {
      return "Money";
    }
    if (compareTo(PURGE_KG) <= 0) {
      return "Changes";
    }
    if (compareTo(SETUP_RATIO) <= 0) {
      return "Presses, by ISO 22400-2, as planned";
    }
    return compareTo(OVERTIME_HOURS) <= 0 ? "People" : "Material and molds";
  }

  /** A difference as a person reads it: {@code +4}, {@code -1.5}, {@code 0}. */
  public String difference(double value) {
    String text = brief(Math.abs(value));
    boolean nothing = text.chars().noneMatch(c -> c >= '1' && c <= '9');
    return nothing ? text : (value < 0 ? "\u2212" : "+") + text;
  }
}
