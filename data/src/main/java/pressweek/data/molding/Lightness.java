package pressweek.data.molding;

import java.util.OptionalDouble;

/**
 * CIE L* of a colour on screen: 0 is black, 100 is white.
 *
 * <p>sRGB by IEC 61966-2-1 with the luminance coefficients of BT.709 to seven places, L* by CIE 15,
 * white point D65.
 */
public final class Lightness {
  private static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;

  private Lightness() {}

  /** L* of {@code RRGGBB}; empty when the text is something else. */
  public static OptionalDouble ofSrgb(String rrggbb) {
    if (!rrggbb.matches("[0-9A-Fa-f]{6}")) {
      return OptionalDouble.empty();
    }
    double luminance =
        0.2126729 * linear(rrggbb.substring(0, 2))
            + 0.7151522 * linear(rrggbb.substring(2, 4))
            + 0.0721750 * linear(rrggbb.substring(4, 6));
    return OptionalDouble.of(
        luminance > EPSILON ? Math.min(100, 116 * Math.cbrt(luminance) - 16) : KAPPA * luminance);
  }

  private static double linear(String hex) {
    double channel = Integer.parseInt(hex, 16) / 255.0;
    return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}
