package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/** The plant's files, what is wrong with them, and new ones. */
final class FileRoutes {
  /** What the lines of the history about the folder are about. */
  static final String ABOUT = "files";

  private final Desk desk;
  private final Staging staging;

  FileRoutes(Desk desk) {
    this.desk = desk;
    staging = new Staging(desk.folder().path());
  }

  List<Route> routes() {
    List<Route> all =
        new ArrayList<>(
            List.of(
                get(
                    "/api/files",
                    Right.FILES,
                    "the files and what is wrong with them",
                    this::files),
                post(
                    "/api/files",
                    Right.TAKE_FILES,
                    "lays files beside the folder and says what would be wrong with it",
                    this::lay),
                post(
                    "/api/files/take",
                    Right.TAKE_FILES,
                    "puts the files that lie beside the folder into it",
                    this::take),
                post(
                    "/api/files/discard",
                    Right.TAKE_FILES,
                    "forgets the files that lie beside the folder",
                    this::discard)));
    all.addAll(new HeadingRoutes(desk, staging).routes());
    return List.copyOf(all);
  }

  private void files(Asked asked) throws StoreTrouble, IOException {
    FolderLook.Look look = desk.folder().look();
    Optional<Standing> now = desk.standing();
    SortedMap<String, String> inputs = look.folder().inputs();
    Map<String, String> then = now.map(s -> s.week().plan().head().inputs()).orElse(inputs);
    ObjectNode json =
        Asked.object().put("folder", String.valueOf(desk.folder().path().getFileName()));
    json.put("plannable", look.week().problem().isPresent()).put("planned", now.isPresent());
    ArrayNode changed = json.putArray("changed");
    if (now.isPresent()) {
      desk.filesChanged(now.get()).forEach(changed::add);
    }
    FolderJson folder = new FolderJson(desk.folder().path());
    ArrayNode files = json.putArray("files");
    for (Map.Entry<String, String> file : inputs.entrySet()) {
      boolean same = file.getValue().equals(then.getOrDefault(file.getKey(), ""));
      files.add(folder.file(file.getKey()).put("changed", !same).put("sha", file.getValue()));
    }
    json.set("findings", folder.findings(look.week()));
    json.set("unplaced", FolderJson.unplaced(look.week()));
    Staged staged = staging.of(asked.who().name());
    json.set("staged", staged.isEmpty() ? Asked.JSON.nullNode() : staged(staged, Map.of()));
    asked.answer(json);
  }

  private void lay(Asked asked) throws StoreTrouble, IOException {
    try {
      Upload upload = Upload.of(asked.context().req());
      String person = asked.who().name();
      if (upload.files().isEmpty()) {
        asked.refuse(422, "no file of a plant's folder came: " + left(upload.left()));
      } else if (!staging.lay(person, upload.files())) {
        asked.refuse(413, "with the files that lie here already they are more than 50 MB");
      } else {
        note(asked, "laid " + names(upload.files()) + " beside the folder");
        asked.answer(staged(staging.of(person), upload.left()));
      }
    } catch (Upload.Faulty e) {
      // What is left of the request is not read as the next one.
      asked.context().header("Connection", "close");
      asked.refuse(e.status(), String.valueOf(e.getMessage()));
    }
  }

  private static String left(Map<String, String> left) {
    return left.entrySet().stream()
        .findFirst()
        .map(e -> "\"" + e.getKey() + "\": " + e.getValue())
        .orElse("the request is empty");
  }

  private static String names(SortedMap<String, byte[]> files) {
    return String.join(", ", files.keySet());
  }

  /** A body of files is none that gives a reason. */
  private void note(Asked asked, String what) throws StoreTrouble {
    desk.store().history().add(what, ABOUT, Change.of(asked.who().name(), asked.at()));
  }

  private ObjectNode staged(Staged staged, Map<String, String> left) throws IOException {
    Map<String, String> now = desk.folder().look().folder().inputs();
    return staged.with(desk.folder().path(), copy -> staged(copy, staged, left, now));
  }

  /** What would be said of the folder with the files that lie beside it. */
  private ObjectNode staged(
      Path copy, Staged staged, Map<String, String> left, Map<String, String> now)
      throws IOException {
    Folder whole = FolderReader.read(copy);
    WeekResult week = Week.build(whole, desk.nowMin());
    FolderJson folder = new FolderJson(copy);
    ObjectNode json = Asked.object();
    ArrayNode stored = json.putArray("stored");
    for (String name : staged.files().keySet()) {
      String is = whole.inputs().getOrDefault(name, "");
      boolean same = !is.isEmpty() && is.equals(now.getOrDefault(name, ""));
      stored.add(folder.file(name).put("changed", !same));
    }
    ArrayNode leftOut = json.putArray("left");
    left.forEach((name, why) -> leftOut.addObject().put("name", name).put("words", why));
    json.put("plannable", week.problem().isPresent());
    json.set("findings", folder.findings(week));
    json.set("unplaced", FolderJson.unplaced(week));
    return json;
  }

  private void take(Asked asked) throws StoreTrouble, IOException {
    String person = asked.who().name();
    if (staging.of(person).isEmpty()) {
      asked.refuse(409, "no files lie beside the folder; bring them first");
      return;
    }
    Staged taken = staging.take(person, asked.at());
    String what = "put " + names(taken.files()) + " into the folder";
    desk.store().history().add(what, ABOUT, asked.change());
    ArrayNode names = Asked.JSON.createArrayNode();
    taken.files().keySet().forEach(names::add);
    ObjectNode json = Asked.object();
    json.set("taken", names);
    asked.answer(json);
  }

  private void discard(Asked asked) throws StoreTrouble {
    Staged gone = staging.discard(asked.who().name());
    if (!gone.isEmpty()) {
      note(asked, "left " + names(gone.files()) + " out of the folder");
    }
    asked.answer(Asked.object());
  }
}
