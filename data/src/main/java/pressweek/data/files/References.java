package pressweek.data.files;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Table;

/**
 * Checks that what one file names stands in the other. A file that has errors of its own is not
 * checked against.
 */
final class References {
  private final Folder folder;
  private final Findings findings;
  private final Set<String> presses;
  private final Set<String> molds;
  private final Set<String> resins;
  private final Set<String> lines;

  References(Folder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
    this.presses =
        folder.floor().presses().stream().map(PressRow::press).collect(Collectors.toSet());
    this.molds = folder.floor().molds().stream().map(MoldRow::mold).collect(Collectors.toSet());
    this.resins =
        folder.materials().resins().stream().map(ResinRow::resin).collect(Collectors.toSet());
    this.lines = new HashSet<>();
    folder.demand().orders().forEach(o -> line(o.id()));
    folder.demand().faulty().forEach(o -> line(o.order() + "/" + o.line()));
  }

  /** A line, and the parts in which it may be made. */
  private void line(String id) {
    lines.add(id);
    if (!folder.arranged().stages().isEmpty() || folder.plant().splitOverH() > 0) {
      lines.add(id + "/1");
      lines.add(id + "/2");
    }
  }

  /** Adds what it finds. */
  void check() {
    // What is sound so far is decided once, so that no follow-up error hides another.
    boolean pressesSound = !findings.errorIn(InputFile.PRESSES);
    boolean moldsSound = !findings.errorIn(InputFile.MOLDS);
    boolean resinsSound = folder.has(InputFile.RESINS) && !findings.errorIn(InputFile.RESINS);
    boolean plantSound = !findings.errorIn(InputFile.PLANT);
    boolean standardsSound = !findings.errorIn(InputFile.STANDARDS);
    if (plantSound) {
      calendars();
    }
    if (pressesSound) {
      presses();
      folder.plant().uncertainty().presses().forEach(p -> uncertain(p.press()));
    }
    if (moldsSound) {
      molds(standardsSound);
    }
    if (resinsSound) {
      resins();
    }
    if (!findings.errorIn(InputFile.ORDERS)) {
      orders();
    }
    units();
    if (folder.has(InputFile.INSERTS) && !findings.errorIn(InputFile.INSERTS)) {
      inserts();
    }
  }

  private void add(Severity severity, At at, String column, String message) {
    findings.add(new InputError(severity, at.file(), at.line(), column, message), "reference");
  }

  /** An error when a value that is given is not among the known ones. */
  private void known(
      At at, String column, String value, Collection<String> known, InputFile where) {
    if (!value.isEmpty() && !known.contains(value)) {
      add(Severity.ERROR, at, column, unknown(column, value, known, where));
    }
  }

  private static String unknown(
      String column, String value, Collection<String> known, InputFile where) {
    String cure =
        Nearest.of(value, known)
            .map(n -> "did you mean \"" + n + "\"?")
            .orElse("expected one that is");
    return column + " \"" + value + "\" is not in " + where.fileName() + "; " + cure;
  }

  private void calendars() {
    Set<String> calendars = folder.plant().hours().calendars().keySet();
    Optional<String> overlap = ShiftOverlap.in(folder.plant().hours().shifts());
    for (PressRow press : folder.floor().presses()) {
      known(press.at(), "calendar", press.calendar(), calendars, InputFile.PLANT);
      if (press.calendar().isEmpty() && overlap.isPresent()) {
        String seen = "press \"" + press.press() + "\" has no calendar, and " + overlap.get();
        add(Severity.ERROR, press.at(), "calendar", seen + "; expected a calendar of plant.json");
      }
    }
  }

  private void presses() {
    Folder.FloorRows floor = folder.floor();
    floor.running().forEach(r -> known(r.at(), "press", r.press(), presses, InputFile.PRESSES));
    floor.promised().forEach(r -> known(r.at(), "press", r.press(), presses, InputFile.PRESSES));
    floor
        .recordedChanges()
        .forEach(r -> known(r.at(), "press", r.press(), presses, InputFile.PRESSES));
    Set<String> kinds = new HashSet<>(presses);
    kinds.addAll(Columns.words(Orientation.values()));
    kinds.addAll(Columns.words(Table.values()));
    floor.standards().forEach(r -> known(r.at(), "press", r.press(), kinds, InputFile.PRESSES));
    for (MoldRow mold : floor.molds()) {
      Stream.of(mold.runsOn().proven(), mold.runsOn().allowed(), mold.runsOn().never())
          .flatMap(List::stream)
          .forEach(p -> known(mold.at(), "runs_on", p, presses, InputFile.PRESSES));
    }
  }

  private void uncertain(String press) {
    String key = "uncertainty.presses";
    known(folder.plant().at(key), key, press, presses, InputFile.PRESSES);
  }

