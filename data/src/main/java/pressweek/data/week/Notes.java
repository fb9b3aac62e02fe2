package pressweek.data.week;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import pressweek.data.files.At;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;

/** Findings about what the files of a folder say of each other. */
final class Notes {
  private static final int NEAREST = 3;

  private final List<InputError> findings = new ArrayList<>();

  List<InputError> findings() {
    return List.copyOf(findings);
  }

  void error(At at, String column, String message) {
    findings.add(new InputError(Severity.ERROR, at.file(), at.line(), column, message));
  }

  void warning(At at, String column, String message) {
    findings.add(new InputError(Severity.WARNING, at.file(), at.line(), column, message));
  }

  /** An id that does not exist: {@code press "P9" is not in presses.csv; nearest: P1, P2}. */
  static String unknown(String kind, String id, String file, Collection<String> known) {
    String nearest = String.join(", ", Words.nearest(id, known, NEAREST));
    return kind
        + " \""
        + id
        + "\" is not in "
        + file
        + (nearest.isEmpty() ? "" : "; nearest: " + nearest);
  }
}
