package pressweek.examples;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Draws lots, receipts and declarations: enough of every insert for all lines, in two lots, though
 * of one insert in eight a part comes only on Tuesday, and lots that are held, reserved or about to
 * expire lie among the others. Where cartons, labels, resins and masterbatches are counted as well,
 * a lot of one in eight expires on Wednesday.
 */
final class StockSheet {
  private static final LocalDate OLD = PlantSize.START.minusDays(40);
  private static final LocalDate NEW = PlantSize.START.minusDays(12);

  private final Draw draw;
  private final Sheet lots =
      new Sheet(
          "what",
          "lot",
          "bin",
          "on_hand",
          "weight_kg",
          "received",
          "expires",
          "status",
          "reserved_for");
  private final Sheet receipts =
      new Sheet("what", "quantity", "weight_kg", "expected", "inspect_h");
  private final Set<String> scarce = new LinkedHashSet<>();
  private int lot;

  StockSheet(Draw draw, List<DrawnLine> lines) {
    this.draw = draw;
    Map<String, Integer> needs = new TreeMap<>();
    for (DrawnLine line : lines) {
      line.insert().ifPresent(i -> needs.merge(i.id(), line.insertPieces(), Integer::sum));
    }
    needs.forEach(this::stock);
    for (int i = 17; i < lines.size(); i += 40) {
      reserve(lines.get(i));
    }
  }

  private void stock(String insert, int need) {
    int kind = draw.below(8);
    boolean late = kind == 0;
    int first = need * (late ? 30 : 60) / 100;
    lot(insert, first, OLD, "usable", "");
    if (late) {
      scarce.add(insert);
      receipts.row(insert, need, "", PlantSize.START.plusDays(1) + "T10:00", 4);
    } else {
      lot(insert, need * 55 / 100, NEW, "usable", "");
    }
    if (kind == 1) {
      lot(insert, need / 3 + 50, NEW, "held", "");
    }
  }

  private void reserve(DrawnLine line) {
    line.insert().ifPresent(i -> lot(i.id(), line.insertPieces(), NEW, "usable", line.id()));
  }

  private void lot(
      String insert, int pieces, LocalDate received, String status, String reservedFor) {
    lot++;
    Object expires = draw.chance(8) ? PlantSize.START.plusYears(1) : "";
    String bin =
        String.format(
            Locale.ROOT, "%c%02d-%d", 'A' + draw.below(6), draw.between(1, 20), draw.between(1, 4));
    lots.row(
        insert,
        String.format(Locale.ROOT, "L%05d", lot),
        bin,
        pieces,
        "",
        received,
        expires,
        status,
        reservedFor);
  }

  /** Adds cartons, labels, resins and masterbatches: so much of each for all lines. */
  void add(ComponentSheet components) {
    components.pieces().forEach((what, need) -> component(what, need, false));
    components.kilograms().forEach((what, need) -> component(what, need, true));
  }

  /** Two lots and now and then a delivery, together more than what is needed. */
  private void component(String what, int need, boolean weighed) {
    boolean expires = draw.chance(12);
    LocalDate wednesday = PlantSize.START.plusDays(2);
    amount(what, need * 6 / 10 + 1, weighed, expires ? wednesday : "");
    if (draw.chance(25)) {
      String arrives = PlantSize.START.plusDays(1) + "T08:00";
      receipts.row(what, weighed ? "" : need, weighed ? need : "", arrives, 1);
    }
    amount(what, need * (expires ? 11 : 6) / 10 + 1, weighed, "");
  }

  private void amount(String what, int amount, boolean weighed, Object expires) {
    lot++;
    String bin = String.format(Locale.ROOT, "S%02d", draw.between(1, 40));
    String id = String.format(Locale.ROOT, "L%05d", lot);
    lots.row(
        what, id, bin, weighed ? "" : amount, weighed ? amount : "", NEW, expires, "usable", "");
  }

  /** Inserts of which a part comes only on Tuesday. */
  Set<String> scarce() {
    return scarce;
  }

  /** The files by name. */
  Map<String, String> files(List<DrawnInsert> inserts) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("lots.csv", lots.text());
    files.put("receipts.csv", receipts.text());
    files.put("records.csv", records(inserts));
    return files;
  }

  private static String records(List<DrawnInsert> inserts) {
    Sheet sheet = new Sheet("what", "for", "date", "certificate");
    ResinSheet.foodResins().forEach(r -> sheet.row(r, "food", OLD, "letter of the maker"));
    ResinSheet.FOOD_COLOURS.forEach(c -> sheet.row(c, "food", OLD, "letter of the maker"));
    inserts.stream()
        .filter(DrawnInsert::food)
        .forEach(i -> sheet.row(i.id(), "food", OLD, "letter of the maker"));
    return sheet.text();
  }
}
