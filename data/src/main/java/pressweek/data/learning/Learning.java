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
import pressweek.data.learning.Proposal.Verdict;
import pressweek.data.problem.Setup;
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
  private final int least;

  private Learning(Folder folder, List<ActualRow> rows) {
    this.folder = folder;
    this.rows = byDate(rows, folder.plant().hours().zone());
    this.standards = new Standards(folder.floor().standards());
    this.least = folder.plant().learnFromRuns();
    folder.floor().presses().forEach(p -> presses.put(p.press(), p));
  }

  /**
   * What past runs say.
   *
   * @param proposals cycles and scrap by standard, then changes, then the plant's efficiency
   * @param standards the rows of {@code standards.csv} with the proposals in them
   */
  public record Learned(List<Proposal> proposals, List<StandardRow> standards) {
    public Learned {
      proposals = List.copyOf(proposals);
      standards = List.copyOf(standards);
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
                  propose(
                      Figure.CYCLE,
                      words(row),
                      where(row),
                      row.at().line() == 0
                          ? OptionalDouble.empty()
                          : OptionalDouble.of(row.cycleS()),
                      values(runs, r -> r.cycleS().real()));
              Optional<Proposal> scrap =
                  propose(
                      Figure.SCRAP,
                      words(row),
                      where(row),
                      OptionalDouble.of(row.scrapPct().orElse(folder.plant().run().scrapPct())),
                      values(runs, r -> r.scrapPct().real()));
              cycle.ifPresent(proposals::add);
              scrap.ifPresent(proposals::add);
              revise(revised, row, cycle, scrap);
            });
    changes(proposals);
    efficiency(proposals);
    return new Learned(proposals, revised);
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

  private static double[] values(List<ActualRow> rows, Function<ActualRow, OptionalDouble> value) {
    return rows.stream()
        .map(value)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .toArray();
  }

  private Optional<Proposal> propose(
      Figure figure, String what, String where, OptionalDouble old, double[] values) {
    if (values.length == 0) {
      return Optional.empty();
    }
    Robust found = Robust.of(values);
    Optional<Double> now = old.isPresent() ? Optional.of(old.getAsDouble()) : Optional.empty();
    Proposal proposal =
        new Proposal(figure, what, where, now, found, verdict(found, now, values.length));
    boolean same = now.isPresent() && now.get() == proposal.proposed();
    return Optional.of(
        same && proposal.changes()
            ? new Proposal(figure, what, where, now, found, Verdict.STAYS)
            : proposal);
  }

  private Verdict verdict(Robust found, Optional<Double> old, int runs) {
    if (runs < least) {
      return Verdict.TOO_FEW;
    }
    if (old.isEmpty()) {
      return Verdict.NEW;
    }
    boolean within = found.low() <= old.get() && old.get() <= found.high();
    return within ? Verdict.STAYS : Verdict.REVISED;
  }

  private static void revise(
      List<StandardRow> revised,
      StandardRow row,
      Optional<Proposal> cycle,
      Optional<Proposal> scrap) {
    Optional<Proposal> changed = cycle.filter(Proposal::changes);
    Optional<Proposal> scrapped = scrap.filter(Proposal::changes);
    boolean isNew = row.at().line() == 0;
    if (changed.isEmpty() && (isNew || scrapped.isEmpty())) {
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

  private record Exchange(String press, Setup from, Setup to) {}

  private void changes(List<Proposal> proposals) {
    groups(row -> new Exchange(row.press(), row.from(), row.to()))
        .forEach(
            (change, runs) -> {
              if (change.from().mold().isEmpty()) {
                return;
              }
              Optional<RecordedChangeRow> recorded = recorded(change);
              double[] planned = values(runs, r -> r.changeMin().planned());
              OptionalDouble old =
                  recorded.isPresent()
                      ? OptionalDouble.of(recorded.get().minutes())
                      : planned.length == 0
                          ? OptionalDouble.empty()
                          : OptionalDouble.of(Robust.median(planned));
              propose(
                      Figure.CHANGE,
                      words(change),
                      recorded.map(r -> r.at().toString()).orElse(""),
                      old,
                      values(runs, r -> r.changeMin().real()))
                  .ifPresent(proposals::add);
            });
  }

  private Optional<RecordedChangeRow> recorded(Exchange change) {
    return folder.floor().recordedChanges().stream()
        .filter(r -> r.press().isEmpty() || r.press().equals(change.press()))
        .filter(r -> matches(r.from(), change.from()) && matches(r.to(), change.to()))
        .findFirst();
  }

  private static boolean matches(Setup row, Setup found) {
    return (row.mold().isEmpty() || row.mold().equals(found.mold()))
        && (row.resin().isEmpty() || row.resin().equals(found.resin()))
        && (row.colour().isEmpty() || row.colour().equals(found.colour()));
  }

  private static String words(Exchange change) {
    return "press %s: %s to %s".formatted(change.press(), words(change.from()), words(change.to()));
  }

  private static String words(Setup setup) {
    List<String> parts = new ArrayList<>(List.of(setup.mold()));
    List.of(setup.resin(), setup.colour()).stream().filter(t -> !t.isEmpty()).forEach(parts::add);
    return String.join(" ", parts);
  }

  private void efficiency(List<Proposal> proposals) {
    propose(
            Figure.EFFICIENCY,
            "the plant",
            folder.plant().gave("efficiency_pct")
                ? folder.plant().at("efficiency_pct").toString()
                : InputFile.PLANT.fileName() + " (plant estimate)",
            OptionalDouble.of(folder.plant().efficiencyPct()),
            values(rows, ActualRow::efficiencyPct))
        .ifPresent(proposals::add);
  }
}
