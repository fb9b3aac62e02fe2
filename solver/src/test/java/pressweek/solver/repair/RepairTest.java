package pressweek.solver.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Run;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Option;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;
import pressweek.data.problem.Terms;
import pressweek.solver.Planner;
import pressweek.solver.Plans;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;

/**
 * What is left after each event, on a plant whose times are worked out by hand: P1 mounts M1 in 36
 * minutes and 10 for the first article, runs 1/1 for 400 minutes from minute 46, changes colour in
 * 40 (30 and the first article) and runs 2/1 for 400 minutes from minute 526 (0:30 lighter by 85 of
 * 100 at 45).
 */
final class RepairTest {
  private static final int MOUNT = 46;
  private static final int FIRST_END = MOUNT + 400;

  private static SmallPlant plant() {
    return new SmallPlant()
        .job(job("1").pieces(400).due(START + 500).weight(2_000).on("P1", "M1", 400))
        .job(job("2").pieces(400).in("PP", "WHT").due(START + 2 * DAY).on("P1", "M1", 400));
  }

  private static FloorEvent event(EventKind kind, String what, int from, int to, int count) {
    return new FloorEvent(
        new At("events.csv", 2), kind, what, START + from, START + to, count, "why");
  }

  private static Repaired at(Plan plan, int minute, FloorEvent... events) {
    return Repair.of(plan, List.of(events), Optional.empty(), START + minute);
  }

  private static Plan planned(SmallPlant plant) {
    return Plans.of(plant.build(), 20, 1);
  }

  private static Plan next(Plan before, Repaired left) {
    Plan plan =
        new Planner(left.problem()).plan(Plans.head(20, 1), Optional.of(before), Watcher.NONE);
    Plan kept = RunNumbers.kept(before, plan);
    assertThat(Audit.check(left.problem(), kept)).isEmpty();
    return kept;
  }

