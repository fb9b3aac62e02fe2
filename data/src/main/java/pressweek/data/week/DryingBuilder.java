package pressweek.data.week;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.files.ColourRow;
import pressweek.data.files.Folder;
import pressweek.data.files.PlantRow;
import pressweek.data.files.ResinRow;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Job;
import pressweek.data.problem.Setup;

/** Drying as far as the planner counts it. */
final class DryingBuilder {
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);

  private final Folder folder;
  private final Map<String, Integer> minutesByResin = new HashMap<>();

  private record Material(String resin, String colour) {}

  DryingBuilder(Folder folder) {
    this.folder = folder;
    for (ResinRow row : folder.materials().resins()) {
      int minutes =
          BigDecimal.valueOf(row.dryH().orElse(0))
              .multiply(HOUR)
              .setScale(0, RoundingMode.CEILING)
              .intValueExact();
      if (minutes > 0) {
        minutesByResin.put(row.resin(), minutes);
      }
    }
  }

  /** The dryers, and what of the jobs and of the barrels is dried. */
  Drying build(List<Job> jobs, List<Setup> barrels) {
    Map<Material, Drying.Dried> dried = new LinkedHashMap<>();
    Stream.concat(
            jobs.stream().map(job -> new Material(job.resin(), job.colour())),
            barrels.stream().map(setup -> new Material(setup.resin(), setup.colour())))
        .forEach(
            material ->
                Optional.ofNullable(minutesByResin.get(material.resin()))
                    .ifPresent(minutes -> dried.put(material, dried(material, minutes))));
    PlantRow.Heat heat = folder.plant().heat();
    return new Drying(
        PreparationBuilder.dryers(folder).stream()
            .map(dryer -> new Drying.Feed(dryer.id(), dryer.presses()))
            .toList(),
        List.copyOf(dried.values()),
        heat.cleanMin());
  }

  private Drying.Dried dried(Material material, int minutes) {
    String content =
        material.colour().isEmpty() || dosed(material)
            ? material.resin()
            : material.resin() + " " + material.colour();
    return new Drying.Dried(material.resin(), material.colour(), content, minutes);
  }

  /** True when the colour is dosed at the press, so that the dryer holds natural resin. */
  private boolean dosed(Material material) {
    return colour(material)
        .map(row -> row.letDownPct().orElse(row.masterbatch().isEmpty() ? 0 : 1) > 0)
        .orElse(false);
  }

  private Optional<ColourRow> colour(Material material) {
    List<ColourRow> rows =
        folder.materials().colours().stream()
            .filter(row -> row.colour().equals(material.colour()))
            .toList();
    return rows.stream()
        .filter(row -> row.resin().equals(material.resin()))
        .findFirst()
        .or(() -> rows.stream().filter(row -> row.resin().isEmpty()).findFirst());
  }
}
