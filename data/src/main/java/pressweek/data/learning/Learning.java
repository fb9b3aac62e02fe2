package pressweek.data.learning;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import pressweek.data.files.ActualRow;
import pressweek.data.files.At;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.PressRow;
import pressweek.data.files.RecordedChangeRow;
import pressweek.data.files.StandardRow;
import pressweek.data.learning.Proposal.Figure;
import pressweek.data.week.Standards;

/**
 * Compares what runs took with the plant's standards and proposes others. A figure is revised when
 * there are enough runs and it lies outside the interval that they give. Nothing is changed here.
 */
public final class Learning {
  private final Folder folder;
  private final List<ActualRow> rows;
  private final Standards standards;
  private final Map<String, PressRow> presses = new HashMap<>();
  private final Proposing proposing;

  private Learning(Folder folder, List<ActualRow> rows) {
    this.folder = folder;
    this.rows = byDate(rows, folder.plant().hours().zone());
    this.standards = new Standards(folder.floor().standards());
    this.proposing = new Proposing(folder.plant().learnFromRuns());
    folder.floor().presses().forEach(p -> presses.put(p.press(), p));
  }

  /**
   * What past runs say.
   *
   * @param proposals cycles and scrap by standard, then changes, then the plant's efficiency
   * @param standards the rows of {@code standards.csv} with the proposals in them, new ones last
   * @param changes those of {@code changes_recorded.csv}, new ones last
   * @param efficiencyPct the plant's efficiency as proposed; empty where it stays
   */
  public record Learned(
      List<Proposal> proposals,
      List<StandardRow> standards,
      List<RecordedChangeRow> changes,
      OptionalDouble efficiencyPct) {
    public Learned {
      proposals = List.copyOf(proposals);
      standards = List.copyOf(standards);
      changes = List.copyOf(changes);
    }
  }

  /** What runs say of the standards of a folder. */
  public static Learned from(Folder folder, List<ActualRow> rows) {
    return new Learning(folder, rows).learn();
  }

  /** Oldest first; runs without a date count as older, in the order of the file. */
  static List<ActualRow> byDate(List<ActualRow> rows, ZoneId zone) {
    return rows.stream()
        .sorted(
            Comparator.comparingInt(
                row -> row.date().map(d -> d.minute(zone, LocalTime.MIN)).orElse(0)))
        .toList();
  }

  private Learned learn() {
    List<Proposal> proposals = new ArrayList<>();
    List<StandardRow> revised = new ArrayList<>(folder.floor().standards());
    groups(this::standardOf)
        .forEach(
            (row, runs) -> {
              Optional<Proposal> cycle =
                  proposing.propose(
                      Figure.CYCLE,
                      words(row),
                      where(row),
                      row.at().line() == 0
                          ? OptionalDouble.empty()
                          : OptionalDouble.of(row.cycleS()),
                      Proposing.values(runs, r -> r.cycleS().real()));
              Optional<Proposal> scrap =
                  proposing.propose(
                      Figure.SCRAP,
                      words(row),
                      where(row),
                      OptionalDouble.of(row.scrapPct().orElse(folder.plant().run().scrapPct())),
                      Proposing.values(runs, r -> r.scrapPct().real()));
              boolean hasRow = row.at().line() > 0 || cycle.filter(Proposal::changes).isPresent();
              Optional<Proposal> kept = hasRow ? scrap : scrap.map(Proposal::withoutRow);
              cycle.ifPresent(proposals::add);
              kept.ifPresent(proposals::add);
              revise(revised, row, cycle, kept);
            });
    List<RecordedChangeRow> changes =
        new LearnedChanges(folder.floor().recordedChanges(), proposing).learn(rows, proposals);
    Optional<Proposal> efficiency = efficiency();
    efficiency.ifPresent(proposals::add);
    return new Learned(proposals, revised, changes, changed(efficiency));
  }

  private static OptionalDouble changed(Optional<Proposal> proposal) {
    return proposal.filter(Proposal::changes).stream().mapToDouble(Proposal::proposed).findFirst();
  }

  private <K> Map<K, List<ActualRow>> groups(Function<ActualRow, K> key) {
    Map<K, List<ActualRow>> groups = new LinkedHashMap<>();
    rows.forEach(row -> groups.computeIfAbsent(key.apply(row), k -> new ArrayList<>()).add(row));
    return groups;
  }

  /** The standard that a run went by, or the one that there should be. */
  private StandardRow standardOf(ActualRow row) {
    PressRow press = java.util.Objects.requireNonNull(presses.get(row.press()), row.press());
    Optional<StandardRow> found = standards.find(row.to().mold(), row.to().resin(), press);
    OptionalDouble none = OptionalDouble.empty();
    return found.orElseGet(
        () ->
            new StandardRow(
                new At(InputFile.STANDARDS.fileName(), 0),
                row.to().mold(),
                row.to().resin(),
                "",
                0,
                none,
                none,
                none,
                OptionalInt.empty(),
                OptionalInt.empty()));
  }

  private static String words(StandardRow row) {
    return "mold %s, %s, %s"
        .formatted(
            row.mold(),
            row.resin().isEmpty() ? "any resin" : "resin " + row.resin(),
            row.press().isEmpty() ? "any press" : "press " + row.press());
  }

  private static String where(StandardRow row) {
    return row.at().line() == 0 ? "" : row.at().toString();
  }

  private static void revise(
      List<StandardRow> revised,
      StandardRow row,
      Optional<Proposal> cycle,
      Optional<Proposal> scrap) {
    Optional<Proposal> changed = cycle.filter(Proposal::changes);
    Optional<Proposal> scrapped = scrap.filter(Proposal::changes);
    boolean isNew = row.at().line() == 0;
    if (changed.isEmpty() && scrapped.isEmpty()) {
      return;
    }
    StandardRow other =
        new StandardRow(
            row.at(),
            row.mold(),
            row.resin(),
            row.press(),
            changed.map(Proposal::proposed).orElse(row.cycleS()),
            row.loadS(),
            row.cureS(),
            scrapped.isPresent() ? OptionalDouble.of(scrapped.get().proposed()) : row.scrapPct(),
            row.startupShots(),
            row.operatorThousandths());
    if (isNew) {
      revised.add(other);
    } else {
      revised.set(revised.indexOf(row), other);
    }
  }

  private Optional<Proposal> efficiency() {
    return proposing.propose(
        Figure.EFFICIENCY,
        "the plant",
        folder.plant().gave("efficiency_pct")
            ? folder.plant().at("efficiency_pct").toString()
            : InputFile.PLANT.fileName() + " (plant estimate)",
        OptionalDouble.of(folder.plant().efficiencyPct()),
        Proposing.values(rows, ActualRow::efficiencyPct));
  }
}
