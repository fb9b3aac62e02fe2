package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.FileRows;
import pressweek.data.files.InputError;
import pressweek.data.files.InputFile;
import pressweek.data.files.table.FileScan;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.WeekResult;

/** What is said of the files of a folder, each finding beside the line that it is about. */
final class FolderJson {
  private static final int LONGEST_LINE = 2_000;

  private final Path folder;
  private final Map<String, List<String>> lines = new HashMap<>();

  FolderJson(Path folder) {
    this.folder = folder;
  }

  /** Name and rows of a file of the folder; no rows for what is no table. */
  ObjectNode file(String name) throws IOException {
    ObjectNode json = Asked.object().put("name", name);
    boolean table = FileNames.known(name).filter(InputFile::table).isPresent();
    Optional<FileRows> rows = table ? FileRows.of(folder.resolve(name)) : Optional.empty();
    rows.ifPresent(r -> json.put("rows", r.count()));
    return json;
  }

  /** Every finding, those that stop the plan first. */
  ArrayNode findings(WeekResult week) throws IOException {
    ArrayNode all = Asked.JSON.createArrayNode();
    List<InputError> ordered = new ArrayList<>(week.errors());
    ordered.addAll(week.warnings());
    for (InputError finding : ordered) {
      all.add(finding(finding));
    }
    return all;
  }

  private ObjectNode finding(InputError finding) throws IOException {
    ObjectNode json = Asked.object().put("file", finding.file()).put("line", finding.line());
    json.put("column", finding.column()).put("message", finding.message());
    json.put("severity", finding.severity().name());
    List<String> file = finding.line() > 0 ? lines(finding.file()) : List.of();
    boolean there = finding.line() >= 1 && finding.line() <= file.size();
    json.put("text", there ? shortened(file.get(finding.line() - 1)) : "");
    return json;
  }

  private static String shortened(String line) {
    return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + " ...";
  }

  /** The lines of a text file of the folder as they stand; none of a workbook. */
  private List<String> lines(String name) throws IOException {
    if (!lines.containsKey(name)) {
      lines.put(name, read(name));
    }
    return lines.getOrDefault(name, List.of());
  }

  private List<String> read(String name) throws IOException {
    Path file = folder.resolve(name);
    if (FileNames.known(name).isEmpty() || !Files.isRegularFile(file)) {
      return List.of();
    }
    FileScan.Content content = FileScan.of(file).content();
    if (!content.text()) {
      return List.of();
    }
    String text = new String(Files.readAllBytes(file), charset(content));
    return text.replaceFirst("^\\uFEFF", "").lines().toList();
  }

  private static Charset charset(FileScan.Content content) {
    return switch (content) {
      case UTF_16LE -> StandardCharsets.UTF_16LE;
      case UTF_16BE -> StandardCharsets.UTF_16BE;
      case WINDOWS_1252 -> Charset.forName("windows-1252");
      default -> StandardCharsets.UTF_8;
    };
  }

  /** Order lines that cannot be planned, whatever the plan. */
  static ArrayNode unplaced(WeekResult week) {
    ArrayNode all = Asked.JSON.createArrayNode();
    List<Unplaced> lines = week.problem().map(p -> p.unplaced()).orElse(List.of());
    for (Unplaced line : lines) {
      all.addObject()
          .put("order", line.order())
          .put("line", line.line())
          .put("item", line.item())
          .put("pieces", line.pieces())
          .put("reason", line.reason())
          .put("cure", line.cure());
    }
    return all;
  }
}
