package pressweek.data.files;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Changes on top of a plant's folder, as a small JSON file says them. The folder itself stays as it
 * is: {@link FolderReader#read(Path, Scenario)} applies them to its raw rows before these are
 * checked.
 *
 * <pre>
 * {
 *   "schema": "pressweek-scenario/1",
 *   "name": "press 4 for food",
 *   "words": "H4 is kept for food.",
 *   "set": [{"file": "presses.csv", "where": {"press": "H4"}, "set": {"food": "only"}}]
 * }
 * </pre>
 *
 * @param file name of its file, as findings name it
 * @param sha256 SHA-256 of the file, hexadecimal
 * @param name name
 * @param words what it is, in a sentence; empty when it does not say
 * @param edits changes that could be read
 * @param findings what is wrong with the others
 */
public record Scenario(
    String file,
    String sha256,
    String name,
    String words,
    List<ScenarioEdit> edits,
    List<InputError> findings) {
  /** What a scenario file says first. */
  public static final String SCHEMA = "pressweek-scenario/1";

  /** What stands before a scenario's file name among the inputs of a plan. */
  public static final String INPUT = "scenario/";

  private static final Scenario NONE = new Scenario("", "", "", "", List.of(), List.of());

  public Scenario {
    edits = List.copyOf(edits);
    findings = List.copyOf(findings);
  }

  /** The scenario that changes nothing: the folder as it stands. */
  public static Scenario none() {
    return NONE;
  }

  /**
   * Reads a scenario file.
   *
   * @throws IOException when it cannot be read at all; whatever it holds is a finding
   */
  public static Scenario read(Path path) throws IOException {
    byte[] bytes = Files.readAllBytes(path);
    return of(
        String.valueOf(path.getFileName()), new String(bytes, StandardCharsets.UTF_8), hash(bytes));
  }

  /**
   * Reads a scenario from a text.
   *
   * @param file how findings and the inputs of a plan name it
   */
  public static Scenario of(String file, String text) {
    return of(file, text, hash(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static Scenario of(String file, String text, String sha256) {
    try {
      return new ScenarioReader(file).read(JsonReader.read(file, new StringReader(text)), sha256);
    } catch (IOException e) {
      throw new IllegalStateException("a text can always be read", e);
    }
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** True when it is a scenario at all, and not the folder as it stands. */
  public boolean given() {
    return !file.isEmpty();
  }

  /** Its changes of one file, in the order of the scenario. */
  List<ScenarioEdit> of(InputFile target) {
    return edits.stream().filter(e -> e.file() == target).toList();
  }

  /** The files to which it adds rows. */
  Set<InputFile> added() {
    return edits.stream()
        .filter(e -> e.verb() == ScenarioEdit.Verb.ADD)
        .map(ScenarioEdit::file)
        .collect(Collectors.toSet());
  }

  /** The hashes of a folder's files with the scenario's own. */
  SortedMap<String, String> with(SortedMap<String, String> hashes) {
    SortedMap<String, String> all = new TreeMap<>(hashes);
    if (given()) {
      all.put(INPUT + file, sha256);
    }
    return all;
  }
}
