package pressweek.data.files.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Set;
import org.dhatim.fastexcel.reader.Cell;

/**
 * Turns a cell of a workbook into the text that a CSV file would hold: plain numbers, ISO dates.
 */
final class XlsxCell {
  /** Built-in number formats that show a date or a time of day (ISO/IEC 29500-1, 18.8.30). */
  private static final Set<Integer> DAY_FORMATS = Set.of(14, 15, 16, 17);

  private static final Set<Integer> TIME_FORMATS = Set.of(18, 19, 20, 21, 22, 45, 46, 47);

  /** Spreadsheets keep 15 digits; what is beyond is the binary fraction showing. */
  private static final MathContext DIGITS = new MathContext(15);

  private static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000_000_000_000L);
  private static final BigDecimal LAST_DAY = BigDecimal.valueOf(2_958_465);
  private static final BigDecimal MINUTES = BigDecimal.valueOf(1440);

  private final LocalDate dayZero;

  /**
   * Cells of a workbook.
   *
   * @param from1904 true when its days are counted from 1904, as old Macintosh workbooks do
   */
  XlsxCell(boolean from1904) {
    // Day 60 is a 29 February 1900 that never was, so that day 0 of any later date is 30 December
    // 1899.
    dayZero = from1904 ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
  }

  String text(Cell cell) {
    Object value = cell.getValue();
    if (value == null) {
      return "";
    }
    if (!(value instanceof BigDecimal number)) {
      return value.toString();
    }
    String format = format(cell);
    boolean time = format.contains("h");
    boolean day = format.contains("y") || format.contains("d");
    if ((day || time) && number.signum() >= 0 && number.compareTo(LAST_DAY) <= 0) {
      return date(number, time);
    }
    return plain(number);
  }

  /**
   * The letters of the format that say day or time, without its quoted text, colours and
   * conditions.
   */
  private static String format(Cell cell) {
    Integer id = cell.getDataFormatId();
    if (id != null && DAY_FORMATS.contains(id)) {
      return "yd";
    }
    if (id != null && TIME_FORMATS.contains(id)) {
      return id == 22 ? "ydh" : "h";
    }
    String code = cell.getDataFormatString();
    if (code == null) {
      return "";
    }
    String firstSection = code.split(";", 2)[0];
    return firstSection.replaceAll("\"[^\"]*\"|\\[[^\\]]*]|\\\\.|_.", "").toLowerCase(Locale.ROOT);
  }

  private String date(BigDecimal number, boolean time) {
    BigDecimal days = number.setScale(0, RoundingMode.DOWN);
    LocalDate date = dayZero.plusDays(days.longValueExact());
    if (!time) {
      return date.toString();
    }
    long minutes =
        number.subtract(days).multiply(MINUTES).setScale(0, RoundingMode.HALF_UP).longValueExact();
    LocalDateTime at = date.atStartOfDay().plusMinutes(minutes);
    return at.toString();
  }

  /** The number without exponent; numbers that no column takes stay as they are written. */
  private static String plain(BigDecimal number) {
    if (number.abs().compareTo(LARGEST) > 0 || number.scale() > 30) {
      return number.round(DIGITS).toString();
    }
    return number.round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
