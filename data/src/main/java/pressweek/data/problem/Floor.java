package pressweek.data.problem;

import java.util.List;

/**
 * Presses and molds and how they stand.
 *
 * @param presses presses in the plant's order
 * @param molds molds
 * @param states presses as they stand; a press without one is empty, cleared for nothing
 * @param downtime presses and molds away
 * @param promises runs promised to the floor
 * @param recordedChanges changes that beat the change table, first match first
 */
public record Floor(
    List<Press> presses,
    List<Mold> molds,
    List<PressState> states,
    List<Downtime> downtime,
    List<Promise> promises,
    List<RecordedChange> recordedChanges) {
  public Floor {
    presses = List.copyOf(presses);
    molds = List.copyOf(molds);
    states = List.copyOf(states);
    downtime = List.copyOf(downtime);
    promises = List.copyOf(promises);
    recordedChanges = List.copyOf(recordedChanges);
  }

  /** The same floor with other promises. */
  public Floor withPromises(List<Promise> others) {
    return new Floor(presses, molds, states, downtime, others, recordedChanges);
  }
}
