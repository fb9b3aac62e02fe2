package pressweek.data.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.Header.Slot;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.ScenarioEdit.Condition;
import pressweek.data.files.ScenarioEdit.Verb;
import pressweek.data.files.table.TableSource;

/** What a scenario changes in one table: first columns of its header, then its rows. */
final class ScenarioTable {
  /**
   * A table as it is known before its header is read.
   *
   * @param file its real name
   * @param columns its columns
   * @param mapping columns by the plant's own headings
   * @param times how its dates are written
   */
  record Place(String file, Columns columns, Map<String, String> mapping, Times times) {}

  private final Scenario scenario;
  private final Place place;
  private final Findings findings;
  private final Map<String, Slot> slots = new HashMap<>();
  private final List<ScenarioEdit> edits = new ArrayList<>();
  private int ownWidth;
  private int width;

  ScenarioTable(Scenario scenario, Place place, Findings findings) {
    this.scenario = scenario;
    this.place = place;
    this.findings = findings;
  }

  /** The header with the columns that the scenario fills and the table does not have. */
  Header over(Header header) {
    List<ScenarioEdit> all = scenario.of(place.columns().file());
    if (all.isEmpty()) {
      return header;
    }
    ownWidth = header.width();
    width = ownWidth;
    slots.putAll(header.slots());
    for (ScenarioEdit edit : all) {
      named(edit).ifPresent(edits::add);
    }
    return new Header(slots, width);
  }

  /** The rows with the scenario's changes; those that fit no row are said at their end. */
  TableSource over(TableSource source) {
    if (edits.isEmpty()) {
      return source;
    }
    ScenarioRows.Table table =
        new ScenarioRows.Table(
            place.file(),
            slots,
            new ScenarioRows.Widths(ownWidth, width),
            place.columns(),
            place.times());
    return new ScenarioRows(
        source, scenario.file(), edits, table, (edit, message) -> error(edit.line(), message));
  }

  /** The same change with the names of columns for whatever they were called; empty if unknown. */
  private Optional<ScenarioEdit> named(ScenarioEdit edit) {
    Map<String, JsonTree> values = new LinkedHashMap<>();
    List<Condition> where = new ArrayList<>();
    boolean good = true;
    for (Condition condition : edit.where()) {
      Optional<String> column = column(condition.key(), condition.line(), false);
      good &= column.isPresent();
      column.ifPresent(c -> where.add(new Condition(c, condition.line(), condition.patterns())));
    }
    for (Map.Entry<String, JsonTree> value : edit.values().entrySet()) {
      int line = value.getValue().line();
      Optional<String> column = column(value.getKey(), line, edit.verb() != Verb.SCALE);
      good &= column.isPresent() && holds(edit.verb(), column.get(), value.getValue());
      column.ifPresent(c -> values.put(c, value.getValue()));
    }
    return good
        ? Optional.of(new ScenarioEdit(edit.verb(), edit.file(), edit.line(), "", where, values))
        : Optional.empty();
  }

  private boolean holds(Verb verb, String name, JsonTree value) {
    Column column = place.columns().column(name).orElseThrow();
    boolean number = column.look() == Column.Look.WHOLE || column.look() == Column.Look.DECIMAL;
    if (verb == Verb.SCALE && !number) {
      error(value.line(), name + " holds no numbers; expected a column such as quantity to scale");
      return false;
    }
    if (ScenarioValue.text(value, false).isEmpty()) {
      error(value.line(), name + " is " + value.kind() + "; expected a text, number, yes or no");
      return false;
    }
    return true;
  }

  private Optional<String> column(String name, int line, boolean make) {
    Collection<String> names = place.columns().names();
    String called = place.mapping().getOrDefault(name, HeaderReader.normal(name));
    Optional<Column> column = place.columns().called(called);
    if (column.isEmpty()) {
      String cure =
          Nearest.of(called, names)
              .map(n -> "did you mean " + n + "?")
              .orElse(
                  "expected one of "
                      + String.join(
                          ", ", place.columns().list().stream().map(Column::name).toList()));
      error(line, place.file() + " has no column \"" + name + "\"; " + cure);
      return Optional.empty();
    }
    String found = column.get().name();
    Optional<Unit.Other> unit = column.get().unit().other(found, called);
    Slot slot = slots.get(found);
    if (slot == null && make) {
      slots.put(found, new Slot(width++, called, unit));
    } else if (slot != null && !slot.other().equals(unit)) {
      String seen = "\"" + name + "\" is in another unit than " + slot.label() + " of ";
      error(line, seen + place.file() + "; expected " + slot.label());
      return Optional.empty();
    }
    return Optional.of(found);
  }

  private void error(int line, String message) {
    findings.broken(place.columns().file());
    findings.add(new InputError(Severity.ERROR, scenario.file(), line, "", message));
  }
}
