package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.HeadingMatch.Fit;
import pressweek.data.files.Headings.Proposal;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;

/**
 * Matches the headings of one file with its columns, each column at most once, the surest first.
 */
final class HeadingProposer {
  /** Rows whose cells are looked at. */
  private static final int SAMPLE = 200;

  private final Columns columns;
  private final Times times;

  HeadingProposer(Columns columns, Times times) {
    this.columns = columns;
    this.times = times;
  }

  private record Candidate(int heading, int column, Fit fit) {}

  /** A proposal for each heading of the file; none when it has no header. */
  List<Proposal> propose(Path file, Findings findings) throws IOException {
    FileScan scan = FileScan.of(file);
    Optional<TableSource> source = TableFiles.open(file, scan, findings);
    if (source.isEmpty()) {
      return List.of();
    }
    try (TableSource table = source.get()) {
      Optional<RawLine> first = table.next();
      if (first.isEmpty() || !(first.get() instanceof RawLine.Cells header)) {
        String seen = first.map(l -> "the header cannot be read").orElse("the file is empty");
        findings.error(
            new At(String.valueOf(file.getFileName()), 0), seen + "; expected a header row");
        return List.of();
      }
      List<String> headings = header.cells();
      return proposals(headings, sample(table, headings.size()));
    }
  }

  private static List<List<String>> sample(TableSource table, int width) throws IOException {
    List<List<String>> sample = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      sample.add(new ArrayList<>());
    }
    Optional<RawLine> line = table.next();
    for (int rows = 0; line.isPresent() && rows < SAMPLE; rows++) {
      if (line.get() instanceof RawLine.Cells row) {
        for (int i = 0; i < Math.min(width, row.cells().size()); i++) {
          sample.get(i).add(row.cells().get(i));
        }
      }
      line = table.next();
    }
    return sample;
  }

  private List<Proposal> proposals(List<String> headings, List<List<String>> cells) {
    Map<Integer, Candidate> taken = assign(candidates(headings, cells));
    List<Proposal> proposals = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < headings.size(); i++) {
      String heading = headings.get(i);
      if (!heading.isEmpty() && seen.add(heading)) {
        proposals.add(proposal(heading, Optional.ofNullable(taken.get(i))));
      }
    }
    return proposals;
  }

  private Proposal proposal(String heading, Optional<Candidate> candidate) {
    Optional<Column> tons = tons(heading);
    if (tons.isPresent()) {
      List<String> names = tons.get().unit().otherNames(tons.get().name());
      return new Proposal(heading, "", 0, names, "which ton?");
    }
    return candidate
        .map(Candidate::fit)
        .map(f -> new Proposal(heading, f.name(), f.confidence(), List.of(), f.because()))
        .orElseGet(() -> new Proposal(heading, "", 0, List.of(), "no column like it"));
  }

  /** The column of force that a heading speaks of in tons without saying which. */
  private Optional<Column> tons(String heading) {
    boolean clear =
        columns.called(HeaderReader.normal(heading)).isPresent()
            || HeadingUnit.of(HeadingWords.plain(heading)).suffix().isPresent();
    return clear || !HeaderReader.tons(heading)
        ? Optional.empty()
        : columns.list().stream().filter(c -> c.unit() == Unit.KN).findFirst();
  }

  private List<Candidate> candidates(List<String> headings, List<List<String>> cells) {
    HeadingMatch match = new HeadingMatch(columns.file(), times);
    List<Candidate> candidates = new ArrayList<>();
    for (int h = 0; h < headings.size(); h++) {
      for (int c = 0; c < columns.list().size(); c++) {
        Optional<Fit> fit = match.fit(headings.get(h), columns.list().get(c), cells.get(h));
        if (fit.isPresent() && tons(headings.get(h)).isEmpty()) {
          candidates.add(new Candidate(h, c, fit.get()));
        }
      }
    }
    return candidates;
  }

  private static Map<Integer, Candidate> assign(List<Candidate> candidates) {
    candidates.sort(
        Comparator.comparingInt((Candidate c) -> -c.fit().confidence())
            .thenComparingInt(Candidate::heading)
            .thenComparingInt(Candidate::column));
    Map<Integer, Candidate> taken = new HashMap<>();
    Set<Integer> columns = new HashSet<>();
    for (Candidate candidate : candidates) {
      if (!taken.containsKey(candidate.heading()) && columns.add(candidate.column())) {
        taken.put(candidate.heading(), candidate);
      }
    }
    return taken;
  }
}
