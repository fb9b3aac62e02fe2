package pressweek.reports.write;

import java.util.List;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Worksheet;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Kind;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.Widths;

/** A list as a sheet of a workbook: header row that stays in sight, filter, widths by content. */
final class ListingSheet {
  private static final int MOST = 48;
  private static final int FILTER_BUTTON = 3;
  private static final String TIME_FORMAT = "yyyy-mm-dd hh:mm";

  /** The most characters that a cell of a workbook holds (ECMA-376, and Excel's limits page). */
  private static final int MOST_TEXT = 32_767;

  private ListingSheet() {}

  static void write(Worksheet sheet, Listing list) {
    List<Column> columns = list.columns();
    for (int c = 0; c < columns.size(); c++) {
      sheet.value(0, c, columns.get(c).name());
      sheet.style(0, c).bold().wrapText(true).verticalAlignment("top").set();
    }
    for (int r = 0; r < list.rows().size(); r++) {
      for (int c = 0; c < columns.size(); c++) {
        value(sheet, r + 1, c, list.rows().get(r).get(c));
      }
    }
    look(sheet, list);
  }

  private static void value(Worksheet sheet, int row, int column, Cell cell) {
    if (cell instanceof Cell.Number number) {
      sheet.value(row, column, number.value());
    } else if (cell instanceof Cell.Time time) {
      sheet.value(row, column, time.at().toLocalDateTime());
    } else {
      String text = ListingCsv.text(cell);
      if (!text.isEmpty()) {
        sheet.value(row, column, fitting(text));
      }
    }
  }

  /** Text as long as a cell may hold. */
  private static String fitting(String text) {
    return text.length() <= MOST_TEXT ? text : text.substring(0, MOST_TEXT - 1) + "\u2026";
  }

  private static void look(Worksheet sheet, Listing list) {
    List<Column> columns = list.columns();
    int last = list.rows().size();
    List<String> names = columns.stream().map(Column::name).toList();
    List<Integer> widths = Widths.of(list, MOST, names);
    for (int c = 0; c < columns.size(); c++) {
      sheet.width(c, widths.get(c) + FILTER_BUTTON);
      if (last > 0) {
        style(sheet, columns.get(c).kind(), c, last);
      }
    }
    sheet.freezePane(0, 1);
    sheet.repeatRows(0);
    sheet.setAutoFilter(0, 0, last, columns.size() - 1);
  }

  private static void style(Worksheet sheet, Kind kind, int column, int last) {
    StyleSetter style = sheet.range(1, column, last, column).style().verticalAlignment("top");
    switch (kind) {
      case TIME -> style.format(TIME_FORMAT).set();
      case TEXT, LIST -> style.wrapText(true).set();
      case NUMBER -> style.set();
    }
  }
}