  private void molds(boolean standardsSound) {
    Folder.FloorRows floor = folder.floor();
    floor.standards().forEach(r -> known(r.at(), "mold", r.mold(), molds, InputFile.MOLDS));
    floor.running().forEach(r -> known(r.at(), "mold", r.setup().mold(), molds, InputFile.MOLDS));
    for (RecordedChangeRow change : floor.recordedChanges()) {
      known(change.at(), "from_mold", change.from().mold(), molds, InputFile.MOLDS);
      known(change.at(), "to_mold", change.to().mold(), molds, InputFile.MOLDS);
    }
    Set<String> timed =
        floor.standards().stream().map(StandardRow::mold).collect(Collectors.toSet());
    for (MoldRow mold : floor.molds()) {
      if (standardsSound && mold.cycleS().isEmpty() && !timed.contains(mold.mold())) {
        String seen = "mold \"" + mold.mold() + "\" has no cycle_s and no row in standards.csv";
        add(Severity.ERROR, mold.at(), "cycle_s", seen + "; expected one of the two");
      }
    }
  }

  private void resins() {
    Folder.FloorRows floor = folder.floor();
    floor.running().forEach(r -> resin(r.at(), "resin", r.setup()));
    floor.standards().forEach(r -> known(r.at(), "resin", r.resin(), resins, InputFile.RESINS));
    for (RecordedChangeRow change : floor.recordedChanges()) {
      resin(change.at(), "from_resin", change.from());
      resin(change.at(), "to_resin", change.to());
    }
    folder
        .materials()
        .colours()
        .forEach(r -> known(r.at(), "resin", r.resin(), resins, InputFile.RESINS));
    for (ResinRow row : folder.materials().resins()) {
      for (String other : row.neverNextTo()) {
        if (!resins.contains(other)) {
          add(
              Severity.WARNING,
              row.at(),
              "never_next_to",
              unknown("never_next_to", other, resins, InputFile.RESINS));
        }
      }
    }
  }

  private void resin(At at, String column, Setup setup) {
    known(at, column, setup.resin(), resins, InputFile.RESINS);
  }

  private void orders() {
    for (RunningRow row : folder.floor().running()) {
      if (row.order().isEmpty()) {
        continue;
      }
      known(row.at(), "order", row.order() + "/" + row.line(), lines, InputFile.ORDERS);
      if (row.setup().mold().isEmpty()) {
        String seen = "order \"" + row.order() + "\" is running without a mold";
        add(Severity.ERROR, row.at(), "mold", seen + "; expected the mold in the press");
      }
    }
    for (PromisedRow row : folder.floor().promised()) {
      if (!lines.contains(row.id())) {
        String seen = "order line \"" + row.id() + "\" is not in orders.csv and not planned";
        add(Severity.WARNING, row.at(), "order", seen + "; expected one that is");
      }
    }
  }

  /** Resins and masterbatches are weighed, all else is counted. */
  private void units() {
    Set<String> weighed = new HashSet<>(resins);
    folder.materials().resins().forEach(r -> weighed.add(r.grade()));
    folder.demand().orders().forEach(r -> weighed.add(r.resin()));
    folder.materials().colours().forEach(r -> weighed.add(r.masterbatch()));
    Set<String> counted = new HashSet<>();
    folder.materials().inserts().forEach(r -> counted.add(r.insert()));
    folder.materials().bom().forEach(r -> counted.add(r.component()));
    for (LotRow row : folder.materials().lots()) {
      unit(row.at(), row.what(), row.onHand(), weighed.contains(row.what()), counted);
    }
    for (ReceiptRow row : folder.materials().receipts()) {
      unit(row.at(), row.what(), row.quantity(), weighed.contains(row.what()), counted);
    }
  }

  private void unit(At at, String what, Amount amount, boolean weighed, Set<String> counted) {
    if (weighed && counted.contains(what)) {
      add(
          Severity.ERROR,
          at,
          "what",
          "\"" + what + "\" is a resin or masterbatch and a component; expected ids that differ");
    } else if (weighed && !amount.weighed()) {
      String seen = "\"" + what + "\" is a resin or masterbatch, counted in pieces";
      add(Severity.ERROR, at, "what", seen + "; expected weight_kg");
    } else if (!weighed && amount.weighed()) {
      String seen = "\"" + what + "\" is weighed, and no resin or masterbatch";
      add(Severity.ERROR, at, "what", seen + "; expected pieces");
    }
  }

  private void inserts() {
    Folder.MaterialRows rows = folder.materials();
    Set<String> inserts =
        rows.inserts().stream().map(InsertRow::insert).collect(Collectors.toSet());
    Set<String> stocked = new HashSet<>(inserts);
    stocked.addAll(resins);
    rows.bom().forEach(r -> stocked.add(r.component()));
    rows.colours().forEach(r -> stocked.add(r.masterbatch()));
    rows.lots().forEach(r -> doubtful(r.at(), "what", r.what(), stocked));
    rows.receipts().forEach(r -> doubtful(r.at(), "what", r.what(), stocked));
    for (LookAlikeRow row : rows.lookAlikes()) {
      doubtful(row.at(), "a", row.a(), inserts);
      doubtful(row.at(), "b", row.b(), inserts);
    }
    rows.bom().stream()
        .filter(r -> r.kind() == BomRow.Kind.INSERT && !r.component().isEmpty())
        .forEach(r -> doubtful(r.at(), "component", r.component(), inserts));
  }

  private void doubtful(At at, String column, String value, Collection<String> known) {
    if (!known.contains(value)) {
      add(Severity.WARNING, at, column, unknown(column, value, known, InputFile.INSERTS));
    }
  }
}
