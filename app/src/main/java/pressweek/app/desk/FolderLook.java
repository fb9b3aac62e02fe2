package pressweek.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/** The plant's folder, read anew when a file of it is not as it was. */
public final class FolderLook {
  private final Path path;
  private final int nowMin;
  private List<String> stamps = List.of();
  private Look last;

  /**
   * A folder as it was read.
   *
   * @param folder its rows
   * @param week the week made of it
   */
  public record Look(Folder folder, WeekResult week) {}

  /**
   * Reads a folder.
   *
   * @param path the folder
   * @param nowMin the present, for a plant that does not say when its plan starts
   * @throws IOException when it cannot be read at all
   */
  public FolderLook(Path path, int nowMin) throws IOException {
    this.path = path;
    this.nowMin = nowMin;
    stamps = stamps(path);
    last = read();
  }

  /** The folder. */
  public Path path() {
    return path;
  }

  /** The present, for a plant that does not say when its plan starts. */
  int nowMin() {
    return nowMin;
  }

  /** The folder as it is now. */
  public synchronized Look look() throws IOException {
    List<String> now = stamps(path);
    if (!now.equals(stamps)) {
      last = read();
      stamps = now;
    }
    return last;
  }

  private Look read() throws IOException {
    Folder folder = FolderReader.read(path);
    return new Look(folder, Week.build(folder, nowMin));
  }

  /** Name, size and time of every file. */
  private static List<String> stamps(Path folder) throws IOException {
    List<String> stamps = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
        stamps.add(file.getFileName() + " " + a.size() + " " + a.lastModifiedTime());
      }
    }
    return stamps;
  }
}
