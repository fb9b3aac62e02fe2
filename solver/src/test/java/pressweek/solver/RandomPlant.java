package pressweek.solver;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Table;

/**
 * Problems drawn by a seed, for tests: every rule is switched on and off by the draw. The week
 * starts Monday 2026-11-30 06:00 Berlin.
 */
public final class RandomPlant {
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  static final int START =
      (int) (java.time.LocalDateTime.of(2026, 11, 30, 6, 0).atZone(ZONE).toEpochSecond() / 60);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final SplittableRandom random;
  private final int jobs;
  private final int presses;
  private final int molds;
  private boolean rules = true;
  private int days = 7;
  private double load = 0.9;

  private RandomPlant(long seed, int jobs, int presses) {
    random = new SplittableRandom(seed);
    this.jobs = jobs;
    this.presses = presses;
    molds = Math.max(2, jobs / 4);
  }

  /** A plant with so many jobs and presses. */
  public static RandomPlant of(long seed, int jobs, int presses) {
    return new RandomPlant(seed, jobs, presses);
  }

  /** Presses round the clock, without inserts, crew, food and promises. */
  public RandomPlant plain() {
    rules = false;
    return this;
  }

  /** Work for this share of the press hours. */
  public RandomPlant load(double share) {
    load = share;
    return this;
  }

  public RandomPlant days(int count) {
    days = count;
    return this;
  }

  private boolean maybe(int percent) {
    return rules && random.nextInt(100) < percent;
  }

