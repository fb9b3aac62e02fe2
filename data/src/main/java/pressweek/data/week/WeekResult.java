package pressweek.data.week;

import java.util.List;
import java.util.Optional;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.Problem;

/**
 * What came of a plant's folder.
 *
 * @param problem the week to plan; empty when there is an error
 * @param findings every finding: those of the files, of the guide, and of what the files say of
 *     each other
 */
public record WeekResult(Optional<Problem> problem, List<InputError> findings) {
  public WeekResult {
    findings = List.copyOf(findings);
  }

  /** The faults in the plant's own files; when there is one, there is no problem. */
  public List<InputError> errors() {
    return findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
  }

  /** What was left out or assumed, and the faults of single order lines. */
  public List<InputError> warnings() {
    return findings.stream().filter(f -> f.severity() != Severity.ERROR).toList();
  }
}
