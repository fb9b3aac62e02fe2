package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;

/**
 * What stands in a table, whatever its headings mean.
 *
 * @param count rows below the header
 * @param samples the first texts below each heading, empty cells left out
 */
public record FileRows(int count, Map<String, List<String>> samples) {
  /** Texts a heading. */
  private static final int SAMPLES = 3;

  public FileRows {
    samples = Collections.unmodifiableMap(new LinkedHashMap<>(samples));
  }

  /**
   * Reads a table once.
   *
   * @return empty when it is none
   * @throws IOException when it cannot be read at all
   */
  public static Optional<FileRows> of(Path table) throws IOException {
    Optional<TableSource> source = TableFiles.open(table, FileScan.of(table), new Findings());
    if (source.isEmpty()) {
      return Optional.empty();
    }
    try (TableSource open = source.get()) {
      Optional<RawLine> header = open.next();
      List<String> headings =
          header.isPresent() && header.get() instanceof RawLine.Cells c ? c.cells() : List.of();
      return Optional.of(rows(open, headings));
    }
  }

  private static FileRows rows(TableSource open, List<String> headings) throws IOException {
    Map<String, List<String>> samples = new LinkedHashMap<>();
    int count = 0;
    for (Optional<RawLine> line = open.next(); line.isPresent(); line = open.next()) {
      count++;
      if (line.get() instanceof RawLine.Cells row) {
        int width = Math.min(headings.size(), row.cells().size());
        for (int i = 0; i < width; i++) {
          sample(samples.computeIfAbsent(headings.get(i), h -> new ArrayList<>()), row, i);
        }
      }
    }
    return new FileRows(count, samples);
  }

  private static void sample(List<String> texts, RawLine.Cells row, int place) {
    String text = row.cells().get(place);
    if (texts.size() < SAMPLES && !text.isEmpty() && !texts.contains(text)) {
      texts.add(text);
    }
  }
}
