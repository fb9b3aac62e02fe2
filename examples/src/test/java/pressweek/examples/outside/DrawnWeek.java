package pressweek.examples.outside;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import pressweek.data.problem.Break;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/**
 * Small weeks drawn by a seed, in which a few jobs contend for presses, molds and a setter. The
 * mean time between due times is near what the presses can do, so that about half the jobs are
 * late. Rates divide evenly: no charge is rounded.
 */
final class DrawnWeek {
  private static final int START = SmallPlant.START;
  private static final List<String> RESINS = List.of("PP", "ABS", "POM");
  private static final List<String> COLOURS = List.of("BLK", "RED", "WHT");
  private static final int MEAN_RUN_MIN = 120;
  private static final long NEVER_LEFT_OUT = 1_000_000_000_000L;

  private final SplittableRandom random;
  private final SmallPlant plant = new SmallPlant();
  private final int jobs;
  private final int presses;
  private final int molds;
  private final boolean[][] fits;
  private boolean everything;
  private boolean shifts;
  private boolean operators;
  private boolean inserts;
  private boolean food;

  private DrawnWeek(long seed, int jobs, int presses) {
    random = new SplittableRandom(seed);
    this.jobs = jobs;
    this.presses = presses;
    molds = 2 + random.nextInt(3);
    fits = new boolean[molds][presses];
  }

  /**
   * A week of presses that work round the clock: eligibility, molds, setters, changes, weights,
   * start-up. Leaving a job out is dearer than anything else.
   */
  static Problem roundTheClock(long seed, int jobs, int presses) {
    return new DrawnWeek(seed, jobs, presses).draw();
  }

  /**
   * A week with some of shifts, operators, inserts, food-grade work, forbidden neighbours and
   * downtime as well, in which it may pay to leave a job out.
   */
  static Problem withEverything(long seed, int jobs, int presses) {
    DrawnWeek week = new DrawnWeek(seed, jobs, presses);
    week.everything = true;
    week.shifts = week.maybe(70);
    week.operators = week.maybe(60);
    week.inserts = week.maybe(70);
    week.food = week.maybe(60);
    return week.draw();
  }

  private boolean maybe(int percent) {
    return random.nextInt(100) < percent;
  }

