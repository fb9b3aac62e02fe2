package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.FileRows;
import pressweek.data.files.Headings;
import pressweek.data.files.InputError;
import pressweek.data.files.InputFile;

/** Which of the plant's own headings is which column; files that lie beside the folder first. */
final class HeadingRoutes {
  private static final int MOST = 500;
  private static final String HEADINGS = InputFile.HEADINGS.fileName();

  private final Desk desk;
  private final Staging staging;

  HeadingRoutes(Desk desk, Staging staging) {
    this.desk = desk;
    this.staging = staging;
  }

  List<Route> routes() {
    return List.of(
        get("/api/headings", Right.FILES, "which heading may be which column", this::propose)
            .asks(Field.text("file", "a table of the folder").inQuery()),
        post("/api/headings", Right.TAKE_FILES, "keeps which heading is which", this::keep)
            .asks(
                Field.text("file", "a table of the folder"),
                Field.of("mapping", "object", "the column of each heading; empty for none")));
  }

  private static InputFile table(String name) {
    return FileNames.known(name)
        .filter(InputFile::table)
        .orElseThrow(() -> new NotFoundResponse("the folder has no table of that name"));
  }

  private void propose(Asked asked) throws IOException {
    String name = asked.query("file");
    InputFile table = table(name);
    Staged staged = staging.of(asked.who().name());
    asked.answer(staged.with(desk.folder().path(), copy -> proposals(copy, table, name)));
  }

  private static ObjectNode proposals(Path folder, InputFile table, String name)
      throws IOException {
    Path file = folder.resolve(name);
    if (!Files.isRegularFile(file)) {
      throw new NotFoundResponse("there is no " + name + " yet");
    }
    Map<String, List<String>> samples = FileRows.of(file).map(FileRows::samples).orElse(Map.of());
    ObjectNode json = Asked.object().put("file", name);
    ArrayNode columns = json.putArray("columns");
    ObjectNode same = json.putObject("same");
    for (String column : Headings.columns(table)) {
      columns.add(column);
      Headings.column(table, column).ifPresent(c -> same.put(column, c));
    }
    Headings.missing(table, List.of()).forEach(json.putArray("required")::add);
    Headings.Proposals found = Headings.propose(folder, file);
    ArrayNode proposals = json.putArray("proposals");
    for (Headings.Proposal one : found.proposals()) {
      ObjectNode p = proposals.addObject().put("heading", one.heading());
      p.put("column", one.column()).put("because", one.because()).put("sure", one.sure());
      one.choices().forEach(p.putArray("choices")::add);
      samples.getOrDefault(one.heading(), List.of()).forEach(p.putArray("samples")::add);
    }
    found.findings().stream().map(InputError::toString).forEach(json.putArray("findings")::add);
    return json;
  }

  private void keep(Asked asked) throws StoreTrouble, IOException {
    String name = asked.text("file");
    InputFile table = table(name);
    Map<String, String> mapping = mapping(asked.node("mapping"), table);
    String person = asked.who().name();
    boolean beside = staging.of(person).files().containsKey(name);
    List<InputError> errors =
        beside ? beside(person, table, mapping) : inFolder(asked, table, mapping);
    if (!errors.isEmpty()) {
      asked.refuse(422, "nothing was kept: " + errors.get(0));
      return;
    }
    String where = beside ? " beside the folder" : "";
    String what = "said which heading of " + name + where + " is which column";
    desk.store().history().add(what, FileRoutes.ABOUT, asked.change());
    asked.answer(Asked.object());
  }

  private static Map<String, String> mapping(JsonNode json, InputFile table) {
    if (!json.isObject() || json.isEmpty() || json.size() > MOST) {
      throw new BadRequestResponse(
          "\"mapping\" is another thing; expected a column for each heading");
    }
    Map<String, String> mapping = new LinkedHashMap<>();
    Map<String, String> headings = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> one : json.properties()) {
      String column = one.getValue().asText("");
      Optional<String> known = column.isEmpty() ? Optional.of("") : Headings.column(table, column);
      if (!one.getValue().isTextual() || known.isEmpty()) {
        throw new BadRequestResponse(
            "\"" + one.getKey() + "\" is mapped to what is no column of " + table.fileName());
      }
      String other = known.get().isEmpty() ? null : headings.put(known.get(), one.getKey());
      if (other != null) {
        throw new BadRequestResponse(
            "\"" + one.getKey() + "\" and \"" + other + "\" are the same column; expected one");
      }
      mapping.put(one.getKey(), column);
    }
    List<String> missing = Headings.missing(table, List.copyOf(mapping.values()));
    if (!missing.isEmpty()) {
      throw new BadRequestResponse("no heading stands for " + String.join(", ", missing));
    }
    return mapping;
  }

  /** The mapping comes into the folder together with the file. */
  private List<InputError> beside(String person, InputFile table, Map<String, String> mapping)
      throws IOException {
    return staging
        .of(person)
        .with(
            desk.folder().path(),
            copy -> {
              List<InputError> errors = Headings.keep(copy, table, mapping);
              if (errors.isEmpty()) {
                byte[] kept = Files.readAllBytes(copy.resolve(HEADINGS));
                staging.lay(person, new TreeMap<>(Map.of(HEADINGS, kept)));
              }
              return errors;
            });
  }

  private List<InputError> inFolder(Asked asked, InputFile table, Map<String, String> mapping)
      throws IOException {
    staging.keepHeadings(asked.at());
    return Headings.keep(desk.folder().path(), table, mapping);
  }
}
