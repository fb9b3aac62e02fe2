package pressweek.data.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.InputError.Severity;

/**
 * Collects findings; of the same kind in one column only the first few are kept, and the others
 * counted.
 */
final class Findings {
  /** Findings of one kind in one column that are shown. */
  private static final int SHOWN = 20;

  private static final class Group {
    private int count;
    private At first = new At("", 0);
  }

  private record Kind(Severity severity, String file, String column, String kind) {}

  private final List<InputError> shown = new ArrayList<>();
  private final Map<Kind, Group> groups = new HashMap<>();
  private final List<Kind> order = new ArrayList<>();
  private final Set<InputFile> broken = EnumSet.noneOf(InputFile.class);

  /** Adds a finding that stands alone. */
  void add(InputError finding) {
    shown.add(finding);
  }

  /** Adds all of them. */
  void addAll(List<InputError> findings) {
    shown.addAll(findings);
  }

  /** Adds an error in the plant's own files. */
  void error(At at, String message) {
    add(new InputError(Severity.ERROR, at.file(), at.line(), "", message));
  }

  /** Adds a warning. */
  void warning(At at, String message) {
    add(new InputError(Severity.WARNING, at.file(), at.line(), "", message));
  }

  /**
   * Adds a finding of which there may be thousands.
   *
   * @param kind what is the same about all of them
   */
  void add(InputError finding, String kind) {
    Kind key = new Kind(finding.severity(), finding.file(), finding.column(), kind);
    Group group = groups.get(key);
    if (group == null) {
      group = new Group();
      groups.put(key, group);
      order.add(key);
    }
    group.count++;
    if (group.count <= SHOWN) {
      shown.add(finding);
    } else if (group.count == SHOWN + 1) {
      group.first = finding.at();
    }
  }

  /** Says that rows of a file are missing or wrong, whichever file the error itself is in. */
  void broken(InputFile file) {
    broken.add(file);
  }

  /** True when a file has an error; faults of single order lines do not count. */
  boolean errorIn(InputFile file) {
    return broken.contains(file)
        || shown.stream()
            .filter(f -> f.severity() == Severity.ERROR)
            .anyMatch(
                f -> f.file().equals(file.fileName()) || f.file().equals(file.workbookName()));
  }

  /** All findings by file and line, and a line for those that were only counted. */
  List<InputError> list() {
    List<InputError> all = new ArrayList<>(shown);
    for (Kind kind : order) {
      Group group = groups.getOrDefault(kind, new Group());
      if (group.count > SHOWN) {
        all.add(more(kind, group));
      }
    }
    all.sort(
        Comparator.comparingInt(Findings::rank)
            .thenComparing(InputError::file)
            .thenComparingInt(InputError::line));
    return List.copyOf(all);
  }

  /** Place of the file among those that a folder may hold; others come last. */
  private static int rank(InputError finding) {
    for (InputFile file : InputFile.values()) {
      if (finding.file().equals(file.fileName()) || finding.file().equals(file.workbookName())) {
        return file.ordinal();
      }
    }
    return InputFile.values().length;
  }

  private static InputError more(Kind kind, Group group) {
    String column = kind.column().isEmpty() ? "" : kind.column() + ": ";
    String message =
        String.format(
            Locale.ROOT,
            "%sand %,d more of the same kind from here on",
            column,
            group.count - SHOWN);
    return new InputError(kind.severity(), kind.file(), group.first.line(), kind.column(), message);
  }
}
