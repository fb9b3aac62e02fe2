package pressweek.examples;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Draws how the floor stands: runs under way, molds that hang idle, presses and molds that are
 * away, and what has been promised for Monday morning. A mold is in one place only, and one that is
 * away hangs nowhere.
 */
final class FloorSheet {
  private final Draw draw;
  private final List<DrawnLine> lines;
  private final Set<String> takenLines = new HashSet<>();
  private final Set<String> takenMolds = new HashSet<>();
  private final Set<String> filledPresses = new HashSet<>();
  private final Sheet running =
      new Sheet(
          "press",
          "order",
          "line",
          "mold",
          "tooling",
          "resin",
          "colour",
          "cleared_for_food",
          "good_made");
  private final Sheet promised = new Sheet("order", "line", "press", "start");
  private final Sheet downtime = new Sheet("what", "from", "to", "reason");

  FloorSheet(Draw draw, List<DrawnLine> lines) {
    this.draw = draw;
    this.lines = lines.stream().sorted(Comparator.comparingInt(DrawnLine::workday)).toList();
  }

  /** The files by name. Promised runs take no insert of which a part is still on the way. */
  Map<String, String> files(
      List<DrawnPress> presses, List<DrawnHead> heads, Set<String> scarceInserts) {
    away(presses, heads);
    presses.forEach(this::state);
    int promises = Math.max(1, presses.size() / 10);
    for (DrawnPress press : presses) {
      if (promises > 0 && promise(press, scarceInserts)) {
        promises--;
      }
    }
    Map<String, String> files = new LinkedHashMap<>();
    files.put("running.csv", running.text());
    files.put("promised.csv", promised.text());
    files.put("downtime.csv", downtime.text());
    return files;
  }

  private void away(List<DrawnPress> presses, List<DrawnHead> heads) {
    LocalDate thursday = PlantSize.START.plusDays(3);
    for (DrawnPress press : draw.some(presses, presses.size() / 12)) {
      downtime.row(press.id(), thursday + "T06:00", thursday + "T22:00", "hydraulic pump");
    }
    for (DrawnHead head : draw.some(heads, heads.size() / 18)) {
      String mold = head.copies().get(0);
      takenMolds.add(mold);
      downtime.row(
          mold,
          PlantSize.START.minusDays(3) + "T08:00",
          PlantSize.START.plusDays(2) + "T12:00",
          "repair");
    }
  }

  /** Of a hundred presses 40 are running, 30 hold a mold, 30 stand empty. */
  private void state(DrawnPress press) {
    int kind = draw.below(100);
    if (kind >= 70) {
      return;
    }
    Optional<DrawnLine> line = lines.stream().filter(l -> fits(l, press)).findFirst();
    if (line.isPresent()) {
      filledPresses.add(press.id());
      hang(press, line.get(), kind < 40);
    }
  }

  private boolean fits(DrawnLine line, DrawnPress press) {
    return line.presses().contains(press)
        && !takenLines.contains(line.id())
        && freeMold(line).isPresent();
  }

  private Optional<String> freeMold(DrawnLine line) {
    return line.head().copies().stream().filter(m -> !takenMolds.contains(m)).findFirst();
  }

  private void hang(DrawnPress press, DrawnLine line, boolean runs) {
    String mold = freeMold(line).orElseThrow();
    takenMolds.add(mold);
    if (runs) {
      takenLines.add(line.id());
    }
    boolean cleared = line.food() || press.foodOnly();
    running.row(
        press.id(),
        runs ? line.order() : "",
        runs ? line.line() : "",
        mold,
        line.insert().map(i -> line.head().tooling(i.thread())).orElse(""),
        line.resin(),
        line.colour(),
        cleared ? "yes" : "no",
        runs ? line.quantity() * draw.between(20, 70) / 100 : "");
  }

  /**
   * Promises the press a line for Monday at nine, if there is one that nothing can be in the way
   * of.
   */
  private boolean promise(DrawnPress press, Set<String> scarceInserts) {
    if (filledPresses.contains(press.id())) {
      return false;
    }
    Optional<DrawnLine> line =
        lines.stream()
            .filter(l -> !l.food() && l.workday() < 2 && fits(l, press))
            .filter(l -> l.insert().map(i -> !scarceInserts.contains(i.id())).orElse(true))
            .findFirst();
    line.ifPresent(
        l -> {
          takenLines.add(l.id());
          takenMolds.addAll(l.head().copies());
          promised.row(l.order(), l.line(), press.id(), PlantSize.START + "T09:00");
        });
    return line.isPresent();
  }
}
