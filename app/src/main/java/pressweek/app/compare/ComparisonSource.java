package pressweek.app.compare;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a comparison was made of, and for whom.
 *
 * @param by who asked for it
 * @param inputs SHA-256 of the folder's files by name
 * @param scenarios the scenarios
 */
public record ComparisonSource(
    String by, SortedMap<String, String> inputs, List<Scenario> scenarios) {
  public ComparisonSource {
    inputs = new TreeMap<>(inputs);
    scenarios = List.copyOf(scenarios);
  }

  /**
   * A scenario that was compared.
   *
   * @param id where it is kept
   * @param name its name
   * @param sha256 SHA-256 of its text
   */
  public record Scenario(String id, String name, String sha256) {}
}
