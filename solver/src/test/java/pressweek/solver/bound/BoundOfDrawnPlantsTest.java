package pressweek.solver.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Resin;
import pressweek.solver.Plans;
import pressweek.solver.RandomPlant;

/** The bound beside drawn plants: it may be far below the best plan, never above any. */
final class BoundOfDrawnPlantsTest {
  private static Problem drawn(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int jobs = 2 + random.nextInt(30);
    int presses = 1 + random.nextInt(6);
    RandomPlant plant = RandomPlant.of(seed, jobs, presses).load(0.3 + 1.2 * random.nextDouble());
    return (random.nextInt(4) == 0 ? plant.plain() : plant).build();
  }

  private static long bound(Problem problem) {
    return LowerBound.of(problem).map(Bound::amount).orElse(0L);
  }

  @Test
  void noPlanCostsLess() {
    noPlanOfSoManyCostsLess(60);
  }

  @Test
  @Tag("full")
  void noPlanOfManyCostsLess() {
    noPlanOfSoManyCostsLess(300);
  }

  private static void noPlanOfSoManyCostsLess(int plants) {
    int above = 0;
    int near = 0;
    for (long seed = 1; seed <= plants; seed++) {
      Problem problem = drawn(seed);
      Plan plan = Plans.of(problem, 40, seed);
      long bound = bound(problem);
      assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(plan.figures().avoidableCost());
      above += bound > 0 ? 1 : 0;
      near += 2 * bound > plan.figures().avoidableCost() ? 1 : 0;
    }
    assertThat(above).isGreaterThan(plants * 2 / 3);
    assertThat(near).isGreaterThan(plants / 5);
  }

  @Test
  void theBestOfAFewLinesIsNoCheaper() {
    bestIsNoCheaper(1, 11);
  }

  @Test
  @Tag("full")
  void theBestOfAFewLinesIsNoCheaperOnManyPlants() {
    bestIsNoCheaper(11, 61);
  }

  private static void bestIsNoCheaper(int from, int to) {
    for (long seed = from; seed < to; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Problem problem =
          RandomPlant.of(seed, 2 + random.nextInt(4), 1 + random.nextInt(2)).load(1.2).build();
      Plan plan = Plans.of(problem, 1_000, seed);
      assertThat(bound(problem)).isLessThanOrEqualTo(plan.figures().avoidableCost());
    }
  }

  @Test
  void anotherPressNeverRaisesIt() {
    for (long seed = 1; seed <= 200; seed++) {
      Problem problem = drawn(seed);
      Press like = problem.floor().presses().get(0);
      assertThat(bound(withCopy(problem, like)))
          .as("seed %d", seed)
          .isLessThanOrEqualTo(bound(problem));
    }
  }

  /** One more press that can do all that another can, empty and never away. */
  private static Problem withCopy(Problem problem, Press like) {
    Press copy =
        new Press(
            "copy",
            like.cell(),
            like.build(),
            like.size(),
            like.calendar(),
            like.food(),
            like.ratePerHour());
    List<Press> presses = new ArrayList<>(problem.floor().presses());
    presses.add(copy);
    List<Job> jobs = problem.jobs().stream().map(j -> withCopy(j, like.id())).toList();
    Floor floor = problem.floor();
    return new Problem(
        problem.plant(),
        new Floor(
            presses,
            floor.molds(),
            floor.states(),
            floor.downtime(),
            floor.promises(),
            floor.recordedChanges()),
        problem.materials(),
        jobs,
        problem.unplaced(),
        problem.notChecked(),
        problem.kitting(),
        problem.arrangements());
  }

  private static Job withCopy(Job job, String like) {
    List<Option> options = new ArrayList<>(job.options());
    job.options().stream()
        .filter(o -> o.press().equals(like))
        .map(
            o ->
                new Option(
                    "copy", o.mold(), o.tooling(), o.making(), o.pace(), o.standing(), o.notes()))
        .forEach(options::add);
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        options);
  }

  @Test
  void threeTimesAllMoneyIsThreeTimesTheBound() {
    for (long seed = 1; seed <= 100; seed++) {
      Problem problem = drawn(seed);
      long charges = 20L * problem.jobs().size();
      assertThat((double) bound(dearer(problem)))
          .as("seed %d", seed)
          .isBetween(3.0 * bound(problem) - charges, 3.0 * bound(problem) + 3 * charges);
    }
  }

  private static Problem dearer(Problem problem) {
    Plant p = problem.plant();
    Rates r = p.rates();
    Rates rates =
        new Rates(
            r.currency(),
            r.shown(),
            3 * r.lateStep(),
            3 * r.lateDay(),
            3 * r.changeHour(),
            3 * r.purgeKg(),
            3 * r.keptPressHour(),
            3 * r.unplaced());
    Plant plant =
        new Plant(
            p.name(),
            p.hours(),
            p.crew(),
            p.shipping(),
            rates,
            p.changes(),
            p.moveToleranceMin(),
            p.barrelDefaultG());
    List<Resin> resins =
        problem.materials().resins().stream()
            .map(
                s ->
                    new Resin(
                        s.id(),
                        s.grade(),
                        s.densityGCm3(),
                        s.meltC(),
                        s.cavityKnCm2(),
                        3 * s.pricePerKg(),
                        s.barrel(),
                        s.neverNextTo()))
            .toList();
    var m = problem.materials();
    return new Problem(
        plant,
        problem.floor(),
        new pressweek.data.problem.Materials(
            resins, m.colours(), m.inserts(), m.stock(), m.preparation()),
        problem.jobs(),
        problem.unplaced(),
        problem.notChecked(),
        problem.kitting(),
        problem.arrangements());
  }
}