  public Problem build() {
    List<Shift> shifts = RandomShifts.of(rules, presses);
    int end = START + days * 1440;
    Crew crew = new Crew(maybe(80), maybe(70), 80, maybe(15), random.nextInt(3) * 20);
    Hours hours =
        new Hours(
            ZONE,
            START,
            end,
            shifts,
            List.of(
                new Calendar("two", List.of("early", "late")),
                new Calendar("all", shifts.stream().map(Shift::name).toList())),
            maybe(10) ? List.of(java.time.LocalDate.of(2026, 12, 2)) : List.of());
    Rates rates =
        new Rates("EUR", true, 12_000_000, 8_000_000, 4_500_000, 300_000, 2_500_000, 40_000_000);
    ChangeTable table =
        new ChangeTable(
            60,
            40,
            20,
            new ChangeTable.ResinStep(20, 20, 40, 30, 3_000),
            new ChangeTable.ColourStep(10, 30, 45, 40, 1_500, 4_000),
            30,
            10,
            maybe(30));
    Plant plant =
        new Plant(
            "Drawn",
            hours,
            crew,
            new Shipping(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), LocalTime.of(15, 0)),
            rates,
            table,
            60,
            250);
    List<Press> pressList = new ArrayList<>();
    for (int p = 0; p < presses; p++) {
      FoodUse food =
          !rules ? FoodUse.OPEN : FoodUse.values()[random.nextInt(4) == 0 ? random.nextInt(4) : 2];
      pressList.add(
          new Press(
              "P" + p,
              "",
              new Press.Build(Orientation.VERTICAL, Table.FIXED, 1, Barrel.STANDARD),
              new Press.Size(
                  NONE, OptionalDouble.of(80 + random.nextInt(200)), NONE, NONE, NONE, NONE, NONE),
              maybe(50) ? "two" : "all",
              food,
              1_000_000 + random.nextInt(5) * 500_000));
    }
    List<Resin> resins = new ArrayList<>();
    String[] names = {"PP", "ABS", "PA66", "POM", "PVC"};
    double[] melt = {230, 240, 285, 205, 190};
    for (int r = 0; r < names.length; r++) {
      resins.add(
          new Resin(
              names[r],
              "",
              NONE,
              OptionalDouble.of(melt[r]),
              NONE,
              150_000 + 60_000 * r,
              Barrel.STANDARD,
              names[r].equals("POM") && rules ? List.of("PVC") : List.of()));
    }
    List<Colour> colours = new ArrayList<>();
    for (int c = 0; c < 8; c++) {
      colours.add(
          new Colour(
              "",
              "C" + c,
              "colour " + c,
              "",
              c == 7 ? NONE : OptionalDouble.of(random.nextInt(1000) / 10.0)));
    }
    List<Mold> moldList = new ArrayList<>();
    for (int m = 0; m < molds; m++) {
      moldList.add(
          new Mold(
              "M" + m,
              new Mold.Use(List.of("H" + m), Optional.empty(), List.of(), List.of(), Map.of()),
              new Mold.Cavities(2, 2, NONE, NONE, NONE, NONE, NONE),
              new Mold.Body(Optional.empty(), NONE, NONE, NONE, NONE, NONE, ""),
              new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
              new Mold.MoldChange(
                  OptionalInt.of(30 + random.nextInt(60)),
                  false,
                  maybe(4) ? OptionalInt.of(START + random.nextInt(3000)) : OptionalInt.empty()),
              OptionalDouble.of(30),
              true));
    }
    List<Insert> inserts = new ArrayList<>();
    List<Lot> lots = new ArrayList<>();
    List<Receipt> receipts = new ArrayList<>();
    int insertCount = Math.max(1, jobs / 5);
    for (int i = 0; i < insertCount; i++) {
      inserts.add(
          new Insert("I" + i, "blind", "M8x1.25", NONE, "steel", "zinc", "trivalent", NONE));
      lots.add(
          new Lot(
              "I" + i,
              "L" + i,
              "B" + i,
              600 + random.nextInt(20_000),
              START - 9000 + random.nextInt(5000),
              OptionalInt.empty(),
              maybe(6) ? LotStatus.HELD : LotStatus.USABLE,
              ""));
      lots.add(
          new Lot(
              "I" + i,
              "K" + i,
              "B" + i,
              1000,
              START - 9000,
              OptionalInt.of(START + random.nextInt(30_000)),
              LotStatus.USABLE,
              ""));
      if (random.nextInt(2) == 0) {
        int at = START + random.nextInt(5000);
        receipts.add(new Receipt("I" + i, 3000 + random.nextInt(20_000), at, at + 240));
      }
    }
    List<Job> jobList = new ArrayList<>();
    boolean[][] fits = new boolean[molds][presses];
    for (boolean[] row : fits) {
      for (int p = 0; p < presses; p++) {
        row[p] = random.nextInt(100) < 45;
      }
      row[random.nextInt(presses)] = true;
    }
    double hoursAWeek = rules ? 70 : 24.0 * days;
    double meanRun = load * hoursAWeek * 60 * presses / jobs;
    RandomJobs drawn = new RandomJobs(random, rules, presses, molds, days);
    for (int j = 0; j < jobs; j++) {
      jobList.add(drawn.job(j, fits, meanRun, pressList, insertCount, names));
    }
    List<PressState> states = new ArrayList<>();
    List<Promise> promises = new ArrayList<>();
    boolean[] used = new boolean[jobs];
    boolean[] moldUsed = new boolean[molds];
    for (int p = 0; p < presses && rules; p++) {
      if (random.nextInt(3) == 0) {
        Job job = jobList.get(random.nextInt(jobs));
        int j = Integer.parseInt(job.line().order());
        int m = Integer.parseInt(job.options().get(0).mold().substring(1));
        int press = p;
        boolean runs =
            job.options().stream()
                .anyMatch(o -> o.press().equals("P" + press) && o.mold().equals("M" + m));
        boolean allowed =
            job.foodGrade()
                ? pressList.get(p).food() != FoodUse.NEVER
                : pressList.get(p).food() != FoodUse.ONLY;
        boolean free = moldList.get(m).change().availableFromMin().isEmpty();
        if (runs && !used[j] && !moldUsed[m] && allowed && free) {
          used[j] = true;
          moldUsed[m] = true;
          states.add(
              new PressState(
                  "P" + p,
                  new Setup("M" + m, job.options().get(0).tooling(), job.resin(), job.colour()),
                  job.foodGrade(),
                  job.id()));
        }
      } else if (random.nextInt(3) == 0) {
        int m = random.nextInt(molds);
        if (!moldUsed[m]) {
          moldUsed[m] = true;
          states.add(
              new PressState(
                  "P" + p,
                  new Setup("M" + m, "", names[random.nextInt(5)], "C" + random.nextInt(8)),
                  random.nextInt(2) == 0,
                  ""));
        }
      }
    }
    List<Downtime> downtime = new ArrayList<>();
    for (int p = 0; p < presses; p++) {
      if (maybe(15)) {
        int from = START + 1440 * random.nextInt(days) + random.nextInt(600);
        downtime.add(
            new Downtime(
                Downtime.Kind.PRESS, "P" + p, from, from + 60 + random.nextInt(900), "service"));
      }
    }
    for (int m = 0; m < molds; m++) {
      if (maybe(6) && !moldUsed[m]) {
        int from = START + random.nextInt(2000);
        downtime.add(
            new Downtime(
                Downtime.Kind.MOLD, "M" + m, from, from + 60 + random.nextInt(2000), "repair"));
      }
    }
    Stock stock = new Stock(maybe(85), lots, receipts);
    return new Problem(
        plant,
        new Floor(pressList, moldList, states, downtime, promises, List.of()),
        new Materials(resins, colours, inserts, stock),
        jobList,
        List.of(),
        List.of(),
        Optional.empty());
  }
}
