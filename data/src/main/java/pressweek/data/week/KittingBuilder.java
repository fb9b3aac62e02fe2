package pressweek.data.week;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.Folder;
import pressweek.data.files.LotRow;
import pressweek.data.files.RecordRow;
import pressweek.data.problem.Declaration;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotPaper;
import pressweek.data.problem.NamedPair;
import pressweek.data.problem.Recipe;
import pressweek.data.problem.Take;

/** What kits and their papers need to know of a plant's folder. */
final class KittingBuilder {
  private final Folder folder;
  private final Shop shop;

  KittingBuilder(Folder folder, Shop shop) {
    this.folder = folder;
    this.shop = shop;
  }

  /** The declarations of {@code records.csv}. */
  static List<Declaration> declarations(List<RecordRow> rows, PlantClock clock) {
    return rows.stream()
        .map(
            row ->
                new Declaration(
                    row.at().toString(),
                    row.what(),
                    row.need(),
                    row.date().map(when -> day(clock.minute(when), clock)),
                    clock.minute(row.expires()),
                    row.exemption(),
                    row.certificate()))
        .toList();
  }

  private static LocalDate day(int minute, PlantClock clock) {
    return LocalDate.ofInstant(Instant.ofEpochSecond(60L * minute), clock.zone());
  }

  /** What the kits of these jobs need. */
  Kitting build(List<Job> jobs) {
    Folder.MaterialRows rows = folder.materials();
    return new Kitting(
        rows.lookAlikes().stream()
            .map(row -> new NamedPair(row.a(), row.b(), row.reason()))
            .toList(),
        declarations(rows.records(), shop.clock()),
        rows.lots().stream()
            .filter(row -> !row.certificate().isEmpty())
            .map(row -> new LotPaper(row.what(), row.lot(), row.certificate()))
            .toList(),
        shop.tips().all(inserts(jobs), codes(jobs)),
        recipes(),
        resinLots(),
        dryers(),
        folder.plant().bringing());
  }

  private static List<String> inserts(List<Job> jobs) {
    return jobs.stream()
        .flatMap(job -> job.options().stream())
        .flatMap(option -> option.making().takes().stream())
        .map(Take::insert)
        .distinct()
        .toList();
  }

  private static List<String> codes(List<Job> jobs) {
    return jobs.stream().map(job -> job.item().code()).distinct().toList();
  }

  private List<Recipe> recipes() {
    return folder.materials().colours().stream()
        .filter(row -> !row.masterbatch().isEmpty() || row.letDownPct().isPresent())
        .map(row -> new Recipe(row.resin(), row.colour(), row.masterbatch(), row.letDownPct()))
        .toList();
  }

  private List<Lot> resinLots() {
    Set<String> names = new LinkedHashSet<>();
    folder.materials().resins().forEach(row -> names.addAll(List.of(row.resin(), row.grade())));
    folder.materials().colours().forEach(row -> names.add(row.masterbatch()));
    names.remove("");
    return folder.materials().lots().stream()
        .filter(row -> names.contains(row.what()))
        .map(row -> lot(row, shop.clock()))
        .toList();
  }

  /** A row of {@code lots.csv} as a lot. */
  static Lot lot(LotRow row, PlantClock clock) {
    return new Lot(
        row.what(),
        row.lot(),
        row.bin(),
        row.onHand().count(),
        row.received().map(clock::minute).orElse(0),
        clock.minute(row.expires()),
        row.status(),
        row.reservedFor());
  }

  /** The first dryer of each press. */
  private Map<String, String> dryers() {
    Map<String, String> dryers = new LinkedHashMap<>();
    for (Dryer dryer : PreparationBuilder.dryers(folder)) {
      dryer.presses().forEach(press -> dryers.putIfAbsent(press, dryer.id()));
    }
    return dryers;
  }
}
