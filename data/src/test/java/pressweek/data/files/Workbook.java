package pressweek.data.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes the bytes of a small XLSX workbook with one sheet, from the sheet's rows as XML. */
final class Workbook {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

  private boolean styles = true;
  private String properties = "";
  private final StringBuilder rows = new StringBuilder();

  /**
   * Formats by the number that a cell names: general, date, date and time, a date of the user's
   * own, text.
   */
  private static final String FORMATS =
      """
      <styleSheet xmlns="%s"><numFmts count="2"><numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy"/>
      <numFmt numFmtId="165" formatCode="0.00&quot; days&quot;"/></numFmts>
      <cellXfs count="5"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="22"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs>
      </styleSheet>
      """
          .formatted(MAIN);

  /** Adds a row of cells, each as XML made by the methods below. */
  Workbook row(int number, String... cells) {
    rows.append("<row r=\"")
        .append(number)
        .append("\">")
        .append(String.join("", cells))
        .append("</row>");
    return this;
  }

  /** Adds raw XML to the rows. */
  Workbook raw(String xml) {
    rows.append(xml);
    return this;
  }

  Workbook withoutStyles() {
    styles = false;
    return this;
  }

  Workbook from1904() {
    properties = "<workbookPr date1904=\"1\"/>";
    return this;
  }

  static String text(String ref, String text) {
    return "<c r=\"" + ref + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  static String number(String ref, String value) {
    return "<c r=\"" + ref + "\"><v>" + value + "</v></c>";
  }

  static String styled(String ref, int style, String value) {
    return "<c r=\"" + ref + "\" s=\"" + style + "\"><v>" + value + "</v></c>";
  }

  private static final String TYPES =
      """
      <Types xmlns="%scontent-types">
      <Override PartName="/xl/workbook.xml"
        ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>%s</Types>
      """;
  private static final String STYLES =
      """
      <Override PartName="/xl/styles.xml"
        ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>
      """;
  private static final String BOOK =
      """
      <workbook xmlns="%s" xmlns:r="%s">%s<sheets><sheet name="Orders" sheetId="1" r:id="rId1"/></sheets></workbook>
      """;
  private static final String RELATIONS =
      """
      <Relationships xmlns="%srelationships">
      <Relationship Id="rId1" Type="%s/worksheet" Target="worksheets/sheet1.xml"/></Relationships>
      """;
  private static final String SHEET =
      """
      <worksheet xmlns="%s"><sheetData>%s</sheetData></worksheet>
      """;

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      add(zip, "[Content_Types].xml", TYPES.formatted(PACKAGE, styles ? STYLES : ""));
      add(zip, "xl/workbook.xml", BOOK.formatted(MAIN, OFFICE, properties));
      add(zip, "xl/_rels/workbook.xml.rels", RELATIONS.formatted(PACKAGE, OFFICE));
      if (styles) {
        add(zip, "xl/styles.xml", FORMATS);
      }
      add(zip, "xl/worksheets/sheet1.xml", SHEET.formatted(MAIN, rows));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void add(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
