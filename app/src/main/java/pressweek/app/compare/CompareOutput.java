package pressweek.app.compare;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.files.AtomicFile;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.write.CompareFiles;

/** Writes a comparison: its pages, its workbook and list, and the best plan of each scenario. */
public final class CompareOutput {
  private CompareOutput() {}

  /**
   * Writes it.
   *
   * @param out folder to write to
   * @param nowMin the present, minutes since 1970 UTC
   * @return what was written, for a person: files, and the folder of each plan
   * @throws IOException when something cannot be written
   */
  public static List<String> write(SideBySide all, Path out, int nowMin) throws IOException {
    List<String> written = new ArrayList<>();
    EarlierPlans none = new EarlierPlans(Optional.empty(), List.of(), List.of());
    for (Tried tried : all.shown()) {
      Path folder = out.resolve(tried.folder());
      WeekPlanner.Audited best =
          new WeekPlanner.Audited(tried.best().orElseThrow().book().plan(), List.of());
      WeekPlanner.write(best, none, folder, nowMin);
      written.add(folder + File.separator);
    }
    int at = 0;
    for (Map.Entry<String, byte[]> file : CompareFiles.of(all).entrySet()) {
      Path path = out.resolve(file.getKey());
      AtomicFile.write(path, file.getValue());
      written.add(at++, path.toString());
    }
    return written;
  }
}
