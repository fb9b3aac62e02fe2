package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.files.FolderReader;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Component;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Take;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;
import pressweek.solver.Planner;
import pressweek.solver.audit.Audit;

/** Lots of all components, from a folder to a plan: the audit draws them as the planner did. */
class DrawnStockTest {
  private static Problem week(Path folder) throws IOException {
    WeekResult week = Week.build(FolderReader.read(folder), 0);
    assertThat(week.errors()).isEmpty();
    return week.problem().orElseThrow();
  }

  private static Plan plan(Problem problem) {
    Head head = new Head("1", "", 0, Map.of(), new Settings(0, 40, 1), List.of(), false);
    return new Planner(problem).plan(head, Optional.empty(), progress -> {});
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 6, 9, 12})
  void auditAgreesOnPlantsThatCountAllComponents(long seed, @TempDir Path folder)
      throws IOException {
    PlantGenerator.write(folder, new PlantSize(60, 6), seed);
    Problem problem = week(folder);
    Set<Component> taken =
        problem.jobs().stream()
            .flatMap(job -> job.options().stream())
            .flatMap(option -> option.making().takes().stream())
            .map(Take::component)
            .collect(Collectors.toSet());
    assertThat(taken)
        .containsExactlyInAnyOrder(
            Component.INSERT,
            Component.CARTON,
            Component.LABEL,
            Component.RESIN,
            Component.MASTERBATCH);
    Plan plan = plan(problem);
    // In so few steps a promised run may still be late.
    assertThat(Audit.check(problem, plan))
        .filteredOn(finding -> finding.rule() != Rule.PROMISED)
        .isEmpty();
    assertThat(plan.pulls()).anyMatch(pull -> pull.insert().startsWith("CARTON"));
    assertThat(plan.pulls()).anyMatch(pull -> pull.insert().startsWith("MB-"));
  }

  @Test
  void auditAgreesOnTheDemoWeek() throws IOException {
    Problem problem = week(Path.of("quillback-week"));
    assertThat(Audit.check(problem, plan(problem))).isEmpty();
  }
}
