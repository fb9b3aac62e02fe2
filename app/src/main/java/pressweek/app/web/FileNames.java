package pressweek.app.web;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.files.InputFile;

/** Names of files that a plant's folder knows. No other name ever becomes part of a path. */
final class FileNames {
  private FileNames() {}

  /** The file of exactly that name, be it a table as text or as a workbook; empty for none. */
  static Optional<InputFile> known(String name) {
    return Arrays.stream(InputFile.values()).filter(f -> names(f).contains(name)).findFirst();
  }

  /** The names under which a file may stand. */
  static List<String> names(InputFile file) {
    return Stream.of(file.fileName(), file.workbookName()).distinct().toList();
  }

  /** Every name that is known. */
  static List<String> all() {
    return Arrays.stream(InputFile.values()).flatMap(f -> names(f).stream()).toList();
  }

  /** Why a file of that name is left out, in words. */
  static String whyNot(String name) {
    return all().stream()
        .filter(k -> k.equalsIgnoreCase(name))
        .findFirst()
        .map(k -> "its name is written otherwise; expected " + k)
        .orElse("a plant's folder has no file of that name; expected one such as orders.csv");
  }
}
