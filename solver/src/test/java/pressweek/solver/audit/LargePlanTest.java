package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.lot;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.mold;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.Parts.press;
import static pressweek.solver.audit.Parts.take;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Crew;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Stock;

/**
 * Presses that work day and night on black and white in turn: 20 min to black, 85 min to white,
 * runs of 60 + 5 min.
 */
class LargePlanTest {
  private static final Setup BLACK = new Setup("M", "", "PP", "BK");
  private static final Setup WHITE = new Setup("M", "", "PP", "WH");

  @Test
  void fiveThousandRunsTakeSeconds() {
    Plan plan = plan(100, 50);
    List<Finding> findings =
        assertTimeout(Duration.ofSeconds(20), () -> Audit.check(plan.problem(), plan));
    assertThat(findings).isEmpty();
    assertThat(plan.runs()).hasSize(5000);
  }

  private static Plan plan(int presses, int runsEach) {
    List<Press> press = new ArrayList<>();
    List<Mold> molds = new ArrayList<>();
    List<PressState> states = new ArrayList<>();
    List<Job> jobs = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    for (int p = 0; p < presses; p++) {
      String id = "P%03d".formatted(p);
      press.add(press(id, FoodUse.OPEN, "all", 0));
      molds.add(mold("M" + id));
      states.add(new PressState(id, on(id, WHITE), false, ""));
      int free = at("Mon 06:00");
      for (int r = 0; r < runsEach; r++) {
        Run run = run(id, r, free);
        runs.add(run);
        jobs.add(jobOf(id, run, r % 2 == 0 ? "PP BK" : "PP WH"));
        free = run.endMin();
      }
    }
    Problem problem = TinyWeek.problem(jobs.toArray(Job[]::new));
    problem = Edited.set(problem, "plant.hours", hours());
    problem = Edited.set(problem, "plant.crew", new Crew(true, true, 80, false, 30));
    problem = Edited.set(problem, "floor.presses", press);
    problem = Edited.set(problem, "floor.molds", molds);
    problem = Edited.set(problem, "floor.states", states);
    Stock stock = new Stock(true, List.of(lot("I1", "L1", 1_000_000, "")), List.of());
    problem = Edited.set(problem, "materials.stock", stock);
    return TinyWeek.plan(problem, runs, pulls(runs));
  }

  private static Hours hours() {
    LocalTime six = LocalTime.of(6, 0);
    Shift all =
        new Shift(
            "all",
            EnumSet.allOf(DayOfWeek.class),
            six,
            six,
            List.of(),
            100,
            100_000,
            OptionalInt.empty());
    return new Hours(
        ZoneId.of("Europe/Berlin"),
        at("Mon 06:00"),
        at("Sat 06:00"),
        List.of(all),
        List.of(new Calendar("all", List.of("all"))),
        List.of());
  }

  private static Run run(String press, int index, int free) {
    boolean black = index % 2 == 0;
    int minutes = black ? 20 : 85;
    int start = free + minutes;
    Change change =
        new Change(
            on(press, black ? WHITE : BLACK),
            on(press, black ? BLACK : WHITE),
            List.of(ChangeKind.COLOUR),
            free,
            start,
            minutes,
            black ? 375 : 1000);
    String id = "R" + press + index;
    return new Run(
        id,
        id + "/1",
        press,
        "M" + press,
        index + 1,
        change,
        start,
        start + 65,
        start + 65,
        List.of(),
        List.of());
  }

  /** A job with four further options on presses that come after its own. */
  private static Job jobOf(String press, Run run, String resinColour) {
    return job(
        run.job(),
        resinColour,
        option(press + " M" + press, pace(60, 5, 1000), making(10, take("I1", 20, 5, 0))),
        option("P100 M1", pace(60, 5, 1000), making(10, take("I1", 20, 5, 0))),
        option("P101 M1", pace(60, 5, 1000), making(10, take("I1", 20, 5, 0))),
        option("P102 M1", pace(60, 5, 1000), making(10, take("I1", 20, 5, 0))),
        option("P103 M1", pace(60, 5, 1000), making(10, take("I1", 20, 5, 0))));
  }

  private static Pull[] pulls(List<Run> runs) {
    return runs.stream()
        .map(
            run ->
                new Pull(run.id(), run.press(), run.startMin() - 30, "I1", "L1", "bin L1", 0, 25))
        .sorted(Comparator.comparingInt(Pull::needByMin))
        .toArray(Pull[]::new);
  }

  private static Setup on(String press, Setup setup) {
    return new Setup("M" + press, setup.tooling(), setup.resin(), setup.colour());
  }
}
