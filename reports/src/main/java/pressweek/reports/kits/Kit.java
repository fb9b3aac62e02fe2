package pressweek.reports.kits;

import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;

/**
 * What goes with a run.
 *
 * @param run the run
 * @param job what it makes
 * @param readyByMin when it must be at the press, minutes since 1970 UTC: one lead time before the
 *     change begins, or when the last of it comes in
 * @param parts what is in it
 * @param signs who signs that it is complete, in turn
 */
public record Kit(Run run, Job job, int readyByMin, List<KitPart> parts, List<String> signs) {
  public Kit {
    parts = List.copyOf(parts);
    signs = List.copyOf(signs);
  }
}
