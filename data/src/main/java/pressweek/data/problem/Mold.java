package pressweek.data.problem;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A mold: one steel body, in one place at a time. A second copy has its own id.
 *
 * @param id mold number
 * @param use what it makes
 * @param cavities cavities, weights and areas
 * @param body its outside
 * @param runsOn the plant's record of presses
 * @param change what changing it takes
 * @param cycleS mold cycle in seconds without hand loading; empty when only standards.csv knows
 * @param handLoad true when inserts are loaded by hand
 */
public record Mold(
    String id,
    Use use,
    Cavities cavities,
    Body body,
    RunsOn runsOn,
    MoldChange change,
    OptionalDouble cycleS,
    boolean handLoad) {
  /**
   * What a mold makes.
   *
   * @param makes head symbols or whole item codes
   * @param hub hub of its heads; empty for any
   * @param insertKinds insert kinds that it takes; empty for any
   * @param threads threads that it takes; empty for any
   * @param toolingByThread tooling set for a thread; a thread without one needs none
   */
  public record Use(
      List<String> makes,
      Optional<Hub> hub,
      List<String> insertKinds,
      List<String> threads,
      Map<String, String> toolingByThread) {
    public Use {
      makes = List.copyOf(makes);
      insertKinds = List.copyOf(insertKinds);
      threads = List.copyOf(threads);
      toolingByThread = Map.copyOf(toolingByThread);
    }
  }

  /**
   * Cavities built and live; grams of plastic per part and in the runner; projected areas in cm2;
   * the thickest wall in mm.
   */
  public record Cavities(
      int built,
      int live,
      OptionalDouble partG,
      OptionalDouble runnerG,
      OptionalDouble partAreaCm2,
      OptionalDouble runnerAreaCm2,
      OptionalDouble wallMm) {}

  /**
   * The outside: orientation it is built for, size in mm, opening it needs in mm, weight in kg,
   * place where it is stored.
   */
  public record Body(
      Optional<Orientation> orientation,
      OptionalDouble lengthMm,
      OptionalDouble widthMm,
      OptionalDouble heightMm,
      OptionalDouble openingMm,
      OptionalDouble weightKg,
      String place) {}

  /**
   * The plant's record of presses: proven, allowed and never by press id, and the one it likes
   * best.
   */
  public record RunsOn(
      List<String> proven, List<String> allowed, List<String> never, Optional<String> preferred) {
    public RunsOn {
      proven = List.copyOf(proven);
      allowed = List.copyOf(allowed);
      never = List.copyOf(never);
    }
  }

  /**
   * What changing a mold takes.
   *
   * @param changeMin minutes to take it off and put it on; empty for the plant's figure
   * @param dummyPlugs true when start-up shots run with plugs in place of inserts
   * @param availableFromMin first minute when it is in the house, minutes since 1970 UTC; empty for
   *     now
   */
  public record MoldChange(
      OptionalInt changeMin, boolean dummyPlugs, OptionalInt availableFromMin) {}
}
