package pressweek.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Change;
import pressweek.data.files.FolderReader;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.Scenario;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/**
 * The scenarios of a plant: the files in the folder's own sub-folder, which are only read, and
 * those that were written on the pages and are kept in the store by their names. For use by several
 * threads.
 */
public final class ScenarioShelf {
  /** Sub-folder of the plant's folder. */
  public static final String FOLDER = "scenarios";

  /** Letters that a scenario may have. */
  public static final int MOST_LETTERS = 100_000;

  private static final String JSON = ".json";
  private static final int MOST_FILES = 100;
  private static final int MOST_CHECKED = 300;
  private static final int LONGEST_NAME = 80;

  private final Desk desk;

  /** What was found, by what it was found in: reading a folder once more for each takes a while. */
  private final Map<String, List<InputError>> checked = new LinkedHashMap<>();

  /** The scenarios of the folder and the store of a desk. */
  public ScenarioShelf(Desk desk) {
    this.desk = desk;
  }

  /** All of them, those of the folder first. */
  public List<Shelved> all() throws StoreTrouble, IOException {
    List<Shelved> all = new ArrayList<>();
    for (Path file : files()) {
      all.add(file(file));
    }
    for (pressweek.app.store.row.Scenario kept : desk.store().scenarios().all()) {
      all.add(kept(kept));
    }
    return List.copyOf(all);
  }

  private List<Path> files() throws IOException {
    Path folder = desk.folder().path().resolve(FOLDER);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> String.valueOf(f.getFileName()).endsWith(JSON) && Files.isRegularFile(f))
          .sorted()
          .limit(MOST_FILES)
          .toList();
    }
  }

  private Shelved file(Path path) throws IOException {
    String name = String.valueOf(path.getFileName());
    String id = Shelved.FILE + name;
    String trouble;
    try {
      if (Files.size(path) <= MOST_LETTERS) {
        Scenario read = Scenario.read(path);
        return new Shelved(id, Files.readString(path), read, findings(read), Optional.empty());
      }
      trouble = "the file is larger than 100 kB; expected a small one";
    } catch (IOException e) {
      trouble = "the file cannot be read as text in UTF-8; expected JSON";
    }
    InputError finding = new InputError(Severity.ERROR, name, 0, "", trouble);
    Scenario none = new Scenario(name, "", "", "", List.of(), List.of(finding));
    return new Shelved(id, "", none, none.findings(), Optional.empty());
  }

  private Shelved kept(pressweek.app.store.row.Scenario row) throws IOException {
    Scenario read = read(row.name(), row.text());
    Shelved.Kept kept = new Shelved.Kept(row.version(), row.made());
    return new Shelved(
        Shelved.KEPT + row.name(), row.text(), read, findings(read), Optional.of(kept));
  }

  /** The scenario with that id; empty when there is none by now. */
  public Optional<Shelved> find(String id) throws StoreTrouble, IOException {
    if (id.startsWith(Shelved.KEPT)) {
      Optional<pressweek.app.store.row.Scenario> row =
          desk.store().scenarios().find(id.substring(Shelved.KEPT.length()));
      return row.isPresent() ? Optional.of(kept(row.get())) : Optional.empty();
    }
    for (Path file : files()) {
      if (id.equals(Shelved.FILE + file.getFileName())) {
        return Optional.of(file(file));
      }
    }
    return Optional.empty();
  }

  /** A text as it would be kept: read and checked, under the name that it says itself. */
  public Shelved read(String text) throws IOException {
    Scenario read = read(read("new", text).name(), text);
    List<InputError> findings = new ArrayList<>(findings(read));
    boolean odd = read.name().chars().anyMatch(Character::isISOControl);
    if (read.name().length() > LONGEST_NAME || odd) {
      String words = "the name is no short one; expected at most 80 letters in a line";
      findings.add(new InputError(Severity.ERROR, read.file(), 0, "name", words));
    }
    return new Shelved("", text, read, findings, Optional.empty());
  }

  private static Scenario read(String name, String text) {
    return Scenario.of((name.isEmpty() ? "new" : name) + JSON, text);
  }

  /** What is wrong with a scenario itself, on top of the folder as it is now. */
  private List<InputError> findings(Scenario scenario) throws IOException {
    String key = scenario.file() + " " + scenario.sha256() + desk.folder().look().folder().inputs();
    synchronized (checked) {
      List<InputError> known = checked.get(key);
      if (known != null) {
        return known;
      }
    }
    WeekResult week =
        Week.build(FolderReader.read(desk.folder().path(), scenario), desk.folder().nowMin());
    List<InputError> found =
        Stream.concat(week.errors().stream(), week.warnings().stream())
            .filter(f -> f.file().equals(scenario.file()))
            .toList();
    synchronized (checked) {
      checked.put(key, found);
      if (checked.size() > MOST_CHECKED) {
        checked.remove(checked.keySet().iterator().next());
      }
    }
    return found;
  }

  /**
   * Keeps a text under its own name.
   *
   * @param text what {@link #read} found nothing wrong with
   * @param version the version that it was made from; 0 for a new one
   */
  public Answer<pressweek.app.store.row.Scenario> keep(Shelved text, long version, Change change)
      throws StoreTrouble {
    return desk.store()
        .scenarios()
        .put(
            new pressweek.app.store.row.Scenario(
                text.scenario().name(), version, text.text(), change));
  }

  /** Drops a kept one if it still has that version. */
  public Answer<pressweek.app.store.row.Scenario> drop(String name, long version, Change change)
      throws StoreTrouble {
    return desk.store().scenarios().delete(name, version, change);
  }
}
