package pressweek.reports.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.markup.Element;

/** How far each press is used on each day, a bar a scenario in each cell. */
final class LoadPicture {
  private static final double LABELS = 60;
  private static final double CELL = 104;
  private static final double FULL = 92;
  private static final double BAR = 6;
  private static final double PERCENT = 100;

  private final List<Tried> tried;
  private final List<Map<String, Load>> loads = new ArrayList<>();
  private final TreeSet<String> days = new TreeSet<>();
  private final List<String> presses = new ArrayList<>();

  private LoadPicture(List<Tried> tried) {
    this.tried = tried;
    for (Tried each : tried) {
      Map<String, Load> byCell = new LinkedHashMap<>();
      each.best()
          .ifPresent(
              p -> p.figures().loads().days().forEach(l -> byCell.put(l.of() + " " + l.when(), l)));
      for (Load load : byCell.values()) {
        days.add(load.when());
        if (!presses.contains(load.of())) {
          presses.add(load.of());
        }
      }
      loads.add(byCell);
    }
    days.removeIf(
        d -> loads.stream().noneMatch(m -> m.values().stream().anyMatch(l -> isBusy(l, d))));
  }

  private static boolean isBusy(Load load, String day) {
    return load.when().equals(day) && load.busyMin() > 0;
  }

  static Element of(List<Tried> tried) {
    return new LoadPicture(tried).element();
  }

  private Element element() {
    double row = BAR * tried.size() + 8;
    double width = LABELS + days.size() * CELL;
    double height = BarTable.HEAD + presses.size() * row + 2;
    Element svg = BarTable.svg(width, height, "Load of each press by day");
    int column = 0;
    for (String day : days) {
      String name = PlantClock.dayName(LocalDate.parse(day));
      svg.add(BarTable.text("dayname", LABELS + column++ * CELL, 15, name));
    }
    for (int i = 0; i < presses.size(); i++) {
      double y = BarTable.HEAD + i * row;
      svg.add(BarTable.rule(y, width));
      svg.add(BarTable.text("press", 0, y + row / 2 + 5, presses.get(i)));
      int at = 0;
      for (String day : days) {
        svg.add(cell(presses.get(i), day, LABELS + at++ * CELL, y + 4));
      }
    }
    return svg.add(BarTable.rule(height - 1, width));
  }

  private Element cell(String press, String day, double x, double y) {
    Element group = Element.of("g");
    List<String> words = new ArrayList<>();
    boolean frame = false;
    for (int i = 0; i < tried.size(); i++) {
      Load load = loads.get(i).get(press + " " + day);
      double top = y + i * BAR;
      if (load == null || load.busyMin() == 0) {
        words.add(tried.get(i).name() + ": not working");
        group.add(BarTable.text("tiny muted", x, top + 6, "\u2013"));
        continue;
      }
      frame = true;
      words.add(String.format(Locale.ROOT, "%s: %.0f %%", tried.get(i).name(), load.percent()));
      double length = FULL * Math.min(PERCENT, load.percent()) / PERCENT;
      group.add(BarTable.bar(i == 0, x, top + 0.5, length, BAR - 1.5));
    }
    group.add(BarTable.title(press + " " + day + ". " + String.join(", ", words)));
    if (frame) {
      group.add(
          Element.of("path", "tick")
              .attr(
                  "d",
                  String.format(
                      Locale.ROOT, "M%.1f %.1fV%.1f", x + FULL, y, y + tried.size() * BAR)));
    }
    return group;
  }
}
