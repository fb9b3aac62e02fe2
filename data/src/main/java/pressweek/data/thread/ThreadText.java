package pressweek.data.thread;

import java.util.OptionalDouble;

/**
 * What the text of a thread says, before it is looked up.
 *
 * @param inch true for inches and threads an inch, false for mm
 * @param size diameter, inches or mm
 * @param rounded true when the diameter is a decimal of an inch, which people round
 * @param pitch threads an inch, or pitch in mm; empty when not written
 * @param word what is said of the series
 * @param leftHand true when it says so
 * @param whole true when nothing was left over
 */
record ThreadText(
    boolean inch,
    double size,
    boolean rounded,
    OptionalDouble pitch,
    Word word,
    boolean leftHand,
    boolean whole) {
  /** What a text says of the series. */
  enum Word {
    /** Nothing. */
    NONE,
    COARSE,
    FINE,
    /** Whitworth (BSW, BSF), whose profile has 55 degrees: another thread whatever its size. */
    WHITWORTH,
    /** Another series, such as UNEF, UNS or UNJ. */
    OTHER
  }

  /**
   * A metric pitch of ISO 261 is at most this share of the diameter (M1x0.25); more is a length.
   */
  private static final double LARGEST_PITCH = 0.25;

  /** Diameter, mm. */
  double majorMm() {
    return inch ? size * Thread.INCH_MM : size;
  }

  /** Pitch, mm, as written. */
  OptionalDouble pitchMm() {
    return inch && pitch.isPresent()
        ? OptionalDouble.of(Thread.INCH_MM / pitch.getAsDouble())
        : pitch;
  }

  /** True when the number after a metric size is too large for a pitch, as in M8x30. */
  boolean hasLength() {
    return !inch && pitch.isPresent() && pitch.getAsDouble() > LARGEST_PITCH * size;
  }

  /** True when it can be one of the standard threads. */
  boolean isPlain() {
    return whole && !leftHand && word != Word.WHITWORTH && word != Word.OTHER;
  }

  /** True when a series can be meant, as far as the text names it. */
  boolean allows(Series series) {
    return switch (word) {
      case NONE -> true;
      case COARSE -> series.isCoarse();
      case FINE -> !series.isCoarse();
      case WHITWORTH, OTHER -> false;
    };
  }
}
