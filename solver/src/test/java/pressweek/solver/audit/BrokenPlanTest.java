package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;

/** One edit of the good plan at a time. */
class BrokenPlanTest {
  static Stream<Broken> breakages() {
    return Stream.of(
            BrokenLines.LINES,
            BrokenHours.HOURS,
            BrokenHours.MOLDS,
            BrokenChanges.CHANGES,
            BrokenChanges.CREW,
            BrokenFloor.FOOD,
            BrokenFloor.FLOOR,
            BrokenArrangements.ARRANGED,
            BrokenStock.INSERTS,
            BrokenStock.LOTS,
            BrokenFigures.FIGURES,
            BrokenFigures.LISTS)
        .flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("breakages")
  void everyBreakageIsToldAndNothingElse(Broken broken) {
    Plan plan = broken.edit().apply(WeekPlan.plan());
    List<Finding> findings = Audit.check(plan.problem(), plan);
    assertThat(findings)
        .anySatisfy(
            finding -> {
              assertThat(finding.rule()).isEqualTo(broken.rule());
              assertThat(finding.message()).contains(broken.telling());
            });
    Set<Rule> rules = new TreeSet<>(broken.also());
    rules.add(broken.rule());
    assertThat(findings).extracting(Finding::rule).containsOnlyElementsOf(rules);
    if (broken.also().isEmpty()) {
      assertThat(findings).hasSize(broken.times());
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyHardRuleIsBrokenSomewhere(Rule rule) {
    if (rule.hard()) {
      assertThat(breakages()).anyMatch(broken -> broken.rule() == rule);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"LATE", "CHANGE", "PURGE", "START_UP", "PRESS_RATE", "KEPT_PRESS"})
  void everyChargeOfARunIsWorkedOutAnew(Rule rule) {
    Plan plan = WeekPlan.plan();
    Run run =
        plan.runs().stream()
            .filter(each -> each.charges().stream().anyMatch(c -> c.rule() == rule))
            .findFirst()
            .orElseThrow();
    List<Charge> charges = new ArrayList<>(run.charges());
    charges.replaceAll(c -> c.rule() == rule ? new Charge(rule, c.amount() + 1, c.because()) : c);
    Plan dearer = Edited.set(plan, "runs[" + run.id() + "].charges", charges);
    assertThat(Audit.check(plan.problem(), dearer))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.rule()).isEqualTo(Rule.FIGURES);
              assertThat(finding.subject()).isEqualTo(run.id());
              assertThat(finding.message()).contains("by " + rule + "; expected");
            });
  }

  @Test
  void everyCostIsChargedInOneOfTheExamples() {
    Set<Rule> charged = new TreeSet<>(WeekPlan.plan().figures().costByRule().keySet());
    charged.addAll(ClockWeek.autumn().figures().costByRule().keySet());
    assertThat(charged)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Rule.values()).filter(rule -> !rule.hard()).toList());
  }

  @Test
  void aPlanOfAnotherProblemIsTold() {
    Plan other = Edited.set(WeekPlan.plan(), "problem.plant.name", "another plant");
    assertThat(Audit.check(WeekProblem.problem(), other))
        .containsExactly(
            new Finding(
                Rule.FIGURES, "plan", "the plan was made from another problem than the one given"));
  }

  @Test
  void aFindingReadsAsASchedulerWouldSayIt() {
    Plan plan = Edited.set(WeekPlan.plan(), "dismounts[0].endMin", at("Mon 10:40"));
    assertThat(Audit.check(plan.problem(), plan))
        .extracting(Finding::message)
        .contains(
            "run R6 (C/2) on P2 begins Mon 2026-11-30 10:37, mold M3 is still on P3 until 10:40");
  }
}
