package pressweek.data.working;

import java.util.List;

/**
 * The working of a run of one item in one mold on one press.
 *
 * @param title which run
 * @param sections its parts
 */
public record Working(String title, List<Section> sections) {
  public Working {
    sections = List.copyOf(sections);
  }
}
