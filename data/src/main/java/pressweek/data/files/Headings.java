package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.table.FileScan;

/**
 * Proposes which column each of a plant's own headings is, and keeps what the plant decides in
 * {@code headings.json}.
 */
public final class Headings {
  /** From this on a proposal needs no question. */
  private static final int SURE = 85;

  /**
   * What a heading may be.
   *
   * @param heading heading as it stands in the file
   * @param column column that it most likely is; empty for none
   * @param confidence how sure that is, 0 to 100
   * @param choices columns of which only the plant can say which one it is, such as three kinds of
   *     tons; empty when there is no such doubt
   * @param because why, in words
   */
  public record Proposal(
      String heading, String column, int confidence, List<String> choices, String because) {
    public Proposal {
      choices = List.copyOf(choices);
    }

    /** True when it needs no question. */
    public boolean sure() {
      return confidence >= SURE && choices.isEmpty();
    }
  }

  /**
   * What the headings of a file may be.
   *
   * @param file the file that it is, or stands for; empty when its name is none of a folder's
   *     tables
   * @param proposals one for each heading, in their order
   * @param findings what was wrong with the file
   */
  public record Proposals(
      Optional<InputFile> file, List<Proposal> proposals, List<InputError> findings) {
    public Proposals {
      proposals = List.copyOf(proposals);
      findings = List.copyOf(findings);
    }
  }

  private static final JsonFactory FACTORY = new JsonFactory();

  private Headings() {}

  /**
   * Proposes columns by names, by other words for them, by spelling, and by what the cells look
   * like.
   *
   * @param folder the plant's folder
   * @param file a table; its name says which one of the folder it is
   */
  public static Proposals propose(Path folder, Path file) throws IOException {
    Findings findings = new Findings();
    Optional<InputFile> known = HeadingsFile.table(String.valueOf(file.getFileName()));
    if (known.isEmpty()) {
      findings.error(
          new At(String.valueOf(file.getFileName()), 0),
          "the name is not that of a table; expected one such as orders.csv or orders.xlsx");
      return new Proposals(known, List.of(), findings.list());
    }
    Times times = times(folder);
    List<Proposal> proposals =
        new HeadingProposer(Tables.columns(known.get()), times).propose(file, findings);
    return new Proposals(known, proposals, findings.list());
  }

  private static Times times(Path folder) throws IOException {
    Path plant = folder.resolve(InputFile.PLANT.fileName());
    if (!Files.isRegularFile(plant)) {
      return Times.iso();
    }
    Optional<JsonTree.Obj> tree = JsonReader.read(plant, FileScan.of(plant)).object();
    return Times.of(PlantReader.read(tree, new Findings()).hours().dateFormat())
        .orElse(Times.iso());
  }

  /** Every name that a heading of the file may be mapped to. */
  public static List<String> columns(InputFile file) {
    return Tables.columns(file).names();
  }

  /**
   * The column that a name stands for, be it in another unit; empty when the file has none of that
   * name.
   */
  public static Optional<String> column(InputFile file, String name) {
    return Tables.columns(file).called(name).map(Column::name);
  }

  /** The columns that the file must have and that none of these names is. */
  public static List<String> missing(InputFile file, List<String> names) {
    Columns columns = Tables.columns(file);
    List<String> found =
        names.stream().flatMap(n -> columns.called(n).stream()).map(Column::name).toList();
    return columns.list().stream()
        .filter(Column::required)
        .map(Column::name)
        .filter(c -> !found.contains(c))
        .toList();
  }

  /**
   * Keeps a mapping; those of other files stay. Headings that need none are left out.
   *
   * @param mapping columns by heading; an empty column for a heading that is left out on purpose
   * @return what is wrong with the {@code headings.json} that is there; then nothing has been kept
   */
  public static List<InputError> keep(Path folder, InputFile file, Map<String, String> mapping)
      throws IOException {
    Path path = folder.resolve(InputFile.HEADINGS.fileName());
    Findings findings = new Findings();
    Map<InputFile, Map<String, String>> all = new EnumMap<>(InputFile.class);
    if (Files.exists(path)) {
      JsonReading reading = JsonReader.read(path, FileScan.of(path));
      findings.addAll(reading.findings());
      all.putAll(HeadingsFile.of(reading.object(), findings));
    }
    if (findings.errorIn(InputFile.HEADINGS)) {
      return findings.list();
    }
    Map<String, String> kept = new LinkedHashMap<>(all.getOrDefault(file, Map.of()));
    mapping.forEach(
        (heading, column) -> {
          if (HeaderReader.normal(heading).equals(column)) {
            kept.remove(heading);
          } else {
            kept.put(heading, column);
          }
        });
    all.put(file, kept);
    AtomicFile.write(path, out -> write(all, out));
    return List.of();
  }

  private static void write(Map<InputFile, Map<String, String>> all, Writer out)
      throws IOException {
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      for (Map.Entry<InputFile, Map<String, String>> file : all.entrySet()) {
        json.writeObjectFieldStart(file.getKey().fileName());
        for (Map.Entry<String, String> heading : file.getValue().entrySet()) {
          json.writeStringField(heading.getKey(), heading.getValue());
        }
        json.writeEndObject();
      }
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }
}
