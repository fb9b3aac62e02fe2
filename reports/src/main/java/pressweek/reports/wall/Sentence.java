package pressweek.reports.wall;

import java.util.Optional;
import pressweek.data.plan.Run;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Job;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/**
 * A run in one sentence, for who hears the wall rather than sees it, and for who rests on a bar.
 */
final class Sentence {
  private Sentence() {}

  /**
   * {@code V1, order 4711/1: 500 pieces of LV90/M8, PP signal red, Tue 1 Dec 06:00–09:30, run R017,
   * promised, 2 h late}.
   */
  static String of(PlanBook book, Run run) {
    Job job = book.job(run);
    Stay stay = book.stay(run);
    int late = book.lateMin(run);
    return run.press()
        + ", order "
        + job.id()
        + ": "
        + job.quantity().good()
        + " pieces of "
        + job.item().code()
        + ", "
        + material(book, job)
        + ", "
        + book.clock().span(run.startMin(), run.endMin())
        + ", run "
        + run.id()
        + (stay == Stay.FREE ? "" : ", " + stay.word())
        + (late == 0 ? "" : ", " + lateness(book, job, late));
  }

  private static String lateness(PlanBook book, Job job, int late) {
    return Minutes.words(late) + " late, due " + book.clock().moment(job.deadline().dueMin());
  }

  private static String material(PlanBook book, Job job) {
    Optional<Colour> colour = book.colour(job.resin(), job.colour());
    String name = colour.map(Colour::name).filter(n -> !n.isBlank()).orElse(job.colour());
    return (job.resin() + " " + name).trim();
  }
}
