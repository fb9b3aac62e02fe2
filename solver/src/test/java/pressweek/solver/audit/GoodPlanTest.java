package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Receipt;

class GoodPlanTest {
  @Test
  void aGoodPlanHasNoFindings() {
    assertThat(Audit.check(WeekProblem.problem(), WeekPlan.plan())).isEmpty();
  }

  /**
   * Problems for which the plan is just as good: each limit exactly kept, or not to be checked at
   * all.
   */
  @ParameterizedTest
  @MethodSource("limits")
  void atTheLimitItIsStillGood(String path, Object value) {
    Plan plan = Edited.set(WeekPlan.plan(), "problem." + path, value);
    assertThat(Audit.check(plan.problem(), plan)).isEmpty();
  }

  static Stream<Arguments> limits() {
    Promise second = new Promise("C/2", "P2", at("Mon 12:53"));
    Promise first = new Promise("C/1", "P2", at("Mon 06:30"));
    return Stream.of(
        Arguments.of("floor.promises[0].startMin", at("Mon 06:00")),
        Arguments.of("floor.promises", List.of(second, first)),
        Arguments.of("floor.promises[0].job", "gone/1"),
        Arguments.of("floor.promises", List.of(new Promise("A/1", "P1", at("Mon 04:00")))),
        Arguments.of("floor.downtime[1].fromMin", at("Tue 10:35")),
        Arguments.of("floor.downtime[0].fromMin", at("Mon 10:32")),
        Arguments.of("floor.molds[M2].change.availableFromMin", OptionalInt.of(at("Mon 13:27"))),
        Arguments.of("floor.states[P1].job", ""),
        Arguments.of("floor.states[P1].clearedForFood", true),
        Arguments.of("jobs[A/1].deadline.earliestMin", at("Tue 06:00")),
        Arguments.of("jobs[A/2].deadline.earliestMin", at("Mon 08:00")),
        Arguments.of("jobs[B/2].deadline.dueMin", at("Tue 14:20")),
        Arguments.of("materials.resins[POM].neverNextTo", List.of("PVC", "PA")),
        Arguments.of("materials.stock.receipts[0].usableMin", at("Mon 15:00")),
        Arguments.of("materials.stock.lots[K1].onHand", 198),
        Arguments.of("arrangements", arranged("links", new Link("B/1", "A/2", 178))),
        Arguments.of("arrangements", arranged("services", new MoldService("M1", 4030, 4030, 60))),
        Arguments.of("arrangements", arranged("things", new CountedThing("T8", 1))),
        Arguments.of("arrangements", arranged("devices", new DeviceNeed("M1", "heater"))),
        Arguments.of("plant.crew.changeMaySpanGap", true),
        Arguments.of("plant.hours.endMin", at("Sat 06:00")));
  }

  private static Optional<Arrangements> arranged(String path, Object row) {
    return Optional.of(Arranged.only(path, List.of(row)));
  }

  @Test
  void whatThePlantDidNotGiveIsNotChecked() {
    Plan plan = Edited.set(WeekPlan.plan(), "problem.plant.crew.settersChecked", false);
    plan = Edited.set(plan, "problem.plant.crew.operatorsChecked", false);
    plan = Edited.set(plan, "problem.plant.hours.shifts[0].setters", 0);
    plan = Edited.set(plan, "problem.plant.hours.shifts[0].operatorThousandths", 0);
    assertThat(Audit.check(plan.problem(), plan)).isEmpty();
  }

  @Test
  void withoutLotsPullsNameNone() {
    Plan plan = Edited.set(WeekPlan.plan(), "problem.materials.stock.checked", false);
    plan = Edited.set(plan, "problem.materials.stock.lots", List.of());
    plan = Edited.set(plan, "problem.materials.stock.receipts", List.<Receipt>of());
    List<Pull> bare =
        plan.pulls().stream()
            .map(
                pull ->
                    new Pull(
                        pull.run(),
                        pull.press(),
                        pull.needByMin(),
                        pull.insert(),
                        "",
                        "",
                        0,
                        pull.pieces()))
            .toList();
    plan = Edited.set(plan, "pulls", bare);
    assertThat(Audit.check(plan.problem(), plan)).isEmpty();
  }
}
