package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.InputError;
import pressweek.data.problem.Unplaced;

/** The plant's files and what is wrong with them. */
final class FileRoutes {
  private static final long MOST_BYTES = 20_000_000;

  private final Desk desk;

  FileRoutes(Desk desk) {
    this.desk = desk;
  }

  List<Route> routes() {
    return List.of(
        get("/api/files", Right.FILES, "the files and what is wrong with them", this::files));
  }

  private void files(Asked asked) throws StoreTrouble, IOException {
    FolderLook.Look look = desk.folder().look();
    Optional<Standing> now = desk.standing();
    ObjectNode json = Asked.object();
    json.put("folder", String.valueOf(desk.folder().path().getFileName()));
    json.put("plannable", look.week().problem().isPresent());
    ArrayNode changed = json.putArray("changed");
    if (now.isPresent()) {
      desk.filesChanged(now.get()).forEach(changed::add);
    }
    Map<String, String> then =
        now.map(s -> s.week().plan().head().inputs()).orElse(look.folder().inputs());
    ArrayNode files = json.putArray("files");
    Map<String, List<String>> texts = new HashMap<>();
    for (Map.Entry<String, String> file : look.folder().inputs().entrySet()) {
      List<String> lines = lines(desk.folder().path().resolve(file.getKey()));
      texts.put(file.getKey(), lines);
      files
          .addObject()
          .put("name", file.getKey())
          .put("lines", lines.size())
          .put("changed", !file.getValue().equals(then.getOrDefault(file.getKey(), "")))
          .put("sha", file.getValue());
    }
    ArrayNode findings = json.putArray("findings");
    look.week().errors().forEach(f -> finding(findings.addObject(), f, texts));
    look.week().warnings().forEach(f -> finding(findings.addObject(), f, texts));
    ArrayNode unplaced = json.putArray("unplaced");
    look.week()
        .problem()
        .ifPresent(p -> p.unplaced().forEach(u -> unplaced(unplaced.addObject(), u)));
    asked.answer(json);
  }

  private static void finding(
      ObjectNode json, InputError finding, Map<String, List<String>> texts) {
    json.put("file", finding.file()).put("line", finding.line());
    json.put("column", finding.column()).put("message", finding.message());
    json.put("severity", finding.severity() == InputError.Severity.ERROR ? "error" : "warning");
    List<String> lines = texts.getOrDefault(finding.file(), List.of());
    boolean there = finding.line() >= 1 && finding.line() <= lines.size();
    json.put("text", there ? lines.get(finding.line() - 1) : "");
    json.put("heading", there && !lines.isEmpty() ? lines.get(0) : "");
  }

  private static void unplaced(ObjectNode json, Unplaced line) {
    json.put("line", line.id()).put("item", line.item()).put("pieces", line.pieces());
    json.put("reason", line.reason()).put("cure", line.cure());
  }

  /** The lines of a text file as they stand; none of a workbook or of what is too large. */
  private static List<String> lines(Path file) throws IOException {
    boolean text = !file.toString().endsWith(".xlsx") && Files.size(file) <= MOST_BYTES;
    return text ? Files.readAllLines(file, StandardCharsets.ISO_8859_1) : List.of();
  }
}
