package pressweek.data.files;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.problem.Shift;

/** Finds shifts that run into each other. */
final class ShiftOverlap {
  private static final int WEEK_MIN = 7 * PlantReader.DAY_MIN;

  private record Span(Shift shift, DayOfWeek day, int from, int to) {}

  private ShiftOverlap() {}

  /** The first two of the shifts that overlap, in words; empty when none do. */
  static Optional<String> in(List<Shift> shifts) {
    List<Span> spans = spans(shifts);
    for (int i = 1; i < spans.size(); i++) {
      if (spans.get(i).from() < spans.get(i - 1).to()) {
        return Optional.of(words(spans.get(i - 1), spans.get(i)));
      }
    }
    return Optional.empty();
  }

  /** The week's shifts in order, with the next week's first day after them. */
  private static List<Span> spans(List<Shift> shifts) {
    List<Span> spans = new ArrayList<>();
    for (Shift shift : shifts) {
      for (DayOfWeek day : shift.days()) {
        int from = day.ordinal() * PlantReader.DAY_MIN + shift.from().toSecondOfDay() / 60;
        int to = from + BreakCheck.length(shift);
        spans.add(new Span(shift, day, from, to));
        if (day == DayOfWeek.MONDAY) {
          spans.add(new Span(shift, day, from + WEEK_MIN, to + WEEK_MIN));
        }
      }
    }
    spans.sort(Comparator.comparingInt(Span::from).thenComparing(s -> s.shift().name()));
    return spans;
  }

  private static String words(Span first, Span second) {
    return String.format(
        Locale.ROOT,
        "shifts \"%s\" (%s %s-%s) and \"%s\" (%s %s-%s) overlap",
        first.shift().name(),
        first.day().name().substring(0, 3),
        first.shift().from(),
        first.shift().to(),
        second.shift().name(),
        second.day().name().substring(0, 3),
        second.shift().from(),
        second.shift().to());
  }
}
