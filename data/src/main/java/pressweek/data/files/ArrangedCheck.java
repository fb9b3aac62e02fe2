package pressweek.data.files;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.InputError.Severity;

/**
 * Checks that molds, counted things and family molds name each other rightly. A file that has
 * errors of its own is not checked against.
 */
final class ArrangedCheck {
  private final Folder folder;
  private final Findings findings;

  ArrangedCheck(Folder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** Adds what it finds. */
  void check() {
    boolean moldsSound = !findings.errorIn(InputFile.MOLDS);
    boolean familySound = !findings.errorIn(InputFile.FAMILY);
    if (folder.has(InputFile.TOOLING) && !findings.errorIn(InputFile.TOOLING)) {
      Set<String> things =
          folder.arranged().tooling().stream().map(ToolingRow::tooling).collect(Collectors.toSet());
      folder.floor().molds().forEach(row -> devices(row, things));
    }
    if (familySound) {
      makes();
    }
    if (moldsSound) {
      family();
    }
  }

  private void devices(MoldRow row, Set<String> things) {
    for (String device : row.devices()) {
      if (!things.contains(device)) {
        error(
            row.at(),
            "devices",
            "device \"%s\" is not in tooling.csv; %s"
                .formatted(device, cure(device, things, "expected a row in tooling.csv")));
      }
      if (row.use().toolingByThread().containsValue(device)) {
        String seen = "\"" + device + "\" is a tooling set and a device of the mold";
        error(row.at(), "devices", seen + "; expected ids that differ");
      }
    }
  }

  /** A mold makes something, by its own row or by those of a family mold. */
  private void makes() {
    Set<String> families = new HashSet<>();
    folder.arranged().family().forEach(row -> families.add(row.mold()));
    for (MoldRow row : folder.floor().molds()) {
      if (row.use().makes().isEmpty() && !families.contains(row.mold())) {
        error(
            row.at(),
            "makes",
            "makes is empty; expected heads or items, or rows of the mold in family.csv");
      }
    }
  }

  private void family() {
    Set<String> molds =
        folder.floor().molds().stream().map(MoldRow::mold).collect(Collectors.toSet());
    for (FamilyRow row : folder.arranged().family()) {
      if (!molds.contains(row.mold())) {
        error(
            row.at(),
            "mold",
            "mold \"%s\" is not in molds.csv; %s"
                .formatted(row.mold(), cure(row.mold(), molds, "expected one that is")));
      }
    }
  }

  private static String cure(String id, Collection<String> known, String otherwise) {
    return Nearest.of(id, known).map(near -> "did you mean \"" + near + "\"?").orElse(otherwise);
  }

  private void error(At at, String column, String message) {
    findings.add(
        new InputError(Severity.ERROR, at.file(), at.line(), column, message), "reference");
  }
}
