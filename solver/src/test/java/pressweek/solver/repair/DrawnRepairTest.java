package pressweek.solver.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.solver.Planner;
import pressweek.solver.Plans;
import pressweek.solver.RandomPlant;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.why.Replay;

/** Plans of drawn plants, repaired at drawn times after drawn events. */
final class DrawnRepairTest {
  private static final int STEPS = 30;

  /** A drawn plant's plan and a time within it. */
  private record Drawn(Plan plan, int nowMin, SplittableRandom random) {
    static Drawn of(long seed, boolean crewed) {
      SplittableRandom random = new SplittableRandom(seed);
      int jobs = 2 + random.nextInt(30);
      Problem problem =
          RandomPlant.of(seed, jobs, 1 + random.nextInt(6)).load(0.3 + random.nextDouble()).build();
      problem = crewed ? problem : uncrewed(problem);
      Hours hours = problem.plant().hours();
      int now = hours.startMin() + random.nextInt(4 * 1440);
      return new Drawn(Plans.of(problem, STEPS, seed), now, random);
    }
  }

  /**
   * The problem without counting people: what is left of a setter's share after a change is not
   * carried over the present, so that with setters a change may come a little earlier.
   */
  private static Problem uncrewed(Problem problem) {
    Plant plant = problem.plant();
    Crew crew = plant.crew();
    return new Problem(
        new Plant(
            plant.name(),
            plant.hours(),
            new Crew(
                false, false, crew.setterSharePct(), crew.changeMaySpanGap(), crew.insertLeadMin()),
            plant.shipping(),
            plant.rates(),
            plant.changes(),
            plant.moveToleranceMin(),
            plant.barrelDefaultG()),
        problem.floor(),
        problem.materials(),
        problem.jobs(),
        problem.unplaced(),
        problem.notChecked(),
        problem.kitting(),
        problem.arrangements());
  }

  @Test
  void withoutEventsWhatIsLeftGoesOnAsPlanned() {
    assertThat(shifted(1, 25)).isEmpty();
  }

  @Test
  @Tag("full")
  void withoutEventsWhatIsLeftGoesOnAsPlannedOnManyPlants() {
    assertThat(shifted(1_000, 1_400)).isEmpty();
  }

  /**
   * Runs that do not end when the plan said, in plans in which no mold goes from press to press:
   * which press has it first is decided anew when a plan is carried out from another time on.
   */
  private static List<String> shifted(int from, int to) {
    List<String> found = new ArrayList<>();
    int plans = 0;
    for (long seed = from; seed < to; seed++) {
      Drawn drawn = Drawn.of(seed, false);
      if (sharesMolds(drawn.plan())) {
        continue;
      }
      plans++;
      Problem left = Repair.of(drawn.plan(), List.of(), Optional.empty(), drawn.nowMin()).problem();
      Map<String, Run> was = new HashMap<>();
      drawn.plan().runs().forEach(run -> was.put(run.job(), run));
      for (Run run : Replay.of(left, drawn.plan()).runs()) {
        Run before = was.get(run.job());
        if (before != null && before.endMin() != run.endMin()) {
          found.add("seed %d: %s, before %s".formatted(seed, run, before));
        }
      }
    }
    assertThat(plans).isGreaterThan((to - from) / 4);
    return found;
  }

  private static boolean sharesMolds(Plan plan) {
    Map<String, String> pressOf = new HashMap<>();
    plan.problem().floor().states().forEach(s -> pressOf.put(s.setup().mold(), s.press()));
    return plan.runs().stream()
        .anyMatch(
            r ->
                !r.press().equals(pressOf.getOrDefault(r.mold(), r.press()))
                    || !r.press().equals(pressOf.computeIfAbsent(r.mold(), m -> r.press())));
  }

  @Test
  void afterEventsThePlanKeepsEveryRuleAndEveryLine() {
    assertThat(findings(1, 16)).isEmpty();
  }

  @Test
  @Tag("full")
  void afterEventsManyPlansKeepEveryRuleAndEveryLine() {
    assertThat(findings(1_000, 1_400)).isEmpty();
  }

  private static List<String> findings(int from, int to) {
    List<String> found = new ArrayList<>();
    for (long seed = from; seed < to; seed++) {
      Drawn drawn = Drawn.of(seed, true);
      List<FloorEvent> events = events(drawn);
      Repaired left = Repair.of(drawn.plan(), events, Optional.empty(), drawn.nowMin());
      Plan plan =
          new Planner(left.problem())
              .plan(drawn.plan().head(), Optional.of(drawn.plan()), progress -> {});
      plan = RunNumbers.kept(drawn.plan(), plan);
      for (Finding finding : Audit.check(left.problem(), plan)) {
        if (finding.rule() != Rule.PROMISED) {
          found.add("seed " + seed + " " + events + ": " + finding);
        }
      }
      lost(drawn.plan(), plan, left).forEach(line -> found.add("lost " + line));
    }
    return found;
  }

  private static Set<String> lost(Plan before, Plan now, Repaired left) {
    Set<String> lost = new HashSet<>(before.problem().jobs().stream().map(Job::id).toList());
    lost.addAll(before.unplaced().stream().map(Unplaced::id).toList());
    now.runs().stream().map(Run::job).forEach(lost::remove);
    now.unplaced().stream().map(Unplaced::id).forEach(lost::remove);
    left.ended().stream().map(Ended::line).forEach(lost::remove);
    return lost;
  }

  private static List<FloorEvent> events(Drawn drawn) {
    SplittableRandom random = drawn.random();
    Problem problem = drawn.plan().problem();
    List<FloorEvent> events = new ArrayList<>();
    Set<String> lines = new HashSet<>();
    for (EventKind kind : EventKind.values()) {
      if (random.nextInt(3) == 0) {
        what(kind, problem, random)
            .filter(what -> !kind.ofLine() || lines.add(what))
            .ifPresent(what -> events.add(event(kind, what, drawn)));
      }
    }
    return events;
  }

  private static FloorEvent event(EventKind kind, String what, Drawn drawn) {
    Hours hours = drawn.plan().problem().plant().hours();
    int from = hours.startMin() + drawn.random().nextInt(drawn.nowMin() - hours.startMin() + 1);
    int to = kind.away() ? from + 1 + drawn.random().nextInt(2_000) : from;
    int count = kind == EventKind.COUNT_SHORT ? drawn.random().nextInt(2) : 1;
    return new FloorEvent(new At("events.csv", 2), kind, what, from, to, count, "");
  }

  private static Optional<String> what(EventKind kind, Problem problem, SplittableRandom random) {
    List<String> all =
        switch (kind) {
          case PRESS_AWAY -> problem.floor().presses().stream().map(p -> p.id()).toList();
          case MOLD_AWAY -> problem.floor().molds().stream().map(m -> m.id()).toList();
          case PERSON_AWAY -> List.of("setter", "operator");
          case LOT_HELD -> problem.materials().stock().lots().stream().map(Lot::id).toList();
          case FINISHED, COUNT_SHORT, DROPPED, ON_HOLD ->
              problem.jobs().stream().map(Job::id).toList();
          case RUSH -> List.of();
        };
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
  }
}
