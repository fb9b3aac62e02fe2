package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.files.Folder;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;
import pressweek.solver.StopSign;

/** The plan that a question is asked of, and the moment from which it is seen. */
final class StandingPlan {
  @Option(
      names = "--plan",
      paramLabel = "PLAN",
      defaultValue = "",
      description = "plan.json of the plan that stands (default: the week is planned first)")
  private String file = "";

  @Option(
      names = "--now",
      paramLabel = "TIME",
      defaultValue = "",
      description =
          "moment from which the plan is seen, on the plant's clock, as 2026-12-01T09:30, or with an offset (default: now; the start of a plan that is made first)")
  private String now = "";

  /**
   * A plan and what is left of the limits.
   *
   * @param plan the plan
   * @param nowMin minutes since 1970 UTC, within the plan
   * @param left how long a search may still take
   */
  record Standing(Plan plan, int nowMin, Settings left) {}

  /**
   * The plan; empty, and said, where the folder does not make a week.
   *
   * @param stop ends the planning of a week that is planned first
   */
  Optional<Standing> of(CommandSpec spec, Folder folder, Settings limits, StopSign stop)
      throws IOException {
    if (!file.isEmpty()) {
      Path path = Path.of(file);
      Path parent = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
      Plan plan = PlanArgument.earlier(spec, path, parent).replaced().orElseThrow();
      PlanArgument.checkPlant(spec, path, plan, folder);
      return Optional.of(
          new Standing(
              plan, Moments.within(spec.commandLine(), now, Moments.present(), plan), limits));
    }
    Settings half =
        new Settings(
            limits.steps() > 0 ? 0 : Math.max(1, limits.seconds() / 2),
            limits.steps(),
            limits.seed());
    return planned(spec, folder, half, stop)
        .map(
            plan ->
                new Standing(
                    plan,
                    Moments.within(
                        spec.commandLine(), now, plan.problem().plant().hours().startMin(), plan),
                    half));
  }

  private Optional<Plan> planned(CommandSpec spec, Folder folder, Settings limits, StopSign stop) {
    PrintWriter err = spec.commandLine().getErr();
    WeekResult week =
        Week.build(
            folder, now.isEmpty() ? Moments.nextHour(spec.commandLine(), "") : start(spec, folder));
    if (week.problem().isEmpty()) {
      week.errors().forEach(err::println);
      err.println("no plan: " + Counts.of(week.errors().size(), "error") + " in the plant's files");
      return Optional.empty();
    }
    err.println("planning the week first; --plan takes the plan that stands");
    WeekPlanner planner = new WeekPlanner(folder, week.problem().get());
    EarlierPlans none = new EarlierPlans(Optional.empty(), List.of(), List.of());
    ProgressLine progress = new ProgressLine(err, week.problem().get().plant().rates());
    return Optional.of(
        stop.heeding(
            planner::stop, () -> planner.plan(none, limits, Moments.present(), progress).plan()));
  }

  /** Where a plan starts that has no start of its own. */
  private int start(CommandSpec spec, Folder folder) {
    int minute = Moments.minute(spec.commandLine(), now, folder.plant().hours().zone());
    return Math.floorDiv(minute, 60) * 60;
  }
}
