package pressweek.app.learn;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.files.DraftOrigin;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.PlantDraft;
import pressweek.data.files.RecordedChangeRow;
import pressweek.data.files.StandardRow;
import pressweek.data.files.TableDraft;
import pressweek.data.learning.Learning.Learned;
import pressweek.data.learning.Proposal.Figure;

/**
 * What past runs propose, as files: those of the plant's folder that would change, whole and with
 * nothing else changed in them, and one diff from the folder to them.
 */
public final class LearnedFiles {
  /** The diff. */
  public static final String DIFF = "learned.diff";

  private static final List<String> NEW_STANDARDS =
      List.of("mold", "resin", "press", Figure.CYCLE.column(), Figure.SCRAP.column());
  private static final List<String> NEW_CHANGES =
      List.of(
          "press",
          "from_mold",
          "from_resin",
          "from_colour",
          "to_mold",
          "to_resin",
          "to_colour",
          Figure.CHANGE.column());

  private final Folder folder;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final ByteArrayOutputStream diff = new ByteArrayOutputStream();

  private LearnedFiles(Folder folder) {
    this.folder = folder;
  }

  /**
   * The files.
   *
   * @param folder the plant's folder as it stands, without a scenario
   * @param learned what past runs say of it
   * @throws IOException when a file of the folder cannot be read
   */
  public static LearnedFiles of(Folder folder, Learned learned) throws IOException {
    LearnedFiles files = new LearnedFiles(folder);
    files.standards(learned.standards());
    files.changes(learned.changes());
    files.efficiency(learned.efficiencyPct());
    if (files.diff.size() > 0) {
      files.files.put(DIFF, files.diff.toByteArray());
    }
    return files;
  }

  /** Every name that such a file may have. */
  public static List<String> names() {
    return List.of(
        InputFile.STANDARDS.fileName(),
        InputFile.RECORDED_CHANGES.fileName(),
        InputFile.PLANT.fileName(),
        DIFF);
  }

  /** The files by name; none when nothing is proposed. */
  public Map<String, byte[]> files() {
    return new LinkedHashMap<>(files);
  }

  /** What a person should know of them. */
  public List<String> notes() {
    return List.copyOf(notes);
  }

  private void standards(List<StandardRow> rows) throws IOException {
    TableDraft draft = TableDraft.of(folder, InputFile.STANDARDS, NEW_STANDARDS);
    Map<Integer, StandardRow> was = new LinkedHashMap<>();
    folder.floor().standards().forEach(row -> was.put(row.at().line(), row));
    for (StandardRow row : rows) {
      StandardRow before = was.get(row.at().line());
      if (before == null) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("mold", row.mold());
        cells.put("resin", row.resin());
        cells.put("press", row.press());
        cells.put(Figure.CYCLE.column(), figure(row.cycleS()));
        cells.put(
            Figure.SCRAP.column(),
            row.scrapPct().isPresent() ? figure(row.scrapPct().getAsDouble()) : "");
        draft.add(cells);
        continue;
      }
      if (row.cycleS() != before.cycleS()) {
        draft.set(row.at().line(), Figure.CYCLE.column(), figure(row.cycleS()));
      }
      if (!row.scrapPct().equals(before.scrapPct())) {
        draft.set(row.at().line(), Figure.SCRAP.column(), figure(row.scrapPct().orElseThrow()));
      }
    }
    take(draft, InputFile.STANDARDS);
  }

  private void changes(List<RecordedChangeRow> rows) throws IOException {
    TableDraft draft = TableDraft.of(folder, InputFile.RECORDED_CHANGES, NEW_CHANGES);
    Map<Integer, RecordedChangeRow> was = new LinkedHashMap<>();
    folder.floor().recordedChanges().forEach(row -> was.put(row.at().line(), row));
    for (RecordedChangeRow row : rows) {
      RecordedChangeRow before = was.get(row.at().line());
      String minutes = Integer.toString(row.minutes());
      if (before == null) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("press", row.press());
        cells.put("from_mold", row.from().mold());
        cells.put("from_resin", row.from().resin());
        cells.put("from_colour", row.from().colour());
        cells.put("to_mold", row.to().mold());
        cells.put("to_resin", row.to().resin());
        cells.put("to_colour", row.to().colour());
        cells.put(Figure.CHANGE.column(), minutes);
        draft.add(cells);
      } else if (row.minutes() != before.minutes()) {
        draft.set(row.at().line(), Figure.CHANGE.column(), minutes);
      }
    }
    take(draft, InputFile.RECORDED_CHANGES);
  }

  private void efficiency(OptionalDouble percent) throws IOException {
    if (percent.isPresent()) {
      PlantDraft draft = PlantDraft.of(folder);
      draft.set(Figure.EFFICIENCY.column(), figure(percent.getAsDouble()));
      take(InputFile.PLANT.fileName(), draft.path(), draft.origin(), draft.bytes());
    }
  }

  private void take(TableDraft draft, InputFile file) throws IOException {
    if (draft.isChanged()) {
      take(file.fileName(), draft.path(), draft.origin(), draft.bytes());
    }
  }

  private void take(String name, Path path, DraftOrigin origin, byte[] after) throws IOException {
    files.put(name, after);
    switch (origin) {
      case TEXT ->
          diff.writeBytes(UnifiedDiff.of(name, Optional.of(Files.readAllBytes(path)), after));
      case NONE -> diff.writeBytes(UnifiedDiff.of(name, Optional.empty(), after));
      case WIDE_TEXT -> notes.add(name + " is in UTF-16, of which no diff is made");
      case WORKBOOK ->
          notes.add(
              "%s has all rows of %s, of which no diff is made; it goes in its place"
                  .formatted(name, path.getFileName()));
    }
  }

  private static String figure(double value) {
    BigDecimal figure = BigDecimal.valueOf(value);
    return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
  }
}
