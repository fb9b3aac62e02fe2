package pressweek.examples;

import java.util.List;

/**
 * What the molds of a drawn head have in common.
 *
 * @param presses presses that may run them, smallest first; the first half are proven
 * @param cavities cavities, all of them live
 * @param partTenths tenths of a gram of plastic in a part
 * @param runnerTenths tenths of a gram in the runner
 * @param areaTenths tenths of a cm2 of projected area of a part
 * @param cycleS mold cycle in seconds, hand loading not counted
 * @param handLoad true when inserts are loaded by hand
 * @param changeMin minutes to change it
 */
record DrawnMold(
    List<DrawnPress> presses,
    int cavities,
    int partTenths,
    int runnerTenths,
    int areaTenths,
    int cycleS,
    boolean handLoad,
    int changeMin) {
  DrawnMold {
    presses = List.copyOf(presses);
  }

  /** Presses on which it has run well. */
  List<DrawnPress> proven() {
    return presses.subList(0, (presses.size() + 1) / 2);
  }

  /**
   * Tenths of a second a shot on a press, with an insert that takes so long to load: overlapped
   * where there are two lower halves.
   */
  int cycleTenths(DrawnPress press, int loadTenths) {
    if (!handLoad) {
      return 10 * cycleS;
    }
    int handling = PlantSheet.UNLOAD_S * 10 + cavities * loadTenths;
    return press.lowerHalves() == 1
        ? 10 * cycleS + handling
        : Math.max(10 * cycleS, handling) + PlantSheet.INDEX_S * 10;
  }
}
