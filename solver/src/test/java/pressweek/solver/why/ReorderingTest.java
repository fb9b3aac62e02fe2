package pressweek.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.Finishing;
import pressweek.solver.Plans;
import pressweek.solver.audit.Audit;

class ReorderingTest {
  private static final int WEEKS = 8;
  private static final int MANY_WEEKS = 40;

  /** Plans by seed: most tests look at the same ones. */
  private static final Map<Long, Plan> PLANS = new ConcurrentHashMap<>();

  @Test
  void whatStandsIsThePlan() {
    for (long seed = 1; seed <= WEEKS; seed++) {
      Plan plan = plan(seed);
      Plan standing = new Reordering(plan).standing();
      assertThat(standing.figures().avoidableCost())
          .as("seed %d", seed)
          .isEqualTo(plan.figures().avoidableCost());
    }
  }

  @Test
  void everyPlaceThatIsOfferedGivesThePlanItSays() {
    placesGiveThePlansTheySay(1, WEEKS);
  }

  @Test
  @Tag("full")
  void everyPlaceThatIsOfferedGivesThePlanItSaysInManyWeeks() {
    placesGiveThePlansTheySay(WEEKS + 1, MANY_WEEKS);
  }

  private static void placesGiveThePlansTheySay(long first, long last) {
    int tried = 0;
    for (long seed = first; seed <= last; seed++) {
      Plan plan = plan(seed);
      Reordering order = new Reordering(plan);
      long stands = order.standing().figures().avoidableCost();
      for (Job job : plan.problem().jobs()) {
        List<Placement> places = order.places(job.id(), 3);
        assertThat(places)
            .isSortedAccordingTo((a, b) -> Long.compare(a.costsMore(), b.costsMore()));
        for (Placement place : places) {
          Plan moved = order.moved(job.id(), place.press(), place.spot());
          assertThat(moved.figures().avoidableCost() - stands).isEqualTo(place.costsMore());
          tried++;
        }
      }
    }
    assertThat(tried).isGreaterThan((int) (last - first));
  }

  @Test
  void whatIsFinishedPassesTheAudit() {
    finishedPassesTheAudit(1, WEEKS);
  }

  @Test
  @Tag("full")
  void whatIsFinishedPassesTheAuditInManyWeeks() {
    finishedPassesTheAudit(WEEKS + 1, MANY_WEEKS);
  }

  private static void finishedPassesTheAudit(long first, long last) {
    int tried = 0;
    for (long seed = first; seed <= last; seed++) {
      Plan plan = plan(seed);
      Reordering order = new Reordering(plan);
      for (Job job : plan.problem().jobs()) {
        for (Placement place : order.places(job.id(), 1)) {
          Plan moved = order.moved(job.id(), place.press(), place.spot());
          Plan done = Finishing.of(plan.head(), moved, plan);
          assertThat(Audit.check(done.problem(), done)).as("seed %d %s", seed, job.id()).isEmpty();
          tried++;
        }
      }
    }
    assertThat(tried).isGreaterThan((int) (last - first));
  }

  @Test
  void aLineThatIsLeftOutIsChargedAndComesBack() {
    int tried = 0;
    for (long seed = 1; seed <= WEEKS; seed++) {
      Plan plan = plan(seed);
      for (Run run : plan.runs().stream().limit(3).toList()) {
        Reordering order = new Reordering(plan);
        if (order.places(run.job(), 1).isEmpty()) {
          continue;
        }
        Unplaced line = line(plan, run.job());
        Plan without = Finishing.of(plan.head(), order.without(line), plan);
        assertThat(without.unplaced()).contains(line);
        assertThat(without.runs()).extracting(Run::job).doesNotContain(run.job());
        assertThat(Audit.check(without.problem(), without)).as("seed %d", seed).isEmpty();
        Reordering back = new Reordering(without);
        Placement best = back.places(run.job(), 1).get(0);
        Plan again = back.moved(run.job(), best.press(), best.spot());
        assertThat(again.runs()).extracting(Run::job).contains(run.job());
        assertThat(again.figures().avoidableCost())
            .isEqualTo(without.figures().avoidableCost() + best.costsMore());
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(5);
  }

  @Test
  void whatCouldRunSomewhereComesCheapestFirst() {
    int offered = 0;
    for (long seed = 1; seed <= WEEKS; seed++) {
      Plan plan = plan(seed);
      Reordering order = new Reordering(plan);
      String press = plan.problem().floor().presses().get(0).id();
      int at = plan.problem().plant().hours().startMin() + 600;
      List<Reordering.Filling> room = order.room(press, at, 5);
      assertThat(room).allMatch(f -> order.canRun(f.line(), press));
      assertThat(room)
          .isSortedAccordingTo(
              (a, b) -> Long.compare(a.there().costsMore(), b.there().costsMore()));
      offered += room.size();
    }
    assertThat(offered).isPositive();
  }

  @Test
  void aPressThatMayNotRunALineIsRefused() {
    Plan plan = plan(1);
    Reordering order = new Reordering(plan);
    String line = plan.problem().jobs().get(0).id();
    assertThat(order.canRun(line, "none")).isFalse();
    assertThat(order.canRun("none", plan.problem().floor().presses().get(0).id())).isFalse();
    assertThatThrownBy(() -> order.moved(line, "none", 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("none");
  }

  private static Plan plan(long seed) {
    return PLANS.computeIfAbsent(seed, s -> Plans.of(DrawnWeeks.arranged(s), 60, s));
  }

  private static Unplaced line(Plan plan, String id) {
    return plan.problem().jobs().stream()
        .filter(j -> j.id().equals(id))
        .findFirst()
        .map(
            j ->
                new Unplaced(
                    j.line().order(),
                    j.line().line(),
                    j.line().item(),
                    j.quantity().good(),
                    "left out by hand",
                    "take it in again"))
        .orElseThrow();
  }
}