  private <T> T oneOf(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  private Problem draw() {
    plant.resin(neverNextTo(SmallPlant.resin("POM", 205), food ? List.of("ABS") : List.of()));
    plant.rates(
        new Rates(
            "EUR",
            true,
            oneOf(List.of(0L, 5_000_000L)),
            1440 * 4_000L,
            60 * oneOf(List.of(0L, 75_000L)),
            300_000,
            2_400_000,
            everything ? 40_000_000 : NEVER_LEFT_OUT));
    int share = oneOf(List.of(50, 80, 100));
    plant.crew(new Crew(maybe(70), operators, share, maybe(30), 30));
    plant.shifts(
        shifts ? twoShifts() : new Shift[] {crewed(SmallPlant.shift("all", "00:00", "00:00"))});
    if (shifts) {
      plant.calendar("early only", "early");
    }
    drawFloor();
    for (int job = 1; job <= jobs; job++) {
      plant.job(job(job));
    }
    if (inserts) {
      drawStock();
    }
    return plant.build();
  }

  private static Resin neverNextTo(Resin resin, List<String> others) {
    return new Resin(
        resin.id(),
        resin.grade(),
        resin.densityGCm3(),
        resin.meltC(),
        resin.cavityKnCm2(),
        resin.pricePerKg(),
        resin.barrel(),
        others);
  }

  private Shift[] twoShifts() {
    return new Shift[] {
      crewed(SmallPlant.shift("early", "06:00", "14:00")),
      crewed(SmallPlant.shift("late", "14:00", "22:00"))
    };
  }

  /** The shift with one or two setters and, by day, a break. */
  private Shift crewed(Shift shift) {
    List<Break> breaks =
        shifts && maybe(50)
            ? List.of(
                new Break(shift.from().plusHours(4), shift.from().plusHours(4).plusMinutes(30)))
            : List.of();
    return new Shift(
        shift.name(),
        EnumSet.allOf(DayOfWeek.class),
        shift.from(),
        shift.to(),
        breaks,
        1 + random.nextInt(4) / 3,
        1_000 + 500 * random.nextInt(3),
        OptionalInt.empty());
  }

  private void drawFloor() {
    for (int press = 1; press <= presses; press++) {
      plant.press(press(SmallPlant.horizontal("P" + press)));
      if (shifts && maybe(20)) {
        int from = START + 480 + random.nextInt(600);
        plant.away(new Downtime(Downtime.Kind.PRESS, "P" + press, from, from + 90, "service"));
      }
    }
    List<Integer> standing = new ArrayList<>();
    for (int mold = 0; mold < molds; mold++) {
      plant.mold(mold(SmallPlant.mold("M" + (mold + 1))));
      for (int press = 0; press < presses; press++) {
        fits[mold][press] = maybe(70);
      }
      fits[mold][random.nextInt(presses)] = true;
      standing.add(mold);
    }
    for (int press = 0; press < presses; press++) {
      if (maybe(60) && !standing.isEmpty()) {
        String mold = "M" + (standing.remove(random.nextInt(standing.size())) + 1);
        Setup setup = new Setup(mold, "", oneOf(RESINS), oneOf(COLOURS));
        plant.state(new PressState("P" + (press + 1), setup, maybe(30), ""));
      }
    }
  }

  private Press press(Press press) {
    FoodUse use =
        press.id().equals("P1") || !food ? FoodUse.OPEN : oneOf(List.of(FoodUse.values()));
    return new Press(
        press.id(),
        press.cell(),
        press.build(),
        press.size(),
        shifts && maybe(30) ? "early only" : "always",
        use,
        60 * oneOf(List.of(10_000L, 20_000L)));
  }

  private Mold mold(Mold mold) {
    int changeMin = 20 + 10 * random.nextInt(8);
    return new Mold(
        mold.id(),
        mold.use(),
        mold.cavities(),
        mold.body(),
        mold.runsOn(),
        new Mold.MoldChange(OptionalInt.of(changeMin), false, OptionalInt.empty()),
        mold.cycleS(),
        mold.handLoad());
  }

  private JobBuilder job(int number) {
    JobBuilder job = JobBuilder.job(String.valueOf(number)).in(oneOf(RESINS), oneOf(COLOURS));
    int open = shifts ? 480 : 0;
    job.due(START + open - 120 + random.nextInt(120 + jobs * MEAN_RUN_MIN / presses));
    job.weight(oneOf(List.of(50, 100, 100, 200, 500)));
    if (maybe(25)) {
      job.earliest(START + open + random.nextInt(300));
    }
    job.after(maybe(20) ? 45 : 0);
    if (maybe(30)) {
      job.startup(10, 400, 7);
    }
    if (operators) {
      job.operators(250 * random.nextInt(4));
    }
    if (inserts && maybe(60)) {
      job.takes(new Take("I1", 100 + random.nextInt(200), 20, 0));
    }
    boolean foodGrade = food && maybe(30);
    if (foodGrade) {
      job.food();
    }
    addOptions(job);
    return job;
  }

  /** One mold, sometimes another where the first does not fit; food-grade work goes on P1, too. */
  private void addOptions(JobBuilder job) {
    int mold = random.nextInt(molds);
    int other = maybe(25) ? random.nextInt(molds) : mold;
    int run = 20 + random.nextInt(2 * MEAN_RUN_MIN - 40);
    String tooling = maybe(25) ? "T1" : "";
    for (int press = 0; press < presses; press++) {
      boolean fit = fits[mold][press] || (food && press == 0);
      if (fit || fits[other][press]) {
        String taken = "M" + ((fit ? mold : other) + 1);
        job.on("P" + (press + 1), taken, tooling, run + press * run / 10);
      }
    }
  }

  private void drawStock() {
    int now = 200 + random.nextInt(600);
    Lot lot =
        new Lot("I1", "L1", "B1", now, START - 9_000, OptionalInt.empty(), LotStatus.USABLE, "");
    int first = START + 300 + random.nextInt(600);
    int second = first + random.nextInt(600);
    plant.stock(
        List.of(lot),
        List.of(
            new Receipt("I1", 600, first, first + 60),
            new Receipt("I1", 2_000, second, second + 60)));
  }
}
