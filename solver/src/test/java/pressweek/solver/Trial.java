package pressweek.solver;

import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.*;
import pressweek.data.problem.Problem;

public class Trial {
  public static void main(String[] a) {
    int jobs = Integer.parseInt(a[0]),
        presses = Integer.parseInt(a[1]),
        sec = Integer.parseInt(a[2]);
    for (long seed = 1; seed <= Integer.parseInt(a[3]); seed++) {
      Problem problem = RandomPlant.of(seed, jobs, presses).build();
      long t = System.nanoTime();
      Planner planner = new Planner(problem);
      Plan plan =
          planner.plan(
              new Head(
                  "1",
                  "",
                  0,
                  Map.of(),
                  new Settings(sec, a.length > 4 ? Integer.parseInt(a[4]) : 0, seed),
                  java.util.List.of(),
                  false),
              Optional.empty(),
              p -> {
                if (System.getProperty("v") != null)
                  System.err.println(
                      p.elapsedMillis()
                          + " "
                          + p.figures().avoidableCost() / 100000
                          + " late "
                          + p.figures().lateLines()
                          + " unpl "
                          + p.figures().unplacedLines());
              });
      System.out.println(
          "seed "
              + seed
              + " cost "
              + plan.figures().avoidableCost() / 100000
              + " late "
              + plan.figures().lateLines()
              + " unpl "
              + plan.figures().unplacedLines()
              + " chg "
              + plan.figures().changeMin()
              + " sec "
              + (System.nanoTime() - t) / 1e9);
      for (Reference r : plan.head().references())
        System.out.println(
            "   "
                + r.name()
                + " "
                + r.avoidableCost() / 100000
                + " late "
                + r.lateLines()
                + " -> "
                + (100 - 100 * plan.figures().avoidableCost() / Math.max(1, r.avoidableCost()))
                + " % below");
      System.out.println("   " + plan.figures().costByRule());
    }
  }
}
