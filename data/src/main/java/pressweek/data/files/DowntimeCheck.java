package pressweek.data.files;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.InputError.Severity;

/**
 * Checks that what is away or tried is known, and that it is so for some time. When {@code
 * presses.csv} or {@code molds.csv} has errors of its own, nothing is checked.
 */
final class DowntimeCheck {
  private final Folder folder;
  private final Findings findings;
  private final Set<String> presses;
  private final Set<String> molds;

  DowntimeCheck(Folder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
    this.presses =
        folder.floor().presses().stream().map(PressRow::press).collect(Collectors.toSet());
    this.molds = folder.floor().molds().stream().map(MoldRow::mold).collect(Collectors.toSet());
  }

  /** Adds what it finds. */
  void check() {
    if (!findings.errorIn(InputFile.PRESSES) && !findings.errorIn(InputFile.MOLDS)) {
      folder.floor().downtime().forEach(this::check);
    }
  }

  private void check(DowntimeRow row) {
    if (row.trial()) {
      trial(row);
    } else {
      away(row);
    }
    ZoneId zone = folder.plant().hours().zone();
    if (row.from().minute(zone, LocalTime.MIN) >= row.to().minute(zone, LocalTime.MIN)) {
      error(
          row,
          "to",
          "the %s ends before it begins; expected \"to\" after \"from\" (a date alone is its 00:00)"
              .formatted(row.trial() ? "trial" : "downtime"));
    }
  }

  private void trial(DowntimeRow row) {
    if (!presses.contains(row.what())) {
      String seen = "what \"" + row.what() + "\" of a trial is no press of presses.csv; ";
      error(row, "what", seen + cure(row.what(), presses));
    }
    if (!molds.contains(row.mold())) {
      String seen = "mold \"" + row.mold() + "\" is not in molds.csv; ";
      error(row, "mold", seen + cure(row.mold(), molds));
    }
  }

  private void away(DowntimeRow row) {
    String what = row.what();
    if (presses.contains(what) && molds.contains(what)) {
      error(row, "what", "\"" + what + "\" is a press and a mold; expected ids that differ");
    } else if (!presses.contains(what) && !molds.contains(what)) {
      Set<String> all = new HashSet<>(presses);
      all.addAll(molds);
      error(row, "what", "what \"" + what + "\" is neither a press nor a mold; " + cure(what, all));
    }
  }

  private static String cure(String id, Collection<String> known) {
    return Nearest.of(id, known)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElse("expected one that is");
  }

  private void error(DowntimeRow row, String column, String message) {
    findings.add(
        new InputError(Severity.ERROR, row.at().file(), row.at().line(), column, message),
        "reference");
  }
}
