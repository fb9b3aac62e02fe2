package pressweek.data.files;

import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.InputError.Severity;

/**
 * Checks that dryers and presses name each other rightly. Without {@code dryers.csv}, or when it or
 * {@code presses.csv} has errors of its own, nothing is checked.
 */
final class DryerCheck {
  private final Folder folder;
  private final Findings findings;

  DryerCheck(Folder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** Adds what it finds. */
  void check() {
    boolean sound =
        folder.has(InputFile.DRYERS)
            && !findings.errorIn(InputFile.DRYERS)
            && !findings.errorIn(InputFile.PRESSES);
    if (sound) {
      Set<String> dryers =
          folder.floor().dryers().stream().map(DryerRow::dryer).collect(Collectors.toSet());
      folder.floor().presses().forEach(row -> dryers(row, dryers));
      Set<String> presses =
          folder.floor().presses().stream().map(PressRow::press).collect(Collectors.toSet());
      folder.floor().dryers().forEach(row -> feeds(row, presses));
    }
  }

  private void dryers(PressRow row, Set<String> known) {
    for (String dryer : row.dryers()) {
      if (!known.contains(dryer)) {
        String seen = "dryer \"" + dryer + "\" is not in dryers.csv; ";
        error(row.at(), "dryer", seen + cure(dryer, known));
      }
    }
  }

  private void feeds(DryerRow row, Set<String> known) {
    for (String press : row.feeds()) {
      if (!known.contains(press)) {
        String seen = "feeds \"" + press + "\" is not in presses.csv; ";
        error(row.at(), "feeds", seen + cure(press, known));
      }
    }
  }

  private static String cure(String id, Collection<String> known) {
    return Nearest.of(id, known)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElse("expected one that is");
  }

  private void error(At at, String column, String message) {
    findings.add(
        new InputError(Severity.ERROR, at.file(), at.line(), column, message), "reference");
  }
}
