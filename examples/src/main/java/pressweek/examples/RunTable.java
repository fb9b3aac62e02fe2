package pressweek.examples;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The finished runs of a benchmark, a row each, in a table that grows: a benchmark that was broken
 * off goes on where it stopped. The first columns say which run it was, the last ones how busy the
 * machine was, which it was and on what day. Delete the file to measure anew.
 *
 * <pre>
 * case,seconds,seed,value,load,machine
 * 41,10,1,69102.0,2.1,2026-11-26; 2 cores; 2048 MB heap at most; Linux amd64; Java 17.0.15.
 * </pre>
 */
public final class RunTable {
  private static final String LOAD = "load";
  private static final String MACHINE = "machine";

  private final Path file;
  private final List<String> columns;
  private final int keys;
  private final List<Row> rows = new ArrayList<>();

  /** A finished run: its cells by the columns of its table. */
  public record Row(List<String> columns, List<String> cells) {
    public Row {
      columns = List.copyOf(columns);
      cells = List.copyOf(cells);
    }

    /** The cell of a column. */
    public String text(String column) {
      return cells.get(columns.indexOf(column));
    }

    /** The number in the cell of a column. */
    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    /** True when the cell of a column has this number. */
    public boolean has(String column, double number) {
      return number(column) == number;
    }
  }

  private RunTable(Path file, List<String> columns, int keys) {
    this.file = file;
    this.columns = columns;
    this.keys = keys;
  }

  /**
   * Opens a table, which need not be there yet. A row that was broken off in the middle is not
   * read, so its run is made again.
   *
   * @param file place of the table
   * @param keys columns that say which run it was
   * @param values columns of what came of it
   * @throws IOException when it cannot be read, or has other columns
   */
  public static RunTable open(Path file, List<String> keys, List<String> values)
      throws IOException {
    List<String> columns = new ArrayList<>(keys);
    columns.addAll(values);
    columns.add(LOAD);
    columns.add(MACHINE);
    RunTable table = new RunTable(file, List.copyOf(columns), keys.size());
    if (!Files.exists(file)) {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, String.join(",", columns) + "\n");
    }
    table.read();
    return table;
  }

  private void read() throws IOException {
    String text = Files.readString(file);
    int whole = text.lastIndexOf('\n') + 1;
    if (whole < text.length()) {
      Files.writeString(file, text.substring(0, whole));
    }
    List<String> lines = text.substring(0, whole).lines().toList();
    String heading = String.join(",", columns);
    if (lines.isEmpty() || !lines.get(0).equals(heading)) {
      throw new IOException(file + ": other columns; expected " + heading + ", or no such file");
    }
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = List.of(line.split(",", -1));
      if (cells.size() != columns.size()) {
        throw new IOException(file + ": \"" + line + "\" has not " + columns.size() + " cells");
      }
      rows.add(new Row(columns, cells));
    }
  }

  /** True when this run is finished. */
  public boolean isDone(Object... key) {
    List<String> wanted = cells(List.of(key));
    return rows.stream().anyMatch(row -> row.cells().subList(0, keys).equals(wanted));
  }

  /**
   * Adds a finished run, and writes it at once.
   *
   * @param cells its key, then what came of it
   */
  public void add(Object... cells) throws IOException {
    List<String> row = new ArrayList<>(cells(List.of(cells)));
    row.add(String.valueOf(load()));
    row.add(ResultsFile.machine().replace(',', ';'));
    if (row.size() != columns.size()) {
      throw new IllegalArgumentException("expected cells for " + columns + " but was " + row);
    }
    Files.writeString(file, String.join(",", row) + "\n", StandardOpenOption.APPEND);
    rows.add(new Row(columns, row));
  }

  /** Work waiting for a core in the last minute, this process counted; -1 where unknown. */
  private static double load() {
    double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    return Math.round(load * 10) / 10.0;
  }

  private static List<String> cells(List<Object> cells) {
    return cells.stream().map(cell -> cell.toString().replace(',', ';')).toList();
  }

  /** The finished runs, in the order in which they were made. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** The finished runs of which something holds. */
  public List<Row> rows(Predicate<Row> holds) {
    return rows.stream().filter(holds).toList();
  }

  /** What is in a column, each once, in the order of the runs. */
  public List<String> distinct(String column) {
    Set<String> found = new LinkedHashSet<>();
    rows.forEach(row -> found.add(row.text(column)));
    return List.copyOf(found);
  }

  /** The whole numbers in a column, each once, the smallest first. */
  public List<Integer> numbers(String column) {
    return distinct(column).stream().map(Integer::valueOf).sorted().toList();
  }

  /** On what machines and days the runs were made, a line each, and by which class. */
  public List<String> machines(Class<?> by) {
    List<String> lines = new ArrayList<>();
    for (String machine : distinct(MACHINE)) {
      lines.add(machine.replace(';', ','));
    }
    double most = rows.stream().mapToDouble(row -> row.number(LOAD)).max().orElse(-1);
    double mean = rows.stream().mapToDouble(row -> row.number(LOAD)).average().orElse(-1);
    if (most >= 0) {
      lines.add(
          String.format(
              Locale.ROOT,
              "Load of the machine after the runs: %.1f in the mean, %.1f at most; this program makes about 2 of it.",
              mean,
              most));
    }
    lines.add("Written by `" + by.getName() + "`.");
    return lines;
  }
}
