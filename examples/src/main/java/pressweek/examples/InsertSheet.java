package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws insert parts: {@code I0001,stud,M6x1,25,5.8,zinc,trivalent,3.5}. Inch and metric threads
 * that look alike are among them.
 */
final class InsertSheet {
  static final List<String> KINDS = List.of("stud", "blind", "through");

  private static final List<String> THREADS =
      List.of(
          "M6x1",
          "1/4-20 UNC",
          "M8x1.25",
          "5/16-18 UNC",
          "M10x1.5",
          "3/8-16 UNC",
          "M5x0.8",
          "M12x1.75");
  private static final List<String> MATERIALS = List.of("5.8", "A2", "5.8", "brass");

  private InsertSheet() {}

  static List<DrawnInsert> draw(Draw draw, PlantSize size) {
    List<DrawnInsert> inserts = new ArrayList<>();
    for (int i = 0; i < size.inserts(); i++) {
      String kind = KINDS.get(i % 3);
      inserts.add(
          new DrawnInsert(
              String.format(Locale.ROOT, "I%04d", i + 1),
              kind,
              THREADS.get(draw.below(THREADS.size())),
              kind.equals("stud") ? 5 * draw.between(3, 12) : 0,
              MATERIALS.get(i / 3 % 4),
              draw.between(20, 60)));
    }
    return List.copyOf(inserts);
  }

  static String csv(List<DrawnInsert> inserts) {
    Sheet sheet =
        new Sheet(
            "insert", "kind", "thread", "length_mm", "material", "finish", "passivation", "load_s");
    for (DrawnInsert i : inserts) {
      boolean steel = i.material().equals("5.8");
      sheet.row(
          i.id(),
          i.kind(),
          i.thread(),
          i.lengthMm() == 0 ? "" : i.lengthMm(),
          i.material(),
          steel ? "zinc" : "",
          steel ? "trivalent" : "none",
          Sheet.tenths(i.loadTenths()));
    }
    return sheet.text();
  }
}
