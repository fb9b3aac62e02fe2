package pressweek.solver.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.repair.WorkedPlant.FIRST_END;
import static pressweek.solver.repair.WorkedPlant.MOUNT;
import static pressweek.solver.repair.WorkedPlant.at;
import static pressweek.solver.repair.WorkedPlant.event;
import static pressweek.solver.repair.WorkedPlant.line;
import static pressweek.solver.repair.WorkedPlant.next;
import static pressweek.solver.repair.WorkedPlant.planned;
import static pressweek.solver.repair.WorkedPlant.plant;
import static pressweek.solver.repair.WorkedPlant.run;
import static pressweek.solver.repair.WorkedPlant.state;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Terms;

/** What is left of runs, presses and promises after each event, by {@link WorkedPlant}. */
final class RepairTest {
  @Test
  void aPlanAtItsOwnStartIsLeftAsItIs() {
    Plan plan = planned(plant());
    Repaired left = at(plan, 0);
    assertThat(left.problem().jobs()).isEqualTo(plan.problem().jobs());
    assertThat(left.ended()).isEmpty();
    Plan again = next(plan, left);
    assertThat(again.runs()).isEqualTo(plan.runs());
  }

  @Test
  void aRunInProgressKeepsItsEndAndHasItsPiecesMade() {
    Plan plan = planned(plant());
    assertThat(run(plan, "1/1").startMin()).isEqualTo(START + MOUNT);
    Repaired left = at(plan, MOUNT + 101);
    Job first = line(left, "1/1");
    assertThat(first.quantity().good()).isEqualTo(300);
    assertThat(first.quantity().made()).isEqualTo(100);
    Option option = first.options().get(0);
    assertThat(option.making().shots()).isEqualTo(75);
    assertThat(option.pace().runMin()).isEqualTo(299);
    assertThat(state(left, "P1").job()).isEqualTo("1/1");
    Plan again = next(plan, left);
    assertThat(run(again, "1/1").endMin()).isEqualTo(START + FIRST_END);
    assertThat(run(again, "2/1").startMin()).isEqualTo(run(plan, "2/1").startMin());
  }

