package pressweek.reports.compare;

import java.util.List;
import java.util.Map;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

/** The plan of {@code docs/figures.md}. */
final class WorkedExample {
  private static final String MONDAY = "2026-11-30T";

  private WorkedExample() {}

  static Plan plan() {
    return small().plan();
  }

  static SmallPlan small() {
    Setup black = new Setup("M1", "", "PP", "BLK");
    Setup red = new Setup("M1", "", "PP", "SGR");
    Change none = new Change(black, black, List.of(), at("06:00"), at("06:00"), 0, 0);
    Change colour =
        SmallPlan.change(
            List.of(ChangeKind.COLOUR), black, red, MONDAY + "12:20", MONDAY + "12:50");
    Change mold =
        SmallPlan.change(
            List.of(ChangeKind.MOLD, ChangeKind.COLOUR),
            new Setup("M9", "", "PP", "IVO"),
            black,
            MONDAY + "06:00",
            MONDAY + "07:00");
    SmallPlan plan =
        new SmallPlan()
            .job("5001", choice("V1", 2_040, "15:00"))
            .job("5002", choice("V1", 1_020, "10:00"))
            .job("5003", choice("V2", 2_040, "15:00"))
            .run("R1", "5001/1", "V1", none, List.of(at("06:00"), at("12:20")))
            .run("R2", "5002/1", "V1", colour, List.of(at("12:50"), at("16:08")))
            .run("R3", "5003/1", "V2", mold, List.of(at("07:00"), at("13:28")));
    plan.jobs.set(1, with(plan.jobs.get(1), 200, at("10:00")));
    plan.jobs.set(2, with(plan.jobs.get(2), 100, at("12:00")));
    plan.unplaced.add(new Unplaced("5004", "1", "LV90/X", 10, "no mold makes it", "add one"));
    plan.costs = Map.of(Rule.LATE, 5_000_000L, Rule.CHANGE, 6_750_000L);
    return plan;
  }

  private static SampleJobs.Choice choice(String press, int pieces, String due) {
    return new SampleJobs.Choice(press, "M1", "PP", "BLK", "S0825", pieces, at(due));
  }

  private static int at(String time) {
    return SampleWeek.at(MONDAY + time);
  }

  private static Job with(Job job, int weight, int requestedMin) {
    OrderLine l = job.line();
    Deadline d = job.deadline();
    return new Job(
        new OrderLine(
            l.order(),
            l.line(),
            l.customer(),
            l.item(),
            l.quantity(),
            requestedMin,
            l.needs(),
            l.note()),
        job.item(),
        job.quantity(),
        new Deadline(d.earliestMin(), d.dueMin(), d.afterMin(), weight),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }
}
