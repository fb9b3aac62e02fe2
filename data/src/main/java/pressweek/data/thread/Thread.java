package pressweek.data.thread;

import java.util.OptionalInt;

/**
 * A standard screw thread, right-hand, of no particular fit or tolerance class.
 *
 * @param series series that it belongs to
 * @param name designation in full: {@code 5/16-18 UNC}, {@code M8x1.25}
 * @param majorMm basic major diameter, mm
 * @param pitchMm pitch, mm
 */
// The trade has no other word for it, and nothing in this module starts a thread of the other kind.
@SuppressWarnings("JavaLangClash")
public record Thread(Series series, String name, double majorMm, double pitchMm) {
  /** An inch in mm, exactly. */
  static final double INCH_MM = 25.4;

  public Thread {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a thread must have a name");
    }
    if (!(pitchMm > 0 && majorMm > pitchMm) || Double.isInfinite(majorMm)) {
      throw new IllegalArgumentException(
          name
              + ": pitch "
              + pitchMm
              + " mm must be above 0 and below diameter "
              + majorMm
              + " mm");
    }
  }

  /** Basic major diameter, inches. */
  public double majorInch() {
    return majorMm / INCH_MM;
  }

  /** Threads an inch; empty for a metric thread, which is not given so. */
  public OptionalInt threadsPerInch() {
    return series.isInch()
        ? OptionalInt.of((int) Math.round(INCH_MM / pitchMm))
        : OptionalInt.empty();
  }
}
