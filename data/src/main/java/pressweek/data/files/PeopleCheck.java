package pressweek.data.files;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.Shift;

/**
 * Checks that the shifts, presses and cells of {@code people.csv} are known. What is in a file that
 * has errors of its own is not checked against.
 */
final class PeopleCheck {
  private final Folder folder;
  private final Findings findings;

  PeopleCheck(Folder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** Adds what it finds. */
  void check() {
    if (!findings.errorIn(InputFile.PLANT)) {
      List<String> shifts = folder.plant().hours().shifts().stream().map(Shift::name).toList();
      folder.people().forEach(row -> shifts(row, shifts));
    }
    if (!findings.errorIn(InputFile.PRESSES)) {
      folder.people().forEach(this::mayRun);
    }
  }

  private void shifts(PersonRow row, Collection<String> known) {
    row.shifts().stream()
        .filter(shift -> !known.contains(shift))
        .forEach(
            shift ->
                error(
                    row,
                    "shifts",
                    "shift \"" + shift + "\" is not in plant.json; " + cure(shift, known)));
    List<String> unattended = folder.plant().hours().opening().unattended();
    row.shifts().stream()
        .filter(unattended::contains)
        .forEach(
            shift ->
                error(
                    row,
                    "shifts",
                    "shift \"" + shift + "\" is unattended; expected one with people"));
  }

  private void mayRun(PersonRow row) {
    List<PressRow> all = folder.floor().presses();
    Set<String> presses = all.stream().map(PressRow::press).collect(Collectors.toSet());
    Set<String> known = new HashSet<>(presses);
    all.stream().map(PressRow::cell).filter(cell -> !cell.isEmpty()).forEach(known::add);
    for (String id : row.mayRun()) {
      boolean others = all.stream().anyMatch(p -> p.cell().equals(id) && !p.press().equals(id));
      if (!known.contains(id)) {
        error(
            row,
            "may_run",
            "may_run \"%s\" is neither a press nor a cell of presses.csv; %s"
                .formatted(id, cure(id, known)));
      } else if (presses.contains(id) && others) {
        error(
            row,
            "may_run",
            "may_run \"" + id + "\" is a press and a cell of others; expected ids that differ");
      }
    }
  }

  private static String cure(String id, Collection<String> known) {
    return Nearest.of(id, known)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElse("expected one that is");
  }

  private void error(PersonRow row, String column, String message) {
    findings.add(
        new InputError(Severity.ERROR, row.at().file(), row.at().line(), column, message),
        "reference");
  }
}
