package pressweek.data.files;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import pressweek.data.files.Header.Slot;
import pressweek.data.files.ScenarioEdit.Verb;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.RawLine.Cells;
import pressweek.data.files.table.RawLine.Origin;
import pressweek.data.files.table.TableSource;

/**
 * The rows of a table as a scenario changes them. Which rows a change names is told by what they
 * hold in the folder, so that no change hides another one's rows.
 */
final class ScenarioRows implements TableSource {
  /**
   * The table.
   *
   * @param name its file
   * @param slots places of its columns
   * @param widths cells of a row
   * @param columns its columns
   * @param times how its dates are written
   */
  record Table(String name, Map<String, Slot> slots, Widths widths, Columns columns, Times times) {}

  /**
   * Cells of a row.
   *
   * @param own as the file has them
   * @param all with the columns that the scenario adds
   */
  record Widths(int own, int all) {}

  private final TableSource source;
  private final String file;
  private final List<ScenarioEdit> edits;
  private final Table table;
  private final BiConsumer<ScenarioEdit, String> unused;
  private final RowMatch match;
  private final Set<ScenarioEdit> fitted = new HashSet<>();
  private final Set<ScenarioEdit> did = new HashSet<>();
  private final Deque<ScenarioEdit> adds = new ArrayDeque<>();
  private boolean ended;

  /**
   * Changes rows.
   *
   * @param source the rows as they stand
   * @param file the scenario's file
   * @param edits changes, their columns by name
   * @param table the table
   * @param unused told of a change that does nothing, with what was seen and expected
   */
  ScenarioRows(
      TableSource source,
      String file,
      List<ScenarioEdit> edits,
      Table table,
      BiConsumer<ScenarioEdit, String> unused) {
    this.source = source;
    this.file = file;
    this.edits = edits;
    this.table = table;
    this.unused = unused;
    this.match = new RowMatch(table, source.decimalComma());
    edits.stream().filter(e -> e.verb() == Verb.ADD).forEach(adds::add);
  }

  @Override
  public Optional<RawLine> next() throws IOException {
    while (!ended) {
      Optional<RawLine> line = source.next();
      if (line.isEmpty()) {
        end();
      } else if (line.get() instanceof Cells cells) {
        Optional<RawLine> changed = changed(cells);
        if (changed.isPresent()) {
          return changed;
        }
      } else {
        return line;
      }
    }
    return Optional.ofNullable(adds.poll()).map(this::added);
  }

  private void end() {
    ended = true;
    for (ScenarioEdit edit : edits) {
      if (edit.verb() != Verb.ADD && !fitted.contains(edit)) {
        String where = edit.where().isEmpty() ? "a row" : edit.whereText();
        unused.accept(edit, "no row of " + table.name() + " has " + where + match.nearest(edit));
      } else if (edit.verb() == Verb.SCALE && !did.contains(edit)) {
        String names = String.join(", ", edit.values().keySet());
        unused.accept(edit, table.name() + " has no figure there to scale; expected some " + names);
      }
    }
  }

  private Optional<RawLine> changed(Cells row) {
    List<ScenarioEdit> fitting = new ArrayList<>();
    for (ScenarioEdit edit : edits) {
      if (edit.verb() != Verb.ADD && match.fits(edit, row.cells())) {
        fitting.add(edit);
        fitted.add(edit);
      }
    }
    if (fitting.stream().anyMatch(e -> e.verb() == Verb.DROP)) {
      return Optional.empty();
    }
    int last = row.cells().size();
    while (last > table.widths().own() && row.cells().get(last - 1).isEmpty()) {
      last--;
    }
    int own = table.widths().own();
    if (last > own || last < own && !source.shortRows()) {
      String seen = "the row has " + last + " cells; expected " + own + " as in the header";
      return Optional.of(new RawLine.Fault(row.line(), seen));
    }
    List<String> cells = wide(row.cells().subList(0, last));
    return Optional.of(new Cells(row.line(), cells, edited(cells, fitting)));
  }

  private List<String> wide(List<String> cells) {
    List<String> wide = new ArrayList<>(cells);
    wide.addAll(Collections.nCopies(table.widths().all() - cells.size(), ""));
    return wide;
  }

  /** Sets, then scales, in the order of the scenario. */
  private Optional<Origin> edited(List<String> cells, List<ScenarioEdit> fitting) {
    Map<Integer, Integer> lines = new HashMap<>();
    int named = 0;
    for (ScenarioEdit edit : fitting) {
      if (edit.verb() == Verb.SET) {
        set(edit, cells, lines);
        named = edit.where().isEmpty() ? named : edit.line();
      }
    }
    for (ScenarioEdit edit : fitting) {
      if (edit.verb() == Verb.SCALE) {
        scale(edit, cells, lines);
      }
    }
    return lines.isEmpty() ? Optional.empty() : Optional.of(new Origin(file, named, lines));
  }

  private void set(ScenarioEdit edit, List<String> cells, Map<Integer, Integer> lines) {
    edit.values()
        .forEach(
            (column, value) -> {
              int index = index(column);
              cells.set(index, ScenarioValue.text(value, decimalComma()).orElse(""));
              lines.put(index, value.line());
            });
  }

  private void scale(ScenarioEdit edit, List<String> cells, Map<Integer, Integer> lines) {
    edit.values()
        .forEach(
            (column, value) -> {
              Slot slot = table.slots().get(column);
              if (slot == null || !(value instanceof JsonTree.Num factor)) {
                return;
              }
              boolean whole = table.columns().column(column).orElseThrow().look().whole();
              Optional<BigDecimal> figure = match.number(cells.get(slot.index()), whole);
              figure.ifPresent(
                  f -> {
                    BigDecimal scaled = ScenarioValue.scaled(f, factor.value(), whole);
                    cells.set(slot.index(), ScenarioValue.number(scaled, decimalComma()));
                    lines.put(slot.index(), value.line());
                    did.add(edit);
                  });
            });
  }

  private RawLine added(ScenarioEdit edit) {
    List<String> cells = wide(List.of());
    Map<Integer, Integer> lines = new HashMap<>();
    set(edit, cells, lines);
    return new Cells(0, cells, Optional.of(new Origin(file, edit.line(), lines)));
  }

  private int index(String column) {
    Slot slot = table.slots().get(column);
    if (slot == null) {
      throw new IllegalStateException("no place was made for " + column);
    }
    return slot.index();
  }

  @Override
  public boolean decimalComma() {
    return source.decimalComma();
  }

  @Override
  public boolean shortRows() {
    return source.shortRows();
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
