package pressweek.data.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pressweek.data.problem.Mold;

/**
 * A row of {@code molds.csv}: a mold.
 *
 * @param at where it stands
 * @param mold mold number
 * @param use what it makes
 * @param cavities cavities, weights and areas
 * @param body its outside
 * @param runsOn the plant's record of presses; the preferred press is among the proven ones
 * @param cycleS mold cycle in seconds, hand loading not counted; empty when only {@code
 *     standards.csv} knows
 * @param handLoad true when inserts are loaded by hand
 * @param dummyPlugs true when start-up shots run with plugs in place of inserts
 * @param changeMin minutes to take it off and put it on; empty for the plant's figure
 * @param availableFrom when it is in the house; empty for now
 * @param owner whose it is; may be empty
 * @param service when it is to be serviced
 * @param devices devices that it needs, each once
 */
public record MoldRow(
    At at,
    String mold,
    Mold.Use use,
    Mold.Cavities cavities,
    Mold.Body body,
    Mold.RunsOn runsOn,
    OptionalDouble cycleS,
    boolean handLoad,
    boolean dummyPlugs,
    OptionalInt changeMin,
    Optional<When> availableFrom,
    String owner,
    Service service,
    List<String> devices) {
  public MoldRow {
    devices = List.copyOf(devices);
  }

  /**
   * When a mold is to be serviced.
   *
   * @param shotsToService shots until it needs service, 0 or less when it is due; empty when not
   *     known
   * @param shotsBetween shots between two services; empty for the plant's figure
   * @param minutes minutes that a service takes; empty for the plant's figure
   */
  public record Service(
      OptionalInt shotsToService, OptionalInt shotsBetween, OptionalInt minutes) {}
}
