package pressweek.data.files;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
      Map<String, String> dryerByPress = ownDryers();
      folder.floor().dryers().forEach(row -> feeds(row, dryerByPress));
    }
  }

  private Map<String, String> ownDryers() {
    Set<String> dryers =
        folder.floor().dryers().stream().map(DryerRow::dryer).collect(Collectors.toSet());
    Map<String, String> dryerByPress = new HashMap<>();
    for (PressRow press : folder.floor().presses()) {
      if (!press.dryer().isEmpty() && !dryers.contains(press.dryer())) {
        error(
            press.at(),
            "dryer",
            "dryer \"" + press.dryer() + "\" is not in dryers.csv; " + cure(press.dryer(), dryers));
      }
      if (!press.dryer().isEmpty()) {
        dryerByPress.put(press.press(), press.dryer());
      }
    }
    return dryerByPress;
  }

  private void feeds(DryerRow row, Map<String, String> dryerByPress) {
    List<String> presses = folder.floor().presses().stream().map(PressRow::press).toList();
    for (String press : row.feeds()) {
      if (!presses.contains(press)) {
        error(
            row.at(),
            "feeds",
            "feeds \"" + press + "\" is not in presses.csv; " + cure(press, presses));
        continue;
      }
      String other = dryerByPress.putIfAbsent(press, row.dryer());
      if (other != null && !other.equals(row.dryer())) {
        error(
            row.at(),
            "feeds",
            "press \"%s\" is fed by dryer \"%s\", too; expected one dryer".formatted(press, other));
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
