package pressweek.data.files;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Item;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Uncertainty;

/**
 * The plant's own figures: {@code plant.json} with every default filled in.
 *
 * @param name name of the plant; may be empty
 * @param hours when it works
 * @param efficiencyPct share of working time that makes parts, percent
 * @param crew what is checked of the crew
 * @param shipping when the truck leaves
 * @param extraHours hours before and after molding
 * @param rates what things cost
 * @param changes change minutes and purge
 * @param fit figures for what a press can take
 * @param run figures of a run
 * @param heat figures of drying and of preheating inserts
 * @param food which work is food-grade
 * @param terms further terms of a plan
 * @param service service of molds where their own rows do not say
 * @param splitOverH hours of a run above which its line may be split in two; 0 for never
 * @param bringing in what amounts inserts leave their bin
 * @param moveToleranceMin minutes by which a promised run may shift
 * @param barrelDefaultG barrel in grams for presses without a shot weight, for purge
 * @param uncertainty how far a week may differ from its plan; no part of any plan
 * @param learnFromRuns runs from which on something is learnt from what they took
 * @param given line in {@code plant.json} of every key that was given, by its path, for example
 *     {@code crew.setter_share_pct}; a key that is not here has its default
 */
public record PlantRow(
    String name,
    WorkHours hours,
    double efficiencyPct,
    Crew crew,
    Shipping shipping,
    ExtraHours extraHours,
    Rates rates,
    ChangeTable changes,
    Fit fit,
    RunFigures run,
    Heat heat,
    Food food,
    Terms terms,
    Service service,
    double splitOverH,
    Bringing bringing,
    int moveToleranceMin,
    int barrelDefaultG,
    Uncertainty uncertainty,
    int learnFromRuns,
    Map<String, Integer> given) {
  public PlantRow {
    given = Map.copyOf(given);
  }

  /** True when the plant itself gave the figure at this path, false when it is the default. */
  public boolean gave(String path) {
    return given.containsKey(path);
  }

  /** Where the figure at this path stands; the file as a whole when it is the default. */
  public At at(String path) {
    return new At("plant.json", given.getOrDefault(path, 0));
  }

  /**
   * When the plant works.
   *
   * @param zone time zone
   * @param planStart first minute of the plan; empty for now, rounded up to the hour
   * @param horizonDays days from the start to the horizon
   * @param dateFormat pattern of dates beside {@code yyyy-MM-dd}
   * @param shifts all shifts; setters and operators are 0 where a shift gives none
   * @param calendars names of shifts by name of calendar; a press without a calendar works all
   *     shifts
   * @param closed days on which no shift begins
   * @param opening shifts that are not worked as others are
   */
  public record WorkHours(
      ZoneId zone,
      Optional<When> planStart,
      int horizonDays,
      String dateFormat,
      List<Shift> shifts,
      Map<String, List<String>> calendars,
      List<LocalDate> closed,
      Opening opening) {
    public WorkHours {
      shifts = List.copyOf(shifts);
      calendars = Collections.unmodifiableMap(new TreeMap<>(calendars));
      closed = List.copyOf(closed);
    }
  }

  /**
   * Hours that an order needs beside its run.
   *
   * @param afterMoldingMin minutes after every run
   * @param after further minutes after molding, for items that the rule fits; all that fit add up
   * @param before minutes before molding, likewise
   */
  public record ExtraHours(int afterMoldingMin, List<HoursRule> after, List<HoursRule> before) {
    public ExtraHours {
      after = List.copyOf(after);
      before = List.copyOf(before);
    }
  }

  /**
   * Minutes for the items that a condition fits.
   *
   * @param when the condition
   * @param minutes minutes
   */
  public record HoursRule(Condition when, int minutes) {}

  /**
   * A condition on the attributes of an item.
   *
   * @param attributes values that fit, by name of attribute; all of them must fit
   */
  public record Condition(Map<String, List<String>> attributes) {
    public Condition {
      attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
    }

    /** True when each named attribute of the item has one of the values. */
    public boolean fits(Item item) {
      return attributes.entrySet().stream()
          .allMatch(e -> item.value(e.getKey()).filter(e.getValue()::contains).isPresent());
    }
  }

  /**
   * Figures for what a press can take.
   *
   * @param cavityKnCm2 cavity pressure of a resin without its own
   * @param clampFactor clamp force over what the cavities push
   * @param shotLowPct least shot in percent of the barrel before a note is made
   * @param shotHighPct most shot in percent of the barrel before a note is made
   * @param shotStopPct most shot in percent of the barrel where it is not proven
   * @param psDensityGCm3 density of polystyrene, g/cm3
   * @param openingClearanceMm opening beside what the mold needs, mm
   * @param barrelInventory melt in the barrel over its rated shot
   */
  public record Fit(
      double cavityKnCm2,
      double clampFactor,
      double shotLowPct,
      double shotHighPct,
      double shotStopPct,
      double psDensityGCm3,
      double openingClearanceMm,
      double barrelInventory) {}

  /**
   * Figures of a run where nothing is recorded.
   *
   * @param scrapPct scrap, percent of all parts
   * @param startupShots shots thrown away after a change
   * @param operatorThousandthsHandLoad thousandths of an operator for a mold loaded by hand
   * @param operatorThousandthsOther thousandths of an operator for any other
   * @param loading seconds of loading by hand
   * @param insertLossPct inserts lost, percent
   * @param samples pieces kept as samples
   * @param cartonMultiple good pieces are rounded up to a multiple of this
   */
  public record RunFigures(
      double scrapPct,
      int startupShots,
      int operatorThousandthsHandLoad,
      int operatorThousandthsOther,
      Loading loading,
      double insertLossPct,
      int samples,
      int cartonMultiple) {}

  /** Seconds to load an insert, to unload a shot, and for the table to index. */
  public record Loading(double loadSPerInsert, double unloadS, double indexS) {}

  /**
   * Drying and preheating.
   *
   * @param coldStartH further hours of drying until a cold hopper is at temperature
   * @param cleanMin minutes to clean a dryer before another content
   * @param planned true when the planner is to count dryers
   * @param preheatC temperature of preheated inserts without their own, degrees Celsius
   * @param preheatMin minutes of preheating
   */
  public record Heat(
      double coldStartH, int cleanMin, boolean planned, double preheatC, double preheatMin) {}

  /**
   * Service of molds.
   *
   * @param minutes minutes that a service takes
   * @param shotsBetween shots between two services; 0 when the plant gives none
   */
  public record Service(int minutes, int shotsBetween) {}

  /**
   * Which work is food-grade.
   *
   * @param needs needs of an order line that make it food-grade
   * @param keptWithFood items that count as food-grade, too
   */
  public record Food(List<String> needs, List<Condition> keptWithFood) {
    public Food {
      needs = List.copyOf(needs);
      keptWithFood = List.copyOf(keptWithFood);
    }
  }
}
