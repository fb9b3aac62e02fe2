package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Problem;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/** A plan that the next search starts from comes back, unless a cheaper one is found. */
final class WarmStartTest {
  @Test
  void aPlanPutInComesBackOrACheaperOne() {
    for (long seed = 1; seed <= 6; seed++) {
      Problem problem = DrawnWeeks.arranged(seed);
      Plan good = Plans.of(problem, 60, seed);
      Plan again = new Planner(problem).plan(Plans.head(1, 5), Optional.of(good), Watcher.NONE);
      assertThat(again.figures().avoidableCost())
          .as("seed %d", seed)
          .isLessThanOrEqualTo(good.figures().avoidableCost());
    }
  }

  @Test
  void whatIsHeldBackAndOpenedIsTakenOver() {
    List<PlantWide.Held> held = new ArrayList<>();
    for (long seed = 1; seed <= 10; seed++) {
      Problem problem = DrawnWeeks.arranged(seed);
      Plan good = Plans.of(problem, 60, seed);
      WeekTables week = new WeekTables(problem);
      Sequences otherwise = new Dispatch(week).earliestDueDate();
      Timetable warm =
          Timetable.of(week, WarmStart.from(week, good, otherwise, TimingPass.full(week)::value));
      if (good.unplaced().isEmpty()) {
        assertThat(warm.runs()).as("seed %d", seed).isEqualTo(good.runs());
      }
      PlantWide decided = good.head().plantWide();
      assertThat(warm.whole().opened()).isEqualTo(decided.opened());
      assertThat(warm.whole().held()).isEqualTo(decided.held());
      held.addAll(decided.held());
    }
    assertThat(held).isNotEmpty();
  }
}
