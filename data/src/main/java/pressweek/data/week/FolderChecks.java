package pressweek.data.week;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pressweek.data.declared.KnownNeeds;
import pressweek.data.files.At;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.InsertRow;
import pressweek.data.files.LotRow;
import pressweek.data.files.MoldRow;
import pressweek.data.files.OrderRow;
import pressweek.data.files.RecordRow;
import pressweek.data.files.RunningRow;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Take;

/** Checks what the files of a folder say of each other beyond the ids that they name. */
final class FolderChecks {
  private static final int SHOWN = 4;

  private final Folder folder;
  private final Shop shop;
  private final Notes notes;

  FolderChecks(Folder folder, Shop shop, Notes notes) {
    this.folder = folder;
    this.shop = shop;
    this.notes = notes;
  }

  void check(List<Job> jobs) {
    partsApart(jobs);
    runningOnce();
    moldsWithoutPress();
    withoutStock(jobs);
    reservations(jobs);
    wholeInParts(jobs);
    records();
    needs();
  }

  /** A demand that nothing could meet; of a scenario's own making it is more than a line's. */
  private void needs() {
    KnownNeeds known = KnownNeeds.of(folder);
    for (OrderRow order : folder.demand().orders()) {
      for (String need : order.needs()) {
        known
            .fault(need)
            .ifPresent(
                fault ->
                    folder
                        .made(order.id(), "needs")
                        .ifPresentOrElse(
                            at -> notes.error(at, "needs", "needs " + fault),
                            () -> notes.warning(order.at(), "needs", "needs " + fault)));
      }
    }
  }

  /** A mold is in one press, and an order line runs in one press. */
  private void runningOnce() {
    Map<String, RunningRow> molds = new HashMap<>();
    Map<String, RunningRow> orders = new HashMap<>();
    for (RunningRow row : folder.floor().running()) {
      String mold = row.setup().mold();
      RunningRow before = mold.isEmpty() ? null : molds.putIfAbsent(mold, row);
      if (before != null) {
        notes.error(row.at(), "mold", twice("mold " + mold, before, row));
      }
      String order = row.order() + "/" + row.line();
      RunningRow other = row.order().isEmpty() ? null : orders.putIfAbsent(order, row);
      if (other != null) {
        notes.error(row.at(), "order", twice("order " + order, other, row));
      }
    }
  }

  /** The part of a line and another line must not be called the same. */
  private void partsApart(List<Job> jobs) {
    Map<String, At> lines = new HashMap<>();
    folder.demand().orders().forEach(order -> lines.put(order.id(), order.at()));
    Set<String> seen = new HashSet<>();
    for (Job job : jobs) {
      if (!seen.add(job.id())) {
        notes.error(
            lines.getOrDefault(job.id(), new At(InputFile.ORDERS.fileName(), 0)),
            "line",
            "order %s is a line and a part of another line; expected order and line numbers that differ"
                .formatted(job.id()));
      }
    }
  }

  /** Of a line that is made over a core the part that runs must be said. */
  private void wholeInParts(List<Job> jobs) {
    Set<String> parts = jobs.stream().map(Job::id).collect(Collectors.toSet());
    for (RunningRow row : folder.floor().running()) {
      String line = row.order() + "/" + row.line();
      if (!parts.contains(line) && parts.contains(line + "/2")) {
        notes.error(
            row.at(),
            "line",
            "order %s is made in two parts; expected line %s/1 or %s/2"
                .formatted(line, row.line(), row.line()));
      }
    }
  }

  private static String twice(String what, RunningRow before, RunningRow row) {
    return "%s is on %s and, by line %d, on %s; expected one press"
        .formatted(what, row.press(), before.at().line(), before.press());
  }

