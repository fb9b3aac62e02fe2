package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Cause;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Take;
import pressweek.data.problem.Unplaced;

/** Says why a job found no place and what would cure it. */
final class Reasons {
  private Reasons() {}

  static Unplaced unplaced(WeekTables week, Recorder.LeftOut left) {
    Job job = week.jobs.jobs.get(left.job());
    String press = week.problem.floor().presses().get(left.press()).id();
    Recorder.Push last = last(left.pushes(), left.cause());
    return new Unplaced(
        job.line().order(),
        job.line().line(),
        job.item().code(),
        job.quantity().good(),
        reason(last, press, job),
        cure(last, press, job),
        last.cause() == Cause.INSERTS ? Optional.of(last.what()) : Optional.empty());
  }

  /** A job that no press may take. */
  static Unplaced nowhere(Job job) {
    return new Unplaced(
        job.line().order(),
        job.line().line(),
        job.item().code(),
        job.quantity().good(),
        job.foodGrade()
            ? "none of the presses that could run it may be used for food-grade work"
            : "the presses that could run it are for food-grade work only",
        "open a press for it (column food of presses.csv)");
  }

  private static Recorder.Push last(List<Recorder.Push> pushes, Cause cause) {
    if (cause != Cause.HORIZON || pushes.isEmpty()) {
      return new Recorder.Push(cause, "", 0);
    }
    return pushes.get(pushes.size() - 1);
  }

  private static String reason(Recorder.Push push, String press, Job job) {
    return switch (push.cause()) {
      case INSERTS -> components(push.what(), job) + " not in the house in time";
      case MOLD -> "mold " + push.what() + " is not free in time";
      case MOLD_AWAY -> "mold " + push.what() + " is away";
      case SETTER -> "no setter for its change on " + press + " in time";
      case OPERATOR -> "no operator for it on " + press + " in time";
      case INSPECTOR -> "no inspector for its first article on " + press + " in time";
      case TOOLING -> push.what() + " is in use elsewhere for too long";
      case SERVICE -> "mold " + push.what() + " is not back from its service in time";
      case DRYER -> "no dryer of " + press + " has its material dry in time";
      case LINKED -> "the run that it builds on, " + push.what() + ", ends too late";
      case CHOICE ->
          push.what().isEmpty()
              ? "it keeps the time that it had before"
              : "it is held back behind " + push.what();
      case PROMISED -> "mold " + push.what() + " is promised to other work";
      case NEIGHBOUR -> "its resin must not follow what is in the barrel of " + press;
      case EARLIEST -> "it may not start before the horizon ends";
      case SHIFT, PRESS, HORIZON -> press + " has no time left within the horizon";
    };
  }

  /** {@code insert A is}, {@code insert A and carton B are}. */
  private static String components(String what, Job job) {
    List<String> words = new ArrayList<>();
    for (String id : what.split("\\|", -1)) {
      Component component =
          job.options().stream()
              .flatMap(option -> option.making().takes().stream())
              .filter(take -> take.insert().equals(id))
              .map(Take::component)
              .findFirst()
              .orElse(Component.INSERT);
      words.add(component.word() + " " + id);
    }
    return String.join(" and ", words) + (words.size() == 1 ? " is" : " are");
  }

  private static String cure(Recorder.Push push, String press, Job job) {
    return switch (push.cause()) {
      case INSERTS -> "an earlier or larger receipt of " + push.what().replace("|", " and ");
      case MOLD, MOLD_AWAY, PROMISED ->
          "the mold back earlier, or a second one for " + job.item().code();
      case SETTER -> "a setter in another shift";
      case OPERATOR -> "an operator in another shift";
      case INSPECTOR -> "an inspector in another shift";
      case TOOLING -> "one more of " + push.what();
      case SERVICE -> "the service before the week, or a second mold for " + job.item().code();
      case DRYER -> "another dryer for " + press;
      case LINKED -> "an earlier run of " + push.what();
      case CHOICE -> "a new plan";
      case NEIGHBOUR -> "another press, or a run in a neutral resin between them on " + press;
      case EARLIEST -> "an earlier start, or a longer horizon";
      case SHIFT, PRESS, HORIZON -> "another shift, a longer horizon, or fewer pieces";
    };
  }
}
