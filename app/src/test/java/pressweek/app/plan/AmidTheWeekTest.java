package pressweek.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.week.Week;
import pressweek.solver.Finishing;
import pressweek.solver.audit.Audit;
import pressweek.solver.repair.Repair;
import pressweek.solver.why.Replay;

/**
 * The demo week seen from times amid it, when nothing has happened: what is drying goes on drying,
 * changes under way keep their setter and inspector, and so the rest stays where it was.
 */
class AmidTheWeekTest {
  /** Of a plan of which nothing has been proved yet. */
  private static final Head HEAD =
      new Head("1", "", 0, Map.of(), new Settings(0, 300, 1), List.of(), false);

  private static final int DAY = 24 * 60;

  /** Between two such times; no part of a shift, so that all hours of the day come. */
  private static final int APART = 331;

  /**
   * Share of the times at which nothing at all moves. Not all: setters are alike to a plan, and
   * which of them a change under way had can matter at the end of his shift.
   */
  private static final double LEAST_UNMOVED = 0.75;

  @Test
  void whatIsLeftGoesOnAsPlanned() throws IOException {
    Plan plan = planned();
    int start = plan.problem().plant().hours().startMin();
    List<Integer> unmoved = new ArrayList<>();
    List<Integer> times = new ArrayList<>();
    for (int now = start; now < start + 5 * DAY; now += APART) {
      Problem left = Repair.of(plan, List.of(), Optional.empty(), now).problem();
      Plan seen = Replay.of(left, plan);
      times.add(now);
      if (moved(plan, seen, now).isEmpty()) {
        unmoved.add(now);
        Plan whole = Finishing.of(HEAD, seen, plan);
        assertThat(Audit.check(left, whole)).isEmpty();
      }
    }
    assertThat(unmoved.size()).isGreaterThanOrEqualTo((int) (LEAST_UNMOVED * times.size()));
  }

  private static Plan planned() throws IOException {
    Folder folder = FolderReader.read(Path.of("../examples/quillback-week"));
    Problem problem = Week.build(folder, 0).problem().orElseThrow();
    EarlierPlans none = new EarlierPlans(Optional.empty(), List.of(), List.of());
    return new WeekPlanner(folder, problem).plan(none, new Settings(0, 300, 1), 0, p -> {}).plan();
  }

  /** Runs that had not begun and are on another press or at another time than by the plan. */
  private static List<String> moved(Plan plan, Plan seen, int now) {
    Map<String, Run> before = new HashMap<>();
    plan.runs().forEach(r -> before.put(r.job(), r));
    int tolerance = plan.problem().plant().moveToleranceMin();
    return seen.runs().stream()
        .filter(r -> before.containsKey(r.job()) && before.get(r.job()).startMin() >= now)
        .filter(
            r ->
                !r.press().equals(before.get(r.job()).press())
                    || Math.abs(r.startMin() - before.get(r.job()).startMin()) > tolerance)
        .map(Run::job)
        .toList();
  }
}
