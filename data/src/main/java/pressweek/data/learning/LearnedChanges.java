package pressweek.data.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pressweek.data.files.ActualRow;
import pressweek.data.files.At;
import pressweek.data.files.InputFile;
import pressweek.data.files.RecordedChangeRow;
import pressweek.data.learning.Proposal.Figure;
import pressweek.data.problem.Setup;

/** What past runs say of changes: by the recorded row that a change went by, else by itself. */
final class LearnedChanges {
  private final List<RecordedChangeRow> recorded;
  private final Proposing proposing;

  LearnedChanges(List<RecordedChangeRow> recorded, Proposing proposing) {
    this.recorded = recorded;
    this.proposing = proposing;
  }

  /**
   * The recorded rows with the proposals in them.
   *
   * @param rows what runs took
   * @param proposals to which it adds its own
   */
  List<RecordedChangeRow> learn(List<ActualRow> rows, List<Proposal> proposals) {
    Map<RecordedChangeRow, List<ActualRow>> groups = new LinkedHashMap<>();
    for (ActualRow row : rows) {
      if (!row.from().mold().isEmpty()) {
        groups.computeIfAbsent(recorded(row), k -> new ArrayList<>()).add(row);
      }
    }
    List<RecordedChangeRow> revised = new ArrayList<>(recorded);
    List<RecordedChangeRow> added = new ArrayList<>();
    groups.forEach(
        (row, runs) -> {
          Optional<Proposal> proposal = propose(row, runs);
          proposal.ifPresent(proposals::add);
          proposal
              .filter(Proposal::changes)
              .map(p -> with(row, (int) p.proposed()))
              .ifPresent(
                  other -> {
                    if (isNew(row)) {
                      added.add(other);
                    } else {
                      revised.set(revised.indexOf(row), other);
                    }
                  });
        });
    // The first row that fits counts, so those that say most come first.
    added.sort(Comparator.comparingLong(LearnedChanges::says).reversed());
    revised.addAll(added);
    return revised;
  }

  private Optional<Proposal> propose(RecordedChangeRow row, List<ActualRow> runs) {
    double[] planned = Proposing.values(runs, r -> r.changeMin().planned());
    OptionalDouble old =
        !isNew(row)
            ? OptionalDouble.of(row.minutes())
            : planned.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Robust.median(planned));
    return proposing.propose(
        Figure.CHANGE,
        words(row),
        isNew(row) ? "" : row.at().toString(),
        old,
        Proposing.values(runs, r -> r.changeMin().real()));
  }

  /** The row that a change went by; where there is none the one that there could be. */
  private RecordedChangeRow recorded(ActualRow run) {
    return recorded.stream()
        .filter(r -> r.press().isEmpty() || r.press().equals(run.press()))
        .filter(r -> matches(r.from(), run.from()) && matches(r.to(), run.to()))
        .findFirst()
        .orElseGet(
            () ->
                new RecordedChangeRow(
                    new At(InputFile.RECORDED_CHANGES.fileName(), 0),
                    run.press(),
                    run.from(),
                    run.to(),
                    0,
                    OptionalInt.empty()));
  }

  private static boolean isNew(RecordedChangeRow row) {
    return row.at().line() == 0;
  }

  private static RecordedChangeRow with(RecordedChangeRow row, int minutes) {
    return new RecordedChangeRow(
        row.at(), row.press(), row.from(), row.to(), minutes, row.purgeG());
  }

  private static boolean matches(Setup row, Setup found) {
    return (row.mold().isEmpty() || row.mold().equals(found.mold()))
        && (row.resin().isEmpty() || row.resin().equals(found.resin()))
        && (row.colour().isEmpty() || row.colour().equals(found.colour()));
  }

  private static long says(RecordedChangeRow row) {
    return Stream.of(
            row.from().mold(),
            row.from().resin(),
            row.from().colour(),
            row.to().mold(),
            row.to().resin(),
            row.to().colour())
        .filter(text -> !text.isEmpty())
        .count();
  }

  private static String words(RecordedChangeRow row) {
    String press = row.press().isEmpty() ? "any press" : "press " + row.press();
    return "%s: %s to %s".formatted(press, words(row.from()), words(row.to()));
  }

  private static String words(Setup setup) {
    List<String> parts =
        Stream.of(setup.mold(), setup.resin(), setup.colour()).filter(t -> !t.isEmpty()).toList();
    return parts.isEmpty() ? "any" : String.join(" ", parts);
  }
}
