package pressweek.data.files;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.problem.Break;
import pressweek.data.problem.Shift;

/** Checks that the breaks of a shift lie within it, one after the other. */
final class BreakCheck {
  private final JsonFields.Notes notes;
  private final int line;

  /**
   * A check.
   *
   * @param line line of the shift
   */
  BreakCheck(JsonFields.Notes notes, int line) {
    this.notes = notes;
    this.line = line;
  }

  /** A span in minutes from the beginning of the shift. */
  private record Span(int from, int to, Break source) {}

  /** Adds an error for each break that is not within the shift or runs into another. */
  void check(Shift shift) {
    List<Span> spans = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      int from = minutes(shift.from(), pause.from());
      int end = minutes(shift.from(), pause.to());
      int to = end == 0 ? PlantReader.DAY_MIN : end;
      if (from >= to || to > length(shift)) {
        error(
            shift,
            "break "
                + words(pause)
                + " is not within the shift, "
                + shift.from()
                + "-"
                + shift.to(),
            "a break within it");
      } else {
        spans.add(new Span(from, to, pause));
      }
    }
    spans.sort(Comparator.comparingInt(Span::from));
    for (int i = 1; i < spans.size(); i++) {
      if (spans.get(i).from() < spans.get(i - 1).to()) {
        String both = words(spans.get(i - 1).source()) + " and " + words(spans.get(i).source());
        error(shift, "breaks " + both + " overlap", "one after the other");
      }
    }
  }

  private void error(Shift shift, String seen, String expected) {
    notes.error(
        line,
        "shifts.breaks",
        "shift \"" + shift.name() + "\": " + seen + "; expected " + expected);
  }

  private static String words(Break pause) {
    return pause.from() + "-" + pause.to();
  }

  /** Minutes from one time of day to the next time that the clock shows the other. */
  private static int minutes(LocalTime from, LocalTime to) {
    return Math.floorMod((to.toSecondOfDay() - from.toSecondOfDay()) / 60, PlantReader.DAY_MIN);
  }

  /** Minutes of a shift; one that ends when it begins is a day long. */
  static int length(Shift shift) {
    int minutes = minutes(shift.from(), shift.to());
    return minutes == 0 ? PlantReader.DAY_MIN : minutes;
  }
}
