package pressweek.solver.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.solver.repair.WorkedPlant.MOUNT;
import static pressweek.solver.repair.WorkedPlant.at;
import static pressweek.solver.repair.WorkedPlant.event;
import static pressweek.solver.repair.WorkedPlant.line;
import static pressweek.solver.repair.WorkedPlant.next;
import static pressweek.solver.repair.WorkedPlant.planned;
import static pressweek.solver.repair.WorkedPlant.plant;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pressweek.data.files.EventKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;

/** What is left of stock, people, shifts and services after each event. */
final class StockAndCrewLeftTest {
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
