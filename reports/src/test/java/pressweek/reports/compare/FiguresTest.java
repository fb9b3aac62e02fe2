package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.reports.schedule.PlanBook;

class FiguresTest {
  private static final Pattern ROW = Pattern.compile("\\| `([a-z_]+)` \\| .* \\| ([^|]+) \\|");

  private static PlanFigures figures() {
    return PlanFigures.of(PlanBook.of(WorkedExample.plan()));
  }

  @Test
  void everyFigureOfThePageComesOutAgain() throws IOException {
    Map<String, String> written = new LinkedHashMap<>();
    for (String line : Files.readAllLines(Path.of("../docs/figures.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        String example = row.group(2);
        written.put(row.group(1), example.substring(example.lastIndexOf('=') + 1).strip());
      }
    }
    Map<String, String> computed = new LinkedHashMap<>();
    for (Figure figure : Figure.values()) {
      computed.put(figure.key(), figure.text(figure.of(figures())));
    }
    assertThat(written).containsExactlyEntriesOf(computed);
  }

  @Test
  void runsTakeTheMinutesThatTheirPaceSays() {
    assertThat(figures().times().productionMin()).isEqualTo(380 + 198 + 388);
    assertThat(figures().times().setupMin()).isEqualTo(90);
  }

  @Test
  void loadIsByPressAndDay() {
    assertThat(figures().loads().days())
        .contains(
            new Load("V1", "2026-11-30", 960, 30, 578),
            new Load("V2", "2026-11-30", 960, 60, 388),
            new Load("V1", "2026-12-05", 0, 0, 0));
    assertThat(figures().loads().presses().get(0).busyMin()).isEqualTo(5 * 960);
    assertThat(new Load("V1", "", 960, 30, 578).percent()).isBetween(63.3, 63.4);
  }

  @Test
  void loadIsByShift() {
    assertThat(figures().loads().shifts().get(0))
        .isEqualTo(new Load("early", "", 2 * 5 * 480, 90, 380 + 70 + 388));
  }

  @Test
  void movesAreCountedAgainstThePromisedPlan() {
    Plan plan = WorkedExample.plan();
    Run last = plan.runs().get(2);
    Run elsewhere =
        new Run(
            last.id(),
            last.job(),
            "V1",
            last.mold(),
            3,
            last.change(),
            last.startMin(),
            last.endMin(),
            last.readyMin(),
            last.waits(),
            last.charges());
    Plan promised = plan.withRuns(List.of(plan.runs().get(0), plan.runs().get(1), elsewhere));

    assertThat(PlanFigures.of(PlanBook.of(plan), Optional.of(promised)).flow().moved()).contains(1);
    assertThat(PlanFigures.of(PlanBook.of(plan), Optional.of(plan)).flow().moved()).contains(0);
    assertThat(figures().flow().moved()).isEmpty();
  }

  @Test
  void differencesBearTheirSign() {
    assertThat(Figure.ON_TIME.difference(4)).isEqualTo("+4");
    assertThat(Figure.COST.difference(-124_050_000)).isEqualTo("\u22121,240.50");
    assertThat(Figure.LATE_DAYS.difference(-10)).isEqualTo("0.0");
  }
}
