package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Materials;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class CautionsTest {
  private static List<String> of(SmallPlan plan) {
    return Cautions.of(PlanBook.of(plan.plan()));
  }

  @Test
  void clampMeltAndEstimatesAreAlwaysThere() {
    SmallPlan plan = new SmallPlan();
    plan.materials = new Materials(List.of(), List.of(), List.of(), plan.materials.stock());
    assertThat(of(plan)).hasSize(3);
    assertThat(of(plan).get(0)).contains("lockout").contains("a vertical one can drop");
    assertThat(of(plan).get(1)).startsWith("Hot melt and purge");
    assertThat(of(plan).get(2)).contains("licensed people rule");
  }

  @Test
  void forbiddenNeighboursAreNamedOnce() {
    assertThat(of(new SmallPlan()))
        .filteredOn(c -> c.startsWith("Never together"))
        .singleElement()
        .asString()
        .contains("POM and PVC. ");
  }

  @Test
  void hexavalentIsSaidWhenSuchInsertsArePulled() {
    String time = "2026-11-30T07:00";
    assertThat(of(new SmallPlan().pull("R1", "V1", time, "S0825")))
        .noneMatch(c -> c.startsWith("Hexavalent"));
    assertThat(of(new SmallPlan().pull("R1", "V1", time, "S5616")))
        .anyMatch(c -> c.startsWith("Hexavalent"));
  }

  @Test
  void foodContactIsSaidWhenSuchOrdersArePlanned() {
    int due = SampleWeek.at("2026-11-30T22:00");
    SampleJobs.Choice food = new SampleJobs.Choice("V2", "M1", "PP", "BLK", "S0825", 10, due);
    assertThat(of(new SmallPlan())).noneMatch(c -> c.startsWith("Food contact"));
    assertThat(of(new SmallPlan().job("4711", food)))
        .anyMatch(c -> c.startsWith("Food contact") && c.contains("never certifies"));
  }
}
