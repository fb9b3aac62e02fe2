package pressweek.reports.trace;

import java.util.Optional;
import pressweek.data.declared.Subject;
import pressweek.data.plan.Run;
import pressweek.data.problem.Declaration;
import pressweek.data.problem.Job;

/**
 * A material of a run that asks for declarations.
 *
 * @param run the run
 * @param job what it makes
 * @param need what is asked for: {@code food}, {@code rohs}
 * @param subject the material
 * @param source where it comes from
 * @param declaration what its supplier has declared; empty when the plan holds no such record
 */
public record TraceRow(
    Run run,
    Job job,
    String need,
    Subject subject,
    Source source,
    Optional<Declaration> declaration) {
  /**
   * Where a material comes from.
   *
   * @param lot lot; empty when none is named
   * @param bin bin; empty likewise
   * @param amount pieces, or grams of what is weighed; empty when not known
   * @param paper paper that came with the lot; may be empty
   * @param note what to write down; may be empty
   */
  public record Source(
      String lot, String bin, Optional<Integer> amount, String paper, String note) {}
}