  private static Job line(Repaired left, String id) {
    return left.problem().jobs().stream()
        .filter(j -> j.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no job " + id));
  }

  private static PressState state(Repaired left, String press) {
    return left.problem().floor().states().stream()
        .filter(s -> s.press().equals(press))
        .findFirst()
        .orElseThrow();
  }

  private static Run run(Plan plan, String line) {
    return plan.runs().stream().filter(r -> r.job().equals(line)).findFirst().orElseThrow();
  }

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
  void aSetterWhoIsAwayIsMissingToTheMinuteAndOnThatDayOnly() {
    Plan plan = planned(plant().crew(new Crew(true, true, 100, false, 0)));
    Repaired left = at(plan, 0, event(EventKind.PERSON_AWAY, "setter", 600, 900, 1));
    List<Shift> shifts = left.problem().plant().hours().shifts();
    assertThat(shifts).extracting(Shift::name).containsOnly("all");
    assertThat(shifts).extracting(Shift::setters).containsExactly(2, 2, 1, 2);
    assertThat(shifts.get(2).from()).isEqualTo(LocalTime.of(10, 0));
    assertThat(shifts.get(2).to()).isEqualTo(LocalTime.of(15, 0));
    assertThat(shifts).extracting(Shift::operatorThousandths).containsOnly(4_000);
    next(plan, left);
  }

  @Test
  void operatorsAreMissingInThousandthsAndNeverFewerThanNone() {
    Plan plan = planned(plant().crew(new Crew(true, true, 100, false, 0)));
    Repaired left = at(plan, 0, event(EventKind.PERSON_AWAY, "operator", 0, DAY, 9));
    assertThat(left.problem().plant().hours().shifts())
        .extracting(Shift::operatorThousandths)
        .containsExactly(4_000, 0);
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

  private static Lot lot(String id, int onHand, String reservedFor) {
    return new Lot(
        "I1", id, "B1", onHand, START, OptionalInt.empty(), LotStatus.USABLE, reservedFor);
  }

  private static SmallPlant stocked(int reserved) {
    Take take = new Take("I1", 400 - reserved, 0, reserved);
    return new SmallPlant()
        .stock(List.of(lot("L1", 400, ""), lot("L2", 400, reserved > 0 ? "2/1" : "")), List.of())
        .job(
            job("1")
                .takes(new Take("I1", 400, 0, 0))
                .due(START + 500)
                .weight(2_000)
                .on("P1", "M1", 400))
        .job(job("2").takes(take).due(START + 2 * DAY).on("P1", "M1", 400));
  }

  @Test
  void whatWasBroughtIsGoneFromStock() {
    Plan plan = planned(stocked(0));
    Repaired left = at(plan, MOUNT + 100);
    assertThat(left.problem().materials().stock().lots())
        .extracting(Lot::id, Lot::onHand)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("L2", 400));
    assertThat(line(left, "1/1").options().get(0).making().takes()).isEmpty();
    assertThat(next(plan, left).pulls()).extracting(p -> p.run()).containsExactly("R002");
  }

  @Test
  void aLotOnHoldIsNotTaken() {
    Plan plan = planned(stocked(0));
    Repaired left = at(plan, MOUNT + 100, event(EventKind.LOT_HELD, "L2", 10, 10, 0));
    Plan again = next(plan, left);
    assertThat(again.unplaced()).extracting(u -> u.id()).containsExactly("2/1");
    assertThat(again.unplaced().get(0).lacks()).contains("I1");
  }

  @Test
  void whatWasReservedInALotOnHoldIsTakenFromFreeStock() {
    Plan plan = planned(stocked(400));
    Repaired left = at(plan, 0, event(EventKind.LOT_HELD, "L2", 0, 0, 0));
    assertThat(line(left, "2/1").options().get(0).making().takes())
        .containsExactly(new Take("I1", 400, 0, 0));
  }

  @Test
  void ofALotOnHoldThatWasBroughtTheFloorIsTold() {
    Plan plan = planned(stocked(0));
    Repaired left = at(plan, MOUNT + 100, event(EventKind.LOT_HELD, "L1", 10, 10, 0));
    assertThat(left.notes())
        .singleElement()
        .satisfies(n -> assertThat(n).contains("400 of lot L1 were brought to P1 for R001"));
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

  @Test
  void anOvertimeShiftThatIsUnderWayGoesOn() {
    Hours hours =
        new SmallPlant()
            .shifts(
                SmallPlant.shift("day", "06:00", "14:00"),
                SmallPlant.shift("over", "14:00", "18:00"))
            .build()
            .plant()
            .hours();
    Hours now =
        new Hours(
            hours.zone(),
            START + 900,
            hours.endMin(),
            hours.shifts(),
            hours.calendars(),
            hours.closed());
    Hours left =
        OpenedLeft.of(
            now,
            List.of(
                new PlantWide.Opened("over", START + 840, START + 1080),
                new PlantWide.Opened("over", START + DAY + 840, START + DAY + 1080)));
    assertThat(left.shifts())
        .last()
        .satisfies(
            s -> {
              assertThat(s.name()).isEqualTo("over goes on");
              assertThat(s.from()).isEqualTo(LocalTime.of(15, 0));
              assertThat(s.to()).isEqualTo(LocalTime.of(18, 0));
              assertThat(s.days()).containsExactly(DayOfWeek.MONDAY);
            });
    assertThat(left.shifts()).hasSize(3);
    assertThat(left.calendars().get(0).shifts()).containsExactly("day", "over", "over goes on");
  }

  @Test
  void shotsOfRunsThatHaveBegunCountTowardsTheService() {
    List<MoldService> services = List.of(new MoldService("M1", 50, 1_000, 60));
    assertThat(
            ServicesLeft.after(
                services,
                List.of(
                    new ServicesLeft.Shots("M1", 20, 100, 30),
                    new ServicesLeft.Shots("M1", 10, 40, 40),
                    new ServicesLeft.Shots("M2", 0, 7, 7))))
        .extracting(MoldService::shotsLeft)
        .containsExactly(970);
  }
}