  @Test
  void aRunThatEndedIsDoneAndLeavesItsPressSetUp() {
    Plan plan = planned(plant());
    Repaired left = at(plan, FIRST_END);
    assertThat(left.ended())
        .containsExactly(new Ended("1/1", Ended.How.DONE, "its run had ended by the plan"));
    assertThat(left.problem().jobs()).extracting(Job::id).containsExactly("2/1");
    assertThat(state(left, "P1"))
        .isEqualTo(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""));
    assertThat(run(next(plan, left), "2/1").id()).isEqualTo(run(plan, "2/1").id());
  }

  @Test
  void aChangeInProgressGoesOn() {
    Plan plan = planned(plant());
    Repaired left = at(plan, 20);
    assertThat(left.problem().floor().downtime())
        .containsExactly(
            new Downtime(
                Downtime.Kind.PRESS,
                "P1",
                START + 20,
                START + MOUNT,
                "change to mold M1 for 1/1 goes on"));
    assertThat(state(left, "P1").job()).isEqualTo("1/1");
    assertThat(run(next(plan, left), "1/1").startMin()).isEqualTo(START + MOUNT);
  }

  @Test
  void aChangeInProgressHasASetterWithIt() {
    Plan plan = planned(plant().crew(new Crew(true, false, 100, false, 0)));
    assertThat(at(plan, 20).problem().arranged().trials())
        .singleElement()
        .satisfies(t -> assertThat(t.setters()).isEqualTo(1))
        .satisfies(t -> assertThat(t.toMin()).isEqualTo(START + MOUNT));
    assertThat(at(plan, MOUNT + 10).problem().arranged().trials()).isEmpty();
  }

  @Test
  void aPressThatIsAwayStopsItsRunAndSetsItFree() {
    Plan plan =
        planned(
            new SmallPlant()
                .job(
                    job("1").pieces(400).due(START + DAY).on("P1", "M1", 400).on("P2", "M1", 400)));
    String press = run(plan, "1/1").press();
    String other = press.equals("P1") ? "P2" : "P1";
    int start = run(plan, "1/1").startMin() - START;
    Repaired left =
        at(plan, start + 200, event(EventKind.PRESS_AWAY, press, start + 100, start + 3000, 1));
    Job job = line(left, "1/1");
    assertThat(job.quantity().made()).isEqualTo(100);
    assertThat(job.options()).extracting(Option::press).containsExactly("P1", "P2");
    assertThat(job.options()).allSatisfy(o -> assertThat(o.pace().runMin()).isEqualTo(300));
    assertThat(state(left, press).job()).isEmpty();
    assertThat(left.notes()).anySatisfy(n -> assertThat(n).contains("1/1").contains("stopped"));
    assertThat(next(plan, left).runs())
        .singleElement()
        .satisfies(r -> assertThat(List.of(press, other)).contains(r.press()));
  }

  @Test
  void aPressThatWasAwayDelaysWhatItDid() {
    Plan plan = planned(plant());
    Repaired left =
        at(plan, FIRST_END, event(EventKind.PRESS_AWAY, "P1", MOUNT + 100, MOUNT + 150, 1));
    Plan again = next(plan, left);
    assertThat(run(again, "1/1").endMin()).isEqualTo(START + FIRST_END + 50);
  }

  @Test
  void aMoldThatIsAwayBlocksNothingElseOnItsPress() {
    Plan plan = planned(plant().job(job("3").pieces(400).due(START + 20 * 60).on("P1", "M2", 100)));
    Repaired left =
        at(plan, MOUNT + 100, event(EventKind.MOLD_AWAY, "M1", MOUNT + 100, 3 * DAY, 1));
    assertThat(left.problem().floor().downtime())
        .singleElement()
        .satisfies(d -> assertThat(d.kind()).isEqualTo(Downtime.Kind.MOLD));
    assertThat(line(left, "1/1").quantity().made()).isEqualTo(100);
    Plan again = next(plan, left);
    assertThat(run(again, "3/1").startMin()).isLessThan(START + DAY);
    assertThat(run(again, "1/1").startMin()).isGreaterThanOrEqualTo(START + 3 * DAY);
  }

  @Test
  void aRunThatFinishedEarlyIsDone() {
    Plan plan = planned(plant());
    Repaired left =
        at(plan, MOUNT + 100, event(EventKind.FINISHED, "1/1", MOUNT + 60, MOUNT + 60, 0));
    assertThat(left.ended())
        .containsExactly(new Ended("1/1", Ended.How.FINISHED, "events.csv:2: finished 1/1 (why)"));
    assertThat(state(left, "P1").setup().mold()).isEqualTo("M1");
    assertThat(run(next(plan, left), "2/1").startMin()).isLessThan(run(plan, "2/1").startMin());
  }

  @Test
  void aRunThatFinishedLatePushesWhatFollowed() {
    Plan plan = planned(plant());
    int second = run(plan, "2/1").startMin() - START;
    Repaired left = at(plan, second + 200, event(EventKind.FINISHED, "1/1", second, second, 0));
    int change = run(plan, "2/1").change().minutes();
    int left2 = line(left, "2/1").options().get(0).pace().runMin();
    assertThat(left2).isEqualTo(400 - (200 - change));
  }

  @Test
  void aShortCountMakesTheRunLonger() {
    Plan plan = planned(plant());
    Repaired left =
        at(
            plan,
            FIRST_END + 10,
            event(EventKind.COUNT_SHORT, "1/1", FIRST_END + 10, FIRST_END + 10, 300));
    assertThat(line(left, "1/1").quantity().good()).isEqualTo(100);
    assertThat(line(left, "1/1").options().get(0).pace().runMin()).isEqualTo(100);
    assertThat(state(left, "P1").job()).isEqualTo("1/1");
    assertThat(run(next(plan, left), "2/1").startMin()).isGreaterThan(run(plan, "2/1").startMin());
  }

  @Test
  void aShortCountOfWhatHasNotBegunIsNotUsed() {
    Repaired left = at(planned(plant()), 100, event(EventKind.COUNT_SHORT, "2/1", 50, 50, 3));
    assertThat(line(left, "2/1").quantity().good()).isEqualTo(400);
    assertThat(left.notes())
        .containsExactly("events.csv:2: the run of 2/1 has not begun; not used");
  }

  @Test
  void aDroppedLineIsNamedAndItsPressIsFree() {
    Plan plan = planned(plant());
    Repaired left = at(plan, MOUNT + 100, event(EventKind.DROPPED, "1/1", 0, 0, 0));
    assertThat(left.ended()).extracting(Ended::how).containsExactly(Ended.How.DROPPED);
    assertThat(state(left, "P1"))
        .isEqualTo(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""));
    assertThat(run(next(plan, left), "2/1").change().startMin()).isEqualTo(START + MOUNT + 100);
  }

  @Test
  void aLineOnHoldIsUnplacedWithTheNote() {
    Repaired left = at(planned(plant()), MOUNT + 100, event(EventKind.ON_HOLD, "1/1", 0, 0, 0));
    assertThat(left.problem().unplaced())
        .singleElement()
        .satisfies(u -> assertThat(u.reason()).isEqualTo("on hold: why"))
        .satisfies(u -> assertThat(u.pieces()).isEqualTo(300));
  }

  @Test
  void promisesStayUnlessTheirTimeIsPast() {
    Promise promise = new Promise("2/1", "P1", START + 600);
    Plan plan = planned(plant().promise(promise));
    assertThat(at(plan, 100).problem().floor().promises()).containsExactly(promise);
    Repaired late = at(plan, 700, event(EventKind.PRESS_AWAY, "P1", 500, 800, 1));
    assertThat(late.problem().floor().promises()).isEmpty();
    assertThat(late.notes()).anySatisfy(n -> assertThat(n).contains("promised no more"));
  }

  @Test
  void runsThatHaveNotBegunAreNamedWithTheirPlaces() {
    Plan plan = planned(plant());
    assertThat(at(plan, MOUNT + 1).problem().arranged().terms().earlier())
        .containsExactly(new Terms.Place("2/1", "P1", run(plan, "2/1").startMin()));
  }

  @Test
  void thePresentMustLieWithinThePlan() {
    Plan plan = planned(plant());
    assertThatThrownBy(() -> at(plan, -1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> at(plan, 7 * DAY)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theProblemIsThatOfThePlanOtherwise() {
    Problem problem = planned(plant()).problem();
    Problem left = at(planned(plant()), 0).problem();
    assertThat(left.plant()).isEqualTo(problem.plant());
    assertThat(left.materials()).isEqualTo(problem.materials());
    assertThat(left.floor().presses()).isEqualTo(problem.floor().presses());
  }
}
