package pressweek.data.files;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;

/** The mapping of {@code headings.json}: columns by the plant's own headings, by file. */
final class HeadingsFile {
  private static final String NAME = InputFile.HEADINGS.fileName();

  private final Findings findings;

  private HeadingsFile(Findings findings) {
    this.findings = findings;
  }

  /** The mapping that the file says; empty when there is none. */
  static Map<InputFile, Map<String, String>> of(Optional<JsonTree.Obj> tree, Findings findings) {
    Map<InputFile, Map<String, String>> all = new EnumMap<>(InputFile.class);
    HeadingsFile reader = new HeadingsFile(findings);
    tree.ifPresent(t -> t.fields().forEach((name, value) -> reader.file(name, value, all)));
    return all;
  }

  private void file(String name, JsonTree value, Map<InputFile, Map<String, String>> all) {
    Optional<InputFile> file = table(name);
    if (file.isEmpty()) {
      error(
          value.line(),
          name,
          "\"" + name + "\" is not a table of the folder; expected a name such as orders.csv");
    } else if (value instanceof JsonTree.Obj object) {
      all.put(file.get(), mapping(file.get(), object));
    } else {
      error(
          value.line(),
          name,
          "\"" + name + "\" is " + value.kind() + "; expected an object of headings");
    }
  }

  /** The table of that name, by its CSV or its workbook. */
  static Optional<InputFile> table(String name) {
    return Arrays.stream(InputFile.values())
        .filter(f -> f.table() && (name.equals(f.fileName()) || name.equals(f.workbookName())))
        .findFirst();
  }

  private Map<String, String> mapping(InputFile file, JsonTree.Obj object) {
    Map<String, String> mapping = new LinkedHashMap<>();
    Columns columns = Tables.columns(file);
    object
        .fields()
        .forEach(
            (heading, value) -> {
              Optional<String> column =
                  JsonFields.asText(value)
                      .filter(c -> c.isEmpty() || columns.called(c).isPresent());
              if (column.isPresent()) {
                mapping.put(heading, column.get());
              } else {
                String seen =
                    "heading \"" + heading + "\" of " + file.fileName() + " is mapped to ";
                error(
                    value.line(),
                    heading,
                    seen
                        + value.kind()
                        + "; expected \"\" or one of "
                        + String.join(", ", columns.names()));
              }
            });
    return mapping;
  }

  private void error(int line, String key, String message) {
    findings.add(new InputError(Severity.ERROR, NAME, line, key, message));
  }
}
