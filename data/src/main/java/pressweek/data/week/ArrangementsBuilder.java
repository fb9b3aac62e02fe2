package pressweek.data.week;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.DowntimeRow;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.MoldRow;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Option;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Trial;

/** What a plant has arranged beside presses, molds and ordinary shifts. */
final class ArrangementsBuilder {
  private final Folder folder;
  private final Shop shop;
  private final Services services;
  private final boolean counted;
  private final Map<String, MoldRow> molds = new HashMap<>();
  private final Set<String> dried = new HashSet<>();

  ArrangementsBuilder(Folder folder, Shop shop) {
    this.folder = folder;
    this.shop = shop;
    this.services = new Services(folder.plant().service());
    this.counted = folder.has(InputFile.TOOLING);
    folder.floor().molds().forEach(row -> molds.put(row.mold(), row));
    PreparationBuilder.dryers(folder).forEach(dryer -> dried.addAll(dryer.presses()));
  }

  /** What is arranged for these jobs, of which some build on others. */
  Arrangements build(List<Job> jobs, List<Link> links, List<Setup> barrels) {
    return new Arrangements(
        folder.arranged().tooling().stream()
            .map(row -> new CountedThing(row.tooling(), row.count()))
            .toList(),
        devices(),
        services.of(folder.floor().molds()),
        trials(),
        links,
        shop.families().surplus(jobs),
        folder.plant().hours().opening(),
        new Arrangements.Settled(
            shop.dryingPlanned() ? new DryingBuilder(folder).build(jobs, barrels) : Drying.NONE,
            folder.plant().terms()));
  }

  private List<DeviceNeed> devices() {
    return counted
        ? folder.floor().molds().stream()
            .flatMap(row -> row.devices().stream().map(d -> new DeviceNeed(row.mold(), d)))
            .toList()
        : List.of();
  }

  private List<Trial> trials() {
    PlantClock clock = shop.clock();
    return folder.floor().downtime().stream()
        .filter(DowntimeRow::trial)
        .map(
            row ->
                new Trial(
                    row.what(),
                    row.mold(),
                    clock.minute(row.from()),
                    clock.minute(row.to()),
                    row.setters(),
                    row.reason(),
                    OptionalInt.empty()))
        .toList();
  }

  /** What of the arrangements is not checked for a job. */
  Set<Gap> gaps(Job job) {
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    List<MoldRow> rows =
        job.options().stream()
            .map(Option::mold)
            .distinct()
            .flatMap(mold -> java.util.stream.Stream.ofNullable(molds.get(mold)))
            .toList();
    if (!counted && rows.stream().anyMatch(row -> !row.devices().isEmpty())) {
      gaps.add(Gap.DEVICES);
    }
    if (rows.stream().anyMatch(services::unknown)) {
      gaps.add(Gap.SERVICE);
    }
    boolean toDry = shop.resin(job.resin()).filter(row -> row.dryH().orElse(0) > 0).isPresent();
    if (toDry && shop.dryingPlanned() && !dried.containsAll(presses(job))) {
      gaps.add(Gap.UNDRIED);
    }
    return gaps;
  }

  private static Set<String> presses(Job job) {
    return job.options().stream().map(Option::press).collect(Collectors.toSet());
  }

  /** Adds what is wrong or should be known of the arrangements. */
  void check(Notes notes) {
    services.check(folder.floor().molds(), notes);
    shop.families().check(notes);
    shop.stages().check(notes);
  }
}
