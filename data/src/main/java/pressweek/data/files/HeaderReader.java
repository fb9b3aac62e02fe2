package pressweek.data.files;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pressweek.data.files.Header.Slot;
import pressweek.data.files.table.RawLine.Cells;

/** Finds the columns of a file in its header. */
final class HeaderReader {
  private static final Pattern TONS =
      Pattern.compile("(^|[^a-z])(tons?|tonnes?|tonnage|tonnen|to|t)([^a-z]|$)");

  private final Columns columns;
  private final Map<String, String> mapping;
  private final Findings findings;
  private final Map<String, Slot> slots = new HashMap<>();
  private boolean torn;
  private boolean tonAsked;
  private boolean unknown;

  /**
   * A reader for the header of one file.
   *
   * @param columns columns of the file
   * @param mapping columns by the plant's own headings; an empty column for a heading that is left
   *     out
   * @param findings where findings go
   */
  HeaderReader(Columns columns, Map<String, String> mapping, Findings findings) {
    this.columns = columns;
    this.mapping = mapping;
    this.findings = findings;
  }

  /** The heading in the form of a column's name: lower case, words joined by underscores. */
  static String normal(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[\\s\\-./]+", "_").replaceAll("_+$", "");
  }

  /** True when a heading speaks of tons without saying which. */
  static boolean tons(String heading) {
    return TONS.matcher(heading.toLowerCase(Locale.ROOT).replace('_', ' ')).find();
  }

  /** The header; empty when rows cannot be read by it. */
  Optional<Header> read(String file, Cells row) {
    At at = new At(file, row.line());
    List<String> headings = row.cells();
    int width = 0;
    for (int i = 0; i < headings.size(); i++) {
      if (!headings.get(i).isEmpty()) {
        width = i + 1;
        place(at, i, headings.get(i));
      }
    }
    for (int i = 0; i < width; i++) {
      if (headings.get(i).isEmpty()) {
        findings.warning(
            at, "column " + (i + 1) + " has no heading and is not used; expected a name");
      }
    }
    tons(at, headings);
    missing(file, headings);
    return torn ? Optional.empty() : Optional.of(new Header(slots, width));
  }

  private void place(At at, int index, String heading) {
    String mapped = mapping.get(heading);
    if (mapped != null && mapped.isEmpty()) {
      return;
    }
    String name = mapped != null ? mapped : normal(heading);
    Optional<Column> column = columns.called(name);
    if (column.isEmpty()) {
      unknown(at, heading, name);
      return;
    }
    Column found = column.get();
    String label = name.equals(heading) ? name : "\"" + heading + "\" (" + name + ")";
    Slot before = slots.get(found.name());
    if (before != null) {
      torn = true;
      findings.error(
          at,
          "columns "
              + (before.index() + 1)
              + " and "
              + (index + 1)
              + " are both "
              + found.name()
              + "; expected one");
      return;
    }
    slots.put(found.name(), new Slot(index, label, found.unit().other(found.name(), name)));
  }

  private void unknown(At at, String heading, String name) {
    if (columns.list().stream().anyMatch(c -> c.unit().bareTon(c.name(), name))
        || measuresForce() && tons(heading)) {
      return;
    }
    unknown = true;
    String cure =
        Nearest.of(name, columns.names())
            .map(n -> "did you mean " + n + "?")
            .orElse(
                "expected one of "
                    + String.join(", ", columns.list().stream().map(Column::name).toList()));
    findings.warning(at, "column \"" + heading + "\" is not known and not used; " + cure);
  }

  private boolean measuresForce() {
    return columns.list().stream().anyMatch(c -> c.unit() == Unit.KN);
  }

  private void tons(At at, List<String> headings) {
    for (String heading : headings) {
      boolean known = mapping.containsKey(heading) || columns.called(normal(heading)).isPresent();
      for (Column column : columns.list()) {
        boolean bare = column.unit().bareTon(column.name(), normal(heading)) || tons(heading);
        if (column.unit() == Unit.KN && !known && bare && !slots.containsKey(column.name())) {
          tonAsked = true;
          torn = true;
          findings.error(at, whichTon(heading, column));
        }
      }
    }
  }

  private static String whichTon(String heading, Column column) {
    List<String> names = column.unit().otherNames(column.name());
    return String.format(
        Locale.ROOT,
        "column \"%s\": which ton?; expected %s (US ton, 8.896443 kN), %s (9.80665 kN) or %s (long ton, 9.964016 kN)",
        heading,
        names.get(0),
        names.get(1),
        names.get(2));
  }

  private void missing(String file, List<String> headings) {
    String found = headings.stream().filter(h -> !h.isEmpty()).collect(Collectors.joining(", "));
    for (Column column : columns.list()) {
      boolean asked = tonAsked && column.unit() == Unit.KN;
      if (column.required() && !slots.containsKey(column.name()) && !asked) {
        torn = true;
        findings.error(new At(file, 0), "column \"" + column.name() + "\" missing; found " + found);
      }
    }
    if (torn && unknown) {
      String command = "\"pressweek headings FOLDER " + file + "\"";
      findings.warning(
          new At(file, 0),
          "the file has headings of its own; expected " + command + " once, to map them");
    }
  }
}
