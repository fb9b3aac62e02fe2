package pressweek.data.week;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pressweek.data.files.MoldRow;
import pressweek.data.files.PlantRow;
import pressweek.data.problem.MoldService;

/** When molds are to be serviced: by their own rows, else by the plant's figures. */
final class Services {
  private final PlantRow.Service plant;

  Services(PlantRow.Service plant) {
    this.plant = plant;
  }

  /** The services of molds that have any. */
  List<MoldService> of(List<MoldRow> molds) {
    return molds.stream().flatMap(row -> of(row).stream()).toList();
  }

  /** The service of a mold; empty when it has none, or the shots between two are not known. */
  Optional<MoldService> of(MoldRow row) {
    MoldRow.Service own = row.service();
    OptionalInt between = own.shotsBetween();
    if (between.isEmpty() && own.shotsToService().isPresent() && plant.shotsBetween() > 0) {
      between = OptionalInt.of(plant.shotsBetween());
    }
    if (between.isEmpty()) {
      return Optional.empty();
    }
    int shots = between.getAsInt();
    return Optional.of(
        new MoldService(
            row.mold(),
            own.shotsToService().orElse(shots),
            shots,
            own.minutes().orElse(plant.minutes())));
  }

  /** True when a mold is known to need service, and not how often. */
  boolean unknown(MoldRow row) {
    return row.service().shotsToService().isPresent() && of(row).isEmpty();
  }

  /** Adds notes on molds that are past their service, or count as fresh from it. */
  void check(List<MoldRow> molds, Notes notes) {
    for (MoldRow row : molds) {
      Optional<MoldService> service = of(row);
      if (service.isEmpty()) {
        continue;
      }
      int left = service.get().shotsLeft();
      if (row.service().shotsToService().isEmpty()) {
        notes.warning(
            row.at(),
            "shots_to_service",
            "mold %s has no shots_to_service; it counts as serviced when the plan starts"
                .formatted(row.mold()));
      } else if (left <= 0) {
        notes.warning(
            row.at(),
            "shots_to_service",
            "mold %s is due for service (%d shots left); its service comes before its next run"
                .formatted(row.mold(), left));
      }
    }
  }
}
