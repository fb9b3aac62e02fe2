package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;

class NotesTest {
  private static Problem week(String... overtime) {
    Problem problem = WorkedExample.plan().problem();
    List<Opening.Overtime> shifts =
        List.of(overtime).stream().map(name -> new Opening.Overtime(name, 6_000_000)).toList();
    return problem.with(problem.arranged().with(new Opening(shifts, List.of())));
  }

  private static Plan opening(String... shifts) {
    Plan plan = WorkedExample.plan();
    Head head = plan.head();
    List<PlantWide.Opened> opened =
        List.of(shifts).stream().map(name -> new PlantWide.Opened(name, 0, 480)).toList();
    return plan.with(
        new Head(
            head.number(),
            head.replaces(),
            head.madeMin(),
            head.inputs(),
            head.settings(),
            head.references(),
            head.stopped(),
            Optional.of(new PlantWide(opened, List.of(), List.of(), List.of(), Optional.empty()))));
  }

  @Test
  void overtimeThatNoPlanOpensIsNamed() {
    assertThat(Notes.unopened(week("late"), week("late", "sunday"), List.of(opening("late"))))
        .containsExactly("None of its plans opens overtime shift \"sunday\".");
  }

  @Test
  void nothingIsSaidOfOvertimeThatAPlanOpensOrThatIsNotNew() {
    List<Plan> plans = List.of(opening(), opening("sunday"));
    assertThat(Notes.unopened(week(), week("sunday"), plans)).isEmpty();
    assertThat(Notes.unopened(week("sunday"), week("sunday"), List.of(opening()))).isEmpty();
    assertThat(Notes.unopened(week(), week("sunday"), List.of())).isEmpty();
  }
}
