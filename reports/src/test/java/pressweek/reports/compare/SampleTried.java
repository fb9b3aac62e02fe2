package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

/** Scenarios put together by hand from the plan of {@code docs/figures.md}. */
public final class SampleTried {
  private SampleTried() {}

  /** The plan with a cost for lateness; without {@code late} line 5002/1 is on time. */
  static SmallPlan plan(long lateCost, boolean late) {
    SmallPlan plan = WorkedExample.small();
    plan.costs = Map.of(Rule.LATE, lateCost, Rule.CHANGE, 6_750_000L);
    if (!late) {
      Run run = plan.runs.get(1);
      int due = plan.jobs.get(1).deadline().dueMin();
      plan.runs.set(
          1,
          new Run(
              run.id(),
              run.job(),
              run.press(),
              run.mold(),
              run.seq(),
              run.change(),
              run.startMin(),
              run.endMin(),
              due,
              List.of(),
              List.of()));
    }
    return plan;
  }

  /** A plan by its seed. */
  static Tried.Planned planned(long seed, Plan plan, String... findings) {
    PlanBook book = PlanBook.of(plan);
    return new Tried.Planned(seed, book, PlanFigures.of(book), List.of(findings), List.of());
  }

  /** A scenario with a plan for each of these costs of lateness. */
  static Tried tried(String name, boolean late, long... costs) {
    List<Tried.Planned> plans = new ArrayList<>();
    for (int i = 0; i < costs.length; i++) {
      plans.add(planned(1 + 1_000L * i, plan(costs[i], late).plan()));
    }
    return tried(name, plans);
  }

  static Tried tried(String name, List<Tried.Planned> plans) {
    return new Tried(name, "", name.replaceAll("[^A-Za-z0-9]", "-"), List.of(), plans);
  }

  /** The folder as it stands, with lateness of 50, 60 and 55, beside these. */
  static SideBySide beside(Tried... scenarios) {
    Tried base = tried("As it stands", true, 5_000_000, 6_000_000, 5_500_000);
    return of(base, scenarios);
  }

  static SideBySide of(Tried base, Tried... scenarios) {
    return new SideBySide(
        "Quillback Grips",
        base,
        List.of(scenarios),
        "Every plan was searched for by 20 s, with seeds 1, 1001, 2001.",
        false,
        29_933_640);
  }

  /** A comparison with everything in it, for pages. */
  public static SideBySide sample() {
    return beside(
        tried("A Saturday shift", false, 1_000_000, 2_000_000, 1_500_000),
        tried("Nothing <b>new</b>", true, 5_100_000, 6_000_000, 5_200_000));
  }

  /** The same of a plant without rates. */
  public static SideBySide withoutMoney() {
    SmallPlan base = plan(5_000_000, true);
    base.money = false;
    SmallPlan better = plan(1_000_000, false);
    better.money = false;
    List<Tried.Planned> was = new ArrayList<>();
    List<Tried.Planned> is = new ArrayList<>();
    for (long seed = 1; seed <= 3; seed++) {
      was.add(planned(seed, base.plan()));
      is.add(planned(seed, better.plan()));
    }
    return of(tried("As it stands", was), tried("A Saturday shift", is));
  }

  /** A comparison that was ended before there was a plan. */
  public static SideBySide nothing() {
    return of(tried("As it stands", List.of()), tried("A Saturday shift", List.of()));
  }

  /** A scenario all of whose plans the audit rejects. */
  public static SideBySide broken() {
    Tried.Planned rejected = planned(1, plan(0, false).plan(), "press V1 does two things at once");
    return beside(tried("Impossible", List.of(rejected)));
  }
}
