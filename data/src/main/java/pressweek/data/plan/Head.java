package pressweek.data.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Who a plan is.
 *
 * @param number plan number, for example {@code 2026-W49/3}
 * @param replaces number of the plan that it replaces; empty for none
 * @param madeMin when it was made, minutes since 1970 UTC
 * @param inputs SHA-256 of every input file, hexadecimal, by file name
 * @param settings how it was searched for
 * @param references what simple ways of planning would give
 * @param stopped true when the search was interrupted
 * @param whole what the plan decides for the plant as a whole; empty in older plans
 */
public record Head(
    String number,
    String replaces,
    int madeMin,
    Map<String, String> inputs,
    Settings settings,
    List<Reference> references,
    boolean stopped,
    Optional<PlantWide> whole) {
  public Head {
    inputs = Map.copyOf(inputs);
    references = List.copyOf(references);
  }

  /** A plan that decides nothing for the plant as a whole. */
  public Head(
      String number,
      String replaces,
      int madeMin,
      Map<String, String> inputs,
      Settings settings,
      List<Reference> references,
      boolean stopped) {
    this(number, replaces, madeMin, inputs, settings, references, stopped, Optional.empty());
  }

  /** What the plan decides for the plant as a whole; nothing in older plans. */
  public PlantWide plantWide() {
    return whole.orElse(PlantWide.NONE);
  }
}
