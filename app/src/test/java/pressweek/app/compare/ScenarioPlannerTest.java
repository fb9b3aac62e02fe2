package pressweek.app.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Settings;
import pressweek.reports.compare.CompareText;
import pressweek.reports.compare.SideBySide;

class ScenarioPlannerTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final int NOW = 29_933_640;

  private static ScenarioPlanner planner(int seeds) throws IOException {
    ScenarioWeeks weeks =
        ScenarioWeeks.read(SMALL, List.of(SMALL.resolve("scenarios/saturday.json")), NOW);
    assertThat(weeks.errors()).isEmpty();
    Effort effort = new Effort(new Settings(0, 20, 1), seeds, NOW);
    return new ScenarioPlanner(weeks.weeks(), effort, Optional.empty());
  }

  @Test
  void bothSidesArePlannedWithTheSameSeeds() throws IOException {
    List<String> told = new ArrayList<>();
    SideBySide all = planner(2).plan(told::add);

    assertThat(told).hasSize(4);
    assertThat(all.base().plans()).extracting("seed").containsExactly(1L, 1001L);
    assertThat(all.scenarios().get(0).plans()).extracting("seed").containsExactly(1L, 1001L);
    assertThat(all.all()).allMatch(t -> t.broken() == 0);
    assertThat(all.stopped()).isFalse();
    assertThat(all.effort())
        .isEqualTo("Every plan was searched for by 20 steps, with seeds 1, 1001.");
  }

  @Test
  void whatIsThereWhenItIsStoppedIsCompared() throws IOException {
    ScenarioPlanner planner = planner(50);
    SideBySide all = planner.plan(line -> planner.stop());

    assertThat(all.stopped()).isTrue();
    assertThat(all.base().plans().size() + all.scenarios().get(0).plans().size()).isBetween(1, 99);
    assertThat(CompareText.of(all, List.of())).startsWith("Stopped early");
  }

  @Test
  void stoppedBeforeItBeganThereIsNothing() throws IOException {
    ScenarioPlanner planner = planner(3);
    planner.stop();
    SideBySide all = planner.plan(line -> {});

    assertThat(all.shown()).isEmpty();
    assertThat(CompareText.of(all, List.of())).contains("As it stands: not planned.");
  }

  @Test
  void scenariosOfOneNameAndFileAreToldApart() throws IOException {
    Path saturday = SMALL.resolve("scenarios/saturday.json");
    ScenarioWeeks weeks = ScenarioWeeks.read(SMALL, List.of(saturday, saturday), NOW);

    assertThat(weeks.weeks())
        .extracting(ScenarioWeek::name)
        .containsExactly("As it stands", "A Saturday shift", "A Saturday shift (saturday.json)");
    assertThat(weeks.weeks())
        .extracting(ScenarioWeek::out)
        .containsExactly("as-it-stands", "saturday", "saturday-2");
  }
}
