package pressweek.reports.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import pressweek.data.plan.Head;
import pressweek.reports.listing.Listing;

/**
 * A plan as one workbook (XLSX): a first sheet that says who the plan is, then a sheet a list.
 * Numbers are numbers and times are dates on the plant's clock. Text is as in the CSV lists, so
 * that a sheet that is saved as CSV and opened again runs no formula either.
 */
final class PlanWorkbook {
  private static final String FONT = "Arial";
  private static final int POINTS = 9;
  private static final int LEFT_TEXT = 90;
  private static final int CENTRE_TEXT = 50;
  private static final int FOOT_TEXT = 170;

  private PlanWorkbook() {}

  /** The workbook's bytes. */
  static byte[] bytes(Edition edition, List<Listing> lists) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Pressweek", "1.0")) {
      Worksheet first = sheet(workbook, edition, "plan", "Plan", "");
      FirstSheet.write(first, edition);
      for (Listing list : lists) {
        ListingSheet.write(
            sheet(workbook, edition, list.name(), list.title(), list.paper().caution()), list);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot fail", e);
    }
    return out.toByteArray();
  }

  /** A sheet that says on paper, too, who the plan is and when it was printed. */
  private static Worksheet sheet(
      Workbook workbook, Edition edition, String name, String title, String caution) {
    Head head = edition.plan().head();
    Worksheet sheet = workbook.newWorksheet(name);
    sheet.pageOrientation("landscape");
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
    String replaces = head.replaces().isEmpty() ? "" : ", replaces " + head.replaces();
    String broken = edition.sound() ? "" : " - BREAKS HARD RULES, do not run";
    String who = "Plan " + head.number() + replaces + broken;
    sheet.header(plain(who, LEFT_TEXT), Position.LEFT, FONT, POINTS);
    sheet.header(plain(title, CENTRE_TEXT), Position.CENTER, FONT, POINTS);
    sheet.header("printed &D &T", Position.RIGHT, FONT, POINTS);
    sheet.footer(plain(caution, FOOT_TEXT), Position.LEFT, FONT, POINTS);
    sheet.footer("sheet &P of &N", Position.RIGHT, FONT, POINTS);
    return sheet;
  }

  /**
   * Text for the head of a sheet, which holds 255 characters in all; there {@code &} begins a code
   * and doubled is itself.
   */
  private static String plain(String text, int most) {
    String whole = text.replace("&", "&&");
    return whole.length() <= most ? whole : whole.substring(0, most - 1) + "\u2026";
  }
}