  private void moldsWithoutPress() {
    Map<String, At> places = new HashMap<>();
    for (MoldRow row : folder.floor().molds()) {
      places.put(row.mold(), row.at());
    }
    for (Mold mold : shop.molds()) {
      List<PressFit> fits = shop.presses().fits(mold, Optional.empty(), 0);
      if (fits.stream().noneMatch(PressFit::fits)) {
        List<String> reasons =
            fits.stream().map(fit -> fit.press().press() + " " + fit.objection()).toList();
        At at = places.getOrDefault(mold.id(), new At(InputFile.MOLDS.fileName(), 0));
        notes.warning(
            at, "runs_on", "no press takes mold " + mold.id() + ": " + Words.few(reasons, SHOWN));
      }
    }
  }

  /** A component that is counted and of which nothing usable is there or on the way. */
  private void withoutStock(List<Job> jobs) {
    Set<String> usable = new HashSet<>();
    Map<String, At> places = new HashMap<>();
    folder.materials().inserts().forEach(row -> places.put(row.insert(), row.at()));
    for (LotRow lot : folder.materials().lots()) {
      places.putIfAbsent(lot.what(), lot.at());
      if (lot.onHand().count() > 0 && lot.status() == LotStatus.USABLE) {
        usable.add(lot.what());
      }
    }
    folder.materials().receipts().forEach(receipt -> usable.add(receipt.what()));
    Map<String, Integer> lines = new TreeMap<>();
    Map<String, Component> kinds = new HashMap<>();
    for (Job job : jobs) {
      Map<String, Component> taken = new LinkedHashMap<>();
      job.options().stream()
          .flatMap(option -> option.making().takes().stream())
          .filter(take -> counted(take, places) && !usable.contains(take.insert()))
          .forEach(take -> taken.put(take.insert(), take.component()));
      taken.keySet().forEach(what -> lines.merge(what, 1, Integer::sum));
      kinds.putAll(taken);
    }
    lines.forEach(
        (what, count) ->
            notes.warning(
                places.getOrDefault(what, new At(InputFile.INSERTS.fileName(), 0)),
                "insert",
                "%s %s has no usable lot and no receipt; order lines that need it: %d"
                    .formatted(kinds.getOrDefault(what, Component.INSERT).word(), what, count)));
  }

  private boolean counted(Take take, Map<String, At> places) {
    return take.component() == Component.INSERT
        ? folder.has(InputFile.LOTS)
        : places.containsKey(take.insert());
  }

  /** Pieces reserved for an order that is not there are of use to nobody. */
  private void reservations(List<Job> jobs) {
    Set<String> orders = new HashSet<>();
    jobs.forEach(job -> orders.add(job.id()));
    folder
        .demand()
        .orders()
        .forEach(
            order -> {
              orders.add(order.order());
              orders.add(order.id());
            });
    folder.demand().faulty().forEach(order -> orders.add(order.order()));
    folder.demand().stock().forEach(row -> reservation(row.at(), row.reservedFor(), orders));
    LotChecks lots = new LotChecks(shop.clock(), notes);
    for (LotRow row : folder.materials().lots()) {
      lots.check(row);
      reservation(row.at(), row.reservedFor(), orders);
    }
  }

  private void reservation(At at, String order, Set<String> orders) {
    if (!order.isEmpty() && !orders.contains(order)) {
      notes.warning(
          at, "reserved_for", "reserved for order \"" + order + "\", which is not in orders.csv");
    }
  }

  private void records() {
    Set<String> known =
        folder.materials().inserts().stream().map(InsertRow::insert).collect(Collectors.toSet());
    folder
        .materials()
        .resins()
        .forEach(
            row -> {
              known.add(row.resin());
              known.add(row.grade());
            });
    folder.materials().colours().forEach(row -> known.add(row.colour()));
    folder.materials().inserts().forEach(row -> known.add(row.tip()));
    folder.materials().bom().forEach(row -> known.add(row.component()));
    for (RecordRow row : folder.materials().records()) {
      String what = row.what();
      boolean found = known.contains(what) || known.contains(what.substring(what.indexOf(':') + 1));
      if (folder.has(InputFile.RESINS) && folder.has(InputFile.COLOURS) && !found) {
        notes.warning(
            row.at(),
            "what",
            "\""
                + what
                + "\" is no resin, grade, colour, insert or tip of the plant; the record serves nothing");
      }
    }
  }
}
