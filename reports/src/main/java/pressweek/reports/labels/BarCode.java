package pressweek.reports.labels;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;
import java.util.Optional;

/** Text as a bar code: dark and light modules, without the light edge that it needs round it. */
final class BarCode {
  /** Light modules on each side of a Code 128 symbol, by ISO/IEC 15417. */
  static final int QUIET_CODE_128 = 10;

  /** Light modules on each side of a QR symbol, by ISO/IEC 18004. */
  static final int QUIET_QR = 4;

  private BarCode() {}

  /**
   * A Code 128 symbol, one module high. Empty for text that it cannot hold here: none at all, or
   * with a character outside printable ASCII.
   */
  static Optional<BitMatrix> code128(String text) {
    boolean plain = !text.isEmpty() && text.chars().allMatch(c -> c >= ' ' && c <= '~');
    if (!plain || text.length() > 80) {
      return Optional.empty();
    }
    Map<EncodeHintType, ?> hints = Map.of(EncodeHintType.MARGIN, 0);
    return Optional.of(new Code128Writer().encode(text, BarcodeFormat.CODE_128, 1, 1, hints));
  }

  /**
   * A QR symbol of UTF-8 text that bears a loss of 15 %. Empty when there is too much of it.
   *
   * @param mostModules the most modules that its side may have
   */
  static Optional<BitMatrix> qr(String text, int mostModules) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Map<EncodeHintType, ?> hints =
        Map.of(
            EncodeHintType.MARGIN,
            0,
            EncodeHintType.CHARACTER_SET,
            "UTF-8",
            EncodeHintType.ERROR_CORRECTION,
            ErrorCorrectionLevel.M);
    try {
      BitMatrix code = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 1, 1, hints);
      return code.getWidth() <= mostModules ? Optional.of(code) : Optional.empty();
    } catch (WriterException e) {
      return Optional.empty();
    }
  }
}
