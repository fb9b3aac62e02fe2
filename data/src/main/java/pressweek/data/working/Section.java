package pressweek.data.working;

import java.util.List;

/**
 * A part of a working.
 *
 * @param title what it is about
 * @param lines its lines in the order in which a person reckons
 */
public record Section(String title, List<Line> lines) {
  public Section {
    lines = List.copyOf(lines);
  }
}
