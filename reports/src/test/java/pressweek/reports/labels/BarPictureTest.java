package pressweek.reports.labels;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Reader;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.oned.Code128Reader;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Pictures are painted from their own numbers as a printer would, then read by a scanner. */
class BarPictureTest {
  private static final double DOTS_PER_MM = 300 / 25.4;
  private static final Pattern OBLONG =
      Pattern.compile("M([\\d.]+) ([\\d.]+)h([\\d.]+)v([\\d.]+)h(-[\\d.]+)z");

  private static Element svg(pressweek.reports.markup.Element picture)
      throws ParserConfigurationException, IOException, SAXException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(picture.toString())))
        .getDocumentElement();
  }

  private static double number(Element element, String attribute) {
    String text = element.getAttribute(attribute).replace("mm", "");
    return text.isEmpty() ? 0 : Double.parseDouble(text);
  }

  private static double moduleMm(Element svg) {
    return number(svg, "width") / Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
  }

  private static Rectangle2D oblong(Element rect) {
    return new Rectangle2D.Double(
        number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
  }

  /** The oblongs of the path: each goes right, down, back and is closed. */
  private static List<Rectangle2D> dark(Element svg) {
    String path = ((Element) svg.getElementsByTagName("path").item(0)).getAttribute("d");
    assertThat(OBLONG.matcher(path).replaceAll("")).isEmpty();
    return OBLONG
        .matcher(path)
        .results()
        .map(
            m -> {
              double[] n = new double[5];
              Arrays.setAll(n, i -> Double.parseDouble(m.group(i + 1)));
              assertThat(n[4]).isEqualTo(-n[2]);
              return (Rectangle2D) new Rectangle2D.Double(n[0], n[1], n[2], n[3]);
            })
        .toList();
  }

  private static Rectangle2D scaled(Rectangle2D r, double scale) {
    return new Rectangle2D.Double(
        r.getX() * scale, r.getY() * scale, r.getWidth() * scale, r.getHeight() * scale);
  }

  /**
   * Painted at 300 dots an inch on grey paper, so that the light edge has to come from the picture.
   */
  private static BufferedImage painted(Element svg) {
    double scale = moduleMm(svg) * DOTS_PER_MM;
    int wide = (int) Math.ceil(number(svg, "width") * DOTS_PER_MM);
    int high = (int) Math.ceil(number(svg, "height") * DOTS_PER_MM);
    BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.DARK_GRAY);
    pen.fillRect(0, 0, wide, high);
    pen.setColor(Color.WHITE);
    pen.fill(scaled(oblong((Element) svg.getElementsByTagName("rect").item(0)), scale));
    pen.setColor(Color.BLACK);
    dark(svg).forEach(d -> pen.fill(scaled(d, scale)));
    pen.dispose();
    return image;
  }

  private static Result scanned(Reader reader, BufferedImage image) throws ReaderException {
    int wide = image.getWidth();
    int high = image.getHeight();
    int[] pixels = image.getRGB(0, 0, wide, high, null, 0, wide);
    LuminanceSource source = new RGBLuminanceSource(wide, high, pixels);
    return reader.decode(
        new BinaryBitmap(new HybridBinarizer(source)),
        Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-W49/3 R017", "2026-W49/12 R1234", "A", "~ !\"#'<&>"})
  void barsAreReadBack(String text) throws Exception {
    Element svg = svg(BarPicture.code128(text, 86, 9).orElseThrow());
    assertThat(scanned(new Code128Reader(), painted(svg)).getText()).isEqualTo(text);
    assertThat(number(svg, "width")).isLessThanOrEqualTo(86);
    assertThat(moduleMm(svg)).isGreaterThanOrEqualTo(BarPicture.LEAST_MODULE_MM);
  }

  @Test
  void barsHaveTenLightModulesOnEachSide() throws Exception {
    Element svg = svg(BarPicture.code128("2026-W49/3 R017", 86, 9).orElseThrow());
    List<Rectangle2D> dark = dark(svg);
    double wide = oblong((Element) svg.getElementsByTagName("rect").item(0)).getWidth();
    assertThat(dark.get(0).getX()).isEqualTo(10);
    assertThat(wide - dark.get(dark.size() - 1).getMaxX()).isEqualTo(10);
  }

  @Test
  void whatBarsCannotHoldGivesNone() {
    assertThat(BarPicture.code128("2026-W49/3 R\u00DC1", 86, 9)).isEmpty();
    assertThat(BarPicture.code128("R\t1", 86, 9)).isEmpty();
    assertThat(BarPicture.code128("\u00F1R1", 86, 9)).isEmpty();
    assertThat(BarPicture.code128("", 86, 9)).isEmpty();
    assertThat(BarPicture.code128("R".repeat(40), 86, 9)).isEmpty();
    assertThat(BarPicture.code128("R".repeat(2_000), 86_000, 9)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan 2026-W49/3\nrun R017\npress V1\nline 4711/1\nitem LV90/M10-B/PP-SGR/A2/FC\nmold"
            + " M1\nneed by 2026-11-30T08:10+01:00\ninsert S0825 pieces 540 bin C1-2 lot L1",
        "line Bestellung \u00DC-12/\u96F7 \uD83D\uDD29",
        "x"
      })
  void squaresAreReadBack(String text) throws Exception {
    Element svg = svg(BarPicture.qr(text, 26).orElseThrow());
    assertThat(scanned(new QRCodeReader(), painted(svg)).getText()).isEqualTo(text);
    assertThat(number(svg, "width")).isLessThanOrEqualTo(26);
    assertThat(moduleMm(svg)).isGreaterThanOrEqualTo(BarPicture.LEAST_MODULE_MM);
  }

  @Test
  void squareHasFourLightModulesRoundIt() throws Exception {
    Element svg = svg(BarPicture.qr("plan 2026-W49/3", 26).orElseThrow());
    List<Rectangle2D> dark = dark(svg);
    double side = oblong((Element) svg.getElementsByTagName("rect").item(0)).getWidth();
    assertThat(dark.stream().mapToDouble(Rectangle2D::getX).min()).hasValue(4);
    assertThat(dark.stream().mapToDouble(Rectangle2D::getY).min()).hasValue(4);
    assertThat(dark.stream().mapToDouble(Rectangle2D::getMaxX).max()).hasValue(side - 4);
    assertThat(dark.stream().mapToDouble(Rectangle2D::getMaxY).max()).hasValue(side - 4);
  }

  @Test
  void tooMuchTextGivesNoSquare() {
    assertThat(BarPicture.qr("x".repeat(400), 26)).isEqualTo(Optional.empty());
    assertThat(BarPicture.qr("x".repeat(10_000), 2_600)).isEqualTo(Optional.empty());
    assertThat(BarPicture.qr("", 26)).isEqualTo(Optional.empty());
  }
}
