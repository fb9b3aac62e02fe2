package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class HeadlineTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan oneLateRun() {
    Setup black = new Setup("M1", "", "PP", "BLK");
    Setup red = new Setup("M1", "", "PP", "SGR");
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "10:00")
        .run(
            "R1",
            "4711/1",
            "V1",
            SmallPlan.change(
                List.of(ChangeKind.COLOUR), black, red, MONDAY + "08:00", MONDAY + "08:40"),
            List.of(SampleWeek.at(MONDAY + "08:40"), SampleWeek.at(MONDAY + "12:05")));
  }

  @Test
  void linesAndChangesAreCounted() {
    SmallPlan plan = oneLateRun();
    plan.unplaced.add(new Unplaced("4712", "1", "X", 10, "no mold", "add it"));
    plan.job("4713", "V2", MONDAY + "22:00")
        .run("R2", "4713", "V2", MONDAY + "08:00", MONDAY + "12:00");
    assertThat(Headline.figures(plan.plan()))
        .containsExactly(
            "Of 3 order lines, 1 is ready on time, 1 late by 2 h 5 min in all, 1 unplaced.",
            "1 change takes 40 min and purge 0.4 kg.");
  }

  @Test
  void emptyWeekSaysSo() {
    assertThat(Headline.figures(new SmallPlan().plan()))
        .containsExactly("There is no order line to plan.", "Nothing has to be changed.");
  }

  @Test
  void stoppedSearchIsSaidFirst() {
    SmallPlan plan = new SmallPlan();
    plan.stopped = true;
    assertThat(Headline.figures(plan.plan()).get(0)).startsWith("The search was stopped early");
  }

  @Test
  void costIsComparedWithEachSimpleWay() {
    SmallPlan plan = oneLateRun();
    plan.costs = Map.of(Rule.LATE, 82_000_000L);
    plan.references.add(new Reference("earliest-due-date order", 100_000_000L, 3, 90));
    plan.references.add(new Reference("one mold after the other", 80_000_000L, 3, 90));
    assertThat(Headline.cost(plan.plan()))
        .containsExactly(
            "Avoidable cost is EUR 820.00: 18 % below earliest-due-date order, 3 % above one mold"
                + " after the other.",
            "How far from the best possible: cannot tell.");
  }

  @Test
  void withoutRatesNoMoneyIsNamed() {
    SmallPlan plan = oneLateRun();
    plan.money = false;
    plan.costs = Map.of(Rule.LATE, 82_000_000L);
    assertThat(Headline.cost(plan.plan()))
        .containsExactly("How far from the best possible: cannot tell.");
    plan.references.add(new Reference("earliest-due-date order", 100_000_000L, 3, 90));
    assertThat(Headline.cost(plan.plan()))
        .containsExactly(
            "By the default weights the plan is 18 % below earliest-due-date order.",
            "How far from the best possible: cannot tell.");
  }

  @Test
  void comparisonKnowsItsCorners() {
    SmallPlan plan = new SmallPlan();
    assertThat(Comparison.words(plan.plan(), new Reference("X", 0, 0, 0)))
        .isEqualTo("the same as X");
    plan.costs = Map.of(Rule.LATE, 999L);
    assertThat(Comparison.words(plan.plan(), new Reference("X", 0, 0, 0))).isEqualTo("far above X");
    assertThat(Comparison.words(plan.plan(), new Reference("X", 1_000, 0, 0)))
        .isEqualTo("less than 1 % below X");
    plan.unplacedCharges.add(new Charge(Rule.UNPLACED, 5, "no place"));
    assertThat(Comparison.lateOrLeftOut(plan.plan())).isEqualTo(1);
  }
}
