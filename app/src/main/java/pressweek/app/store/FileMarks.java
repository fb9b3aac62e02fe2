package pressweek.app.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.FileMark;

/**
 * Which contents of each input file were taken, when and by whom; earlier ones stay in the book.
 */
public final class FileMarks {
  private final Database database;

  FileMarks(Database database) {
    this.database = database;
  }

  /**
   * Notes that these contents were taken, all or none. A file whose contents are the last that were
   * taken gets no new line.
   *
   * @param sha256ByFile SHA-256 in hexadecimal by name of file
   */
  public void take(Map<String, String> sha256ByFile, Change change) throws StoreTrouble {
    database.write(
        handle -> {
          Map<String, FileMark> former = latest();
          for (Map.Entry<String, String> file : sha256ByFile.entrySet()) {
            FileMark mark = former.get(file.getKey());
            if (mark != null && mark.sha256().equals(file.getValue())) {
              continue;
            }
            handle.execute(
                "INSERT INTO file_mark (file, sha256, made_by, made_at) VALUES (?, ?, ?, ?)",
                file.getKey(),
                file.getValue(),
                change.by(),
                change.at().toEpochMilli());
            History.write(handle, "took " + file.getKey(), "file " + file.getKey(), change);
          }
          return former;
        });
  }

  /** What was taken last of each file, by its name. */
  public Map<String, FileMark> latest() throws StoreTrouble {
    List<FileMark> marks =
        database.read(
            handle ->
                handle
                    .createQuery(
                        """
                        SELECT * FROM file_mark
                        WHERE id IN (SELECT max(id) FROM file_mark GROUP BY file) ORDER BY id
                        """)
                    .map(
                        (row, context) ->
                            new FileMark(
                                row.getString("file"),
                                row.getString("sha256"),
                                row.getString("made_by"),
                                Rows.instant(row, "made_at")))
                    .list());
    Map<String, FileMark> latest = new LinkedHashMap<>();
    marks.forEach(mark -> latest.put(mark.file(), mark));
    return latest;
  }
}
