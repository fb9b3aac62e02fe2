package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Making;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Option;
import pressweek.data.problem.Origin;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.Span;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class ScheduleReportTest {
  private static final String MONDAY = "2026-11-30T";
  private static final Setup BLACK = new Setup("M1", "", "PP", "BLK");

  private static SmallPlan after(ChangeKind... kinds) {
    return new SmallPlan()
        .job("4711", "V1", MONDAY + "22:00")
        .run(
            "R1",
            "4711/1",
            "V1",
            SmallPlan.change(List.of(kinds), BLACK, BLACK, MONDAY + "08:00", MONDAY + "08:30"),
            List.of(SampleWeek.at(MONDAY + "08:30"), SampleWeek.at(MONDAY + "12:00")));
  }

  private static ScheduleRow row(SmallPlan plan) {
    return ScheduleReport.rows(PlanBook.of(plan.plan())).get(0);
  }

  @Test
  void startUpShotsCountAfterAnExchangeOnly() {
    assertThat(row(after()).shots()).isEqualTo(125);
    assertThat(row(after(ChangeKind.COLOUR)).shots()).isEqualTo(135);
    assertThat(row(after(ChangeKind.FOOD_CLEARANCE)).shots()).isEqualTo(125);
    assertThat(row(after()).inserts()).containsExactly("S0825");
  }

  @Test
  void runWithItsInsertsAtThePressNamesThoseOfItsItem() {
    SmallPlan plan = after();
    Job job = plan.jobs.remove(0);
    Option option = job.options().get(0);
    Making nothing = new Making(125, 4, 10, 800, List.of());
    plan.jobs.add(
        new Job(
            job.line(),
            new Item(
                "X",
                List.of(new Attribute(Item.INSERT, "B0810*2|S0825", Origin.RECORD, "bom.csv:3"))),
            job.quantity(),
            job.deadline(),
            job.resin(),
            job.colour(),
            false,
            List.of(
                new Option(
                    option.press(),
                    option.mold(),
                    "",
                    nothing,
                    option.pace(),
                    option.standing(),
                    List.of()))));
    assertThat(row(plan).inserts()).containsExactly("B0810", "S0825");
  }

  @Test
  void runningAndPromisedRunsStay() {
    SmallPlan plan = after();
    assertThat(row(plan).stay()).isEqualTo(Stay.FREE);
    plan.promises.add(new Promise("4711/1", "V1", SampleWeek.at(MONDAY + "08:30")));
    assertThat(row(plan).stay()).isEqualTo(Stay.PROMISED);
    plan.states.add(new PressState("V1", BLACK, false, "4711/1"));
    assertThat(row(plan).stay()).isEqualTo(Stay.RUNNING);
  }

  @Test
  void exactlyOnTimeIsNotLate() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "12:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00");
    assertThat(row(plan).lateMin()).isZero();
    assertThat(PlanBook.of(plan.plan()).lateRuns()).isEmpty();
    plan.job("4712", "V2", MONDAY + "11:59")
        .run("R2", "4712", "V2", MONDAY + "08:00", MONDAY + "12:00");
    PlanBook book = PlanBook.of(plan.plan());
    assertThat(book.lateRuns())
        .extracting(r -> r.id() + " " + book.lateMin(r))
        .containsExactly("R2 1");
  }

  @Test
  void runOfAnUnknownJobIsABug() {
    SmallPlan plan = new SmallPlan().run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "12:00");
    PlanBook book = PlanBook.of(plan.plan());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ScheduleReport.rows(book))
        .withMessage("run R1 makes 4711/1, which is no job of the plan's week");
  }

  @Test
  void colourOfTheResinComesBeforeThatOfAllResins() {
    SmallPlan plan = new SmallPlan();
    plan.materials =
        new Materials(
            List.of(),
            List.of(colour("", "111111"), colour("PP", "222222"), colour("POM", "333333")),
            List.of(),
            plan.materials.stock());
    PlanBook book = PlanBook.of(plan.plan());
    assertThat(book.colour("PP", "BLK")).map(Colour::srgb).hasValue("222222");
    assertThat(book.colour("ABS", "BLK")).map(Colour::srgb).hasValue("111111");
    assertThat(book.colour("ABS", "SGR")).isEmpty();
  }

  private static Colour colour(String resin, String srgb) {
    return new Colour(resin, "BLK", "black", srgb, OptionalDouble.empty());
  }

  @Test
  void pressWorksItsShiftsLessItsDowntime() {
    SmallPlan plan = new SmallPlan();
    plan.downtime.add(
        new Downtime(
            Downtime.Kind.PRESS,
            "V1",
            SampleWeek.at(MONDAY + "10:00"),
            SampleWeek.at(MONDAY + "11:00"),
            "repair"));
    PlanBook book = PlanBook.of(plan.plan());
    assertThat(book.working(book.presses().get(0)))
        .contains(
            new Span(SampleWeek.at(MONDAY + "06:00"), SampleWeek.at(MONDAY + "10:00")),
            new Span(SampleWeek.at(MONDAY + "11:00"), SampleWeek.at(MONDAY + "22:00")));
    assertThat(book.working(book.presses().get(1)))
        .contains(new Span(SampleWeek.at(MONDAY + "06:00"), SampleWeek.at(MONDAY + "22:00")));
  }
}
