package pressweek.reports.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import pressweek.reports.compare.Certainty;
import pressweek.reports.compare.CompareLists;
import pressweek.reports.compare.ScenarioSentence;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.listing.Listing;

/** Everything that a comparison is written as: pages, a workbook and a list. */
public final class CompareFiles {
  private static final int WIDE = 110;

  private CompareFiles() {}

  /** The content of every file by its name. */
  public static Map<String, byte[]> of(SideBySide all) {
    List<Listing> lists = CompareLists.of(all);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("compare.html", utf8(ComparePage.html(all)));
    files.put("meeting.html", utf8(ComparePage.meeting(all)));
    files.put("compare.xlsx", workbook(all, lists));
    files.put("compare.csv", utf8(ListingCsv.csv(lists.get(0))));
    return files;
  }

  private static byte[] workbook(SideBySide all, List<Listing> lists) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Pressweek", "1.0")) {
      inShort(sheet(workbook, "in short", "In short"), all);
      for (Listing list : lists) {
        ListingSheet.write(sheet(workbook, list.name(), list.title()), list);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot fail", e);
    }
    return out.toByteArray();
  }

  private static Worksheet sheet(Workbook workbook, String name, String title) {
    Worksheet sheet = workbook.newWorksheet(name);
    sheet.pageOrientation("landscape");
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
    sheet.header(title, Position.CENTER, "Arial", 9);
    sheet.header("printed &D &T", Position.RIGHT, "Arial", 9);
    sheet.footer("sheet &P of &N", Position.RIGHT, "Arial", 9);
    return sheet;
  }

  private static void inShort(Worksheet sheet, SideBySide all) {
    sheet.width(0, WIDE);
    int row = 0;
    for (String sentence : ScenarioSentence.all(all)) {
      row = line(sheet, row, sentence);
    }
    row = line(sheet, row, all.effort());
    line(sheet, row, Certainty.method(all.seeds()));
  }

  private static int line(Worksheet sheet, int row, String text) {
    sheet.value(row, 0, FormulaGuard.guarded(text));
    sheet.style(row, 0).wrapText(true).verticalAlignment("top").set();
    return row + 1;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
