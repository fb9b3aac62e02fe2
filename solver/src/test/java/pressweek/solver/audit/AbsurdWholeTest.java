package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;

/** Nonsense in what a plan decides for the plant as a whole, and in arrangements, never throws. */
class AbsurdWholeTest {
  private static final List<String> IDS =
      List.of("", "R1", "R2", "R9", "A/1", "B/1", "P1", "P2", "M1", "M4", "T8", "extra", "D1");
  private static final int[] NUMBERS = {
    Integer.MIN_VALUE, -1, 0, 1, ClockWeek.utc("2026-10-25T01:00:00Z"), Integer.MAX_VALUE
  };

  @RepeatedTest(100)
  void nonsenseGivesFindingsOnly(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Plan good = ClockWeek.autumn();
    Problem problem = good.problem().with(arrangements(random, good.problem().arranged()));
    Plan plan = Edited.set(good, "problem", problem);
    plan = Edited.set(plan, "head.whole", Optional.of(whole(random)));
    if (random.nextBoolean()) {
      List<Run> runs = new ArrayList<>(plan.runs());
      runs.replaceAll(run -> Edited.set(run, "startMin", number(random)));
      plan = Edited.set(plan, "runs", runs);
    }
    Plan absurd = plan;
    assertThatCode(() -> Audit.check(problem, absurd)).doesNotThrowAnyException();
  }

  private static PlantWide whole(Random random) {
    return new PlantWide(
        List.of(
            new PlantWide.Opened(id(random), number(random), number(random)),
            new PlantWide.Opened("extra", number(random), number(random))),
        List.of(new PlantWide.Held(id(random), id(random))),
        List.of(
            new PlantWide.DryerUse(id(random), id(random), "", number(random), number(random)),
            new PlantWide.DryerUse("R1", "D1", "PP", number(random), number(random))),
        List.of(new Charge(Rule.CLOSE, random.nextLong(), "")),
        Optional.of(new Bound(random.nextLong(), List.of(new Bound.Part("", Long.MIN_VALUE)))));
  }

  private static Arrangements arrangements(Random random, Arrangements given) {
    return new Arrangements(
        List.of(new CountedThing("T8", 1), new CountedThing("heater", number(random))),
        List.of(new DeviceNeed(id(random), "heater"), new DeviceNeed("M1", "heater")),
        List.of(new MoldService(id(random), number(random), number(random), number(random))),
        List.of(
            new Trial(
                "P1",
                id(random),
                number(random),
                number(random),
                number(random),
                "trial",
                OptionalInt.empty())),
        List.of(new Link(id(random), id(random), number(random))),
        List.of(),
        given.opening(),
        new Arrangements.Settled(
            new Drying(
                List.of(new Drying.Feed("D1", List.of("P1", "P2"))),
                List.of(
                    new Drying.Dried("PP", "BK", "PP", number(random)),
                    new Drying.Dried("ABS", "RD", "ABS", number(random))),
                number(random)),
            new Terms(
                number(random),
                random.nextLong(),
                random.nextLong(),
                random.nextLong(),
                List.of(new Terms.Place("A/1", id(random), number(random))))));
  }

  private static String id(Random random) {
    return IDS.get(random.nextInt(IDS.size()));
  }

  private static int number(Random random) {
    return NUMBERS[random.nextInt(NUMBERS.length)];
  }
}
