package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.reports.sample.SmallPlan;

class BestPossibleTest {
  private static Plan plan(boolean money, long cost, long... bound) {
    SmallPlan small = new SmallPlan();
    small.money = money;
    small.costs = cost == 0 ? Map.of() : Map.of(Rule.LATE, cost);
    Plan p = small.plan();
    Optional<Bound> proved =
        bound.length == 0
            ? Optional.empty()
            : Optional.of(
                new Bound(
                    bound[0],
                    List.of(new Bound.Part("little", 1), new Bound.Part("much", bound[0] - 1))));
    Head h = p.head();
    Head head =
        new Head(
            h.number(),
            h.replaces(),
            h.madeMin(),
            h.inputs(),
            h.settings(),
            h.references(),
            h.stopped(),
            Optional.of(new PlantWide(List.of(), List.of(), List.of(), List.of(), proved)));
    return new Plan(
        head,
        p.problem(),
        p.runs(),
        p.dismounts(),
        p.pulls(),
        p.unplaced(),
        p.unplacedCharges(),
        p.figures());
  }

  @Test
  void theMostAPlanCanBeAboveTheBestIsRoundedUp() {
    assertThat(BestPossible.words(plan(true, 30_000_000, 20_000_000)))
        .isEqualTo("At most 50 % above the best possible (proved bound EUR 200.00).");
    assertThat(BestPossible.words(plan(true, 20_000_001, 20_000_000)))
        .startsWith("At most 0.1 % above");
    assertThat(BestPossible.words(plan(true, 22_200_001, 20_000_000)))
        .startsWith("At most 12 % above");
  }

  @Test
  void withoutRatesNoMoneyIsNamed() {
    assertThat(BestPossible.words(plan(false, 30_000_000, 20_000_000)))
        .isEqualTo("At most 50 % above the best possible.");
  }

  @Test
  void aPlanAtTheBoundIsTheBest() {
    assertThat(BestPossible.words(plan(true, 20_000_000, 20_000_000)))
        .isEqualTo("It is the best possible (proved bound EUR 200.00).");
    assertThat(BestPossible.words(plan(true, 0)))
        .isEqualTo("It is the best possible: nothing could have been avoided.");
  }

  @Test
  void withoutABoundNobodyCanTell() {
    assertThat(BestPossible.words(plan(true, 5)))
        .isEqualTo("How far from the best possible: cannot tell.");
    assertThat(BestPossible.parts(plan(true, 5))).isEmpty();
  }

  @Test
  void partsComeLargestFirst() {
    assertThat(BestPossible.parts(plan(true, 9, 5)))
        .extracting(Bound.Part::what)
        .containsExactly("much", "little");
  }
}
