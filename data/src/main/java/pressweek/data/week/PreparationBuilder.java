package pressweek.data.week;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pressweek.data.files.DryerRow;
import pressweek.data.files.Folder;
import pressweek.data.files.PressRow;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Masterbatch;
import pressweek.data.problem.Preparation;

/** How the plant gets plastic ready: its rows of resins, colours and dryers. */
final class PreparationBuilder {
  private PreparationBuilder() {}

  static Preparation build(Folder folder) {
    return new Preparation(
        folder.materials().resins().stream()
            .map(r -> new Granules(r.resin(), r.dryH(), r.dryC(), r.dryMaxH(), r.bulkKgL()))
            .toList(),
        folder.materials().colours().stream()
            .map(c -> new Masterbatch(c.resin(), c.colour(), c.masterbatch(), c.letDownPct()))
            .toList(),
        dryers(folder),
        folder.plant().heat().coldStartH());
  }

  /** Those of dryers.csv, then those that only a press names. */
  static List<Dryer> dryers(Folder folder) {
    Map<String, OptionalDouble> hoppers = new LinkedHashMap<>();
    Map<String, List<String>> presses = new LinkedHashMap<>();
    for (DryerRow row : folder.floor().dryers()) {
      hoppers.put(row.dryer(), OptionalDouble.of(row.hopperL()));
      presses.computeIfAbsent(row.dryer(), d -> new ArrayList<>()).addAll(row.feeds());
    }
    for (PressRow row : folder.floor().presses()) {
      for (String dryer : row.dryers()) {
        List<String> fed = presses.computeIfAbsent(dryer, d -> new ArrayList<>());
        if (!fed.contains(row.press())) {
          fed.add(row.press());
        }
      }
    }
    List<Dryer> dryers = new ArrayList<>();
    presses.forEach(
        (id, fed) ->
            dryers.add(new Dryer(id, hoppers.getOrDefault(id, OptionalDouble.empty()), fed)));
    return dryers;
  }
}
