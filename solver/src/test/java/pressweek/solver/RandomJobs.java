package pressweek.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Making;
import pressweek.data.problem.Option;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Press;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.Standing;
import pressweek.data.problem.Take;

/** Jobs of drawn plants. */
final class RandomJobs {
  private static final int START = RandomPlant.START;

  private final SplittableRandom random;
  private final boolean rules;
  private final int presses;
  private final int molds;
  private final int days;

  RandomJobs(SplittableRandom random, boolean rules, int presses, int molds, int days) {
    this.random = random;
    this.rules = rules;
    this.presses = presses;
    this.molds = molds;
    this.days = days;
  }

  private boolean maybe(int percent) {
    return rules && random.nextInt(100) < percent;
  }

  Job job(
      int j,
      boolean[][] fits,
      double meanRun,
      List<Press> pressList,
      int insertCount,
      String[] names) {
    int m = random.nextInt(molds);
    boolean twin = random.nextInt(4) == 0;
    int runMin = (int) Math.max(15, meanRun * (0.2 + 1.6 * random.nextDouble()));
    boolean food = maybe(12);
    String insert = "I" + random.nextInt(insertCount);
    int operators = rules ? random.nextInt(4) * 250 : 0;
    List<Option> options = new ArrayList<>();
    for (int mold : twin ? new int[] {m, (m + 1) % molds} : new int[] {m}) {
      Making making =
          new Making(
              500,
              2,
              10,
              400,
              rules ? List.of(new Take(insert, 300 + random.nextInt(2000), 20, 0)) : List.of());
      for (int p = 0; p < presses; p++) {
        if (fits[mold][p]
            || (mold == m && food && pressList.get(p).food() == FoodUse.OPEN && p % 3 == 0)) {
          options.add(
              new Option(
                  "P" + p,
                  "M" + mold,
                  maybe(30) ? "T1" : "",
                  making,
                  new Pace(30_000, runMin + (p % 3) * runMin / 10, 6, operators, "drawn"),
                  Standing.CHECKED,
                  List.of()));
        }
      }
    }
    int due = START + (int) (days * 1440 * (random.nextDouble() * 1.1 - 0.1));
    OrderLine line = new OrderLine("" + j, "1", "", "item " + j, 1000, due, List.of(), "");
    return new Job(
        line,
        new Item("item " + j, List.of()),
        new Quantity(1000, 0, 0, 1000),
        new Deadline(
            START + (maybe(10) ? random.nextInt(3000) : 0),
            due,
            maybe(50) ? random.nextInt(600) : 0,
            25 * (1 + random.nextInt(12))),
        names[random.nextInt(5)],
        "C" + random.nextInt(8),
        food,
        options);
  }
}
