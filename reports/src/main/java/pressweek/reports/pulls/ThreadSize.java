package pressweek.reports.pulls;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a thread designation says of a thread: its basic major diameter and its pitch. Metric
 * designations by ISO 261 ({@code M8x1.25}; {@code M8} alone is the coarse pitch of ISO 262), inch
 * designations by ASME B1.1 ({@code 5/16-18 UNC}, {@code #10-24 UNC}).
 *
 * @param majorMm basic major diameter, mm
 * @param pitchMm pitch, mm; empty when the designation does not say
 * @param pitchWritten true when the pitch stands in the designation in mm
 */
public record ThreadSize(double majorMm, OptionalDouble pitchMm, boolean pitchWritten) {
  /**
   * Two threads whose major diameters differ by no more than this share of the larger are easily
   * taken for each other.
   */
  private static final double LOOK_ALIKE = 0.06;

  private static final double INCH_MM = 25.4;

  /**
   * A whole number of this many threads an inch or more belongs to a numbered size, written without
   * its #.
   */
  private static final double NUMBERED_TPI = 24;

  private static final Pattern METRIC =
      Pattern.compile(
          "M\\s?(\\d+(?:\\.\\d+)?)(?:\\s?[xX\u00D7*-]\\s?(\\d+(?:\\.\\d+)?)(?![\\d.]*[A-Za-z]))?"
              + "(?:[-\\s].*)?");

  private static final Pattern INCH =
      Pattern.compile(
          "(?:(?:#|No\\.?)\\s?(?<number>\\d{1,2})|(?:(?<whole>\\d+)[\\s-])?(?<over>\\d+)/(?<under>\\d+)"
              + "|(?<decimal>\\d*\\.\\d+|\\d+))(?:\"|\\s?in)?(?:\\s?-\\s?(?<tpi>\\d+(?:\\.\\d+)?))?"
              + "(?:-LH|\\s?(?<series>UN|W|BSW|BSF).*)?");

  /** Coarse pitches, mm, of ISO 262 by nominal diameter. */
  private static final Map<Double, Double> COARSE =
      Map.ofEntries(
          Map.entry(3.0, 0.5),
          Map.entry(3.5, 0.6),
          Map.entry(4.0, 0.7),
          Map.entry(5.0, 0.8),
          Map.entry(6.0, 1.0),
          Map.entry(7.0, 1.0),
          Map.entry(8.0, 1.25),
          Map.entry(10.0, 1.5),
          Map.entry(12.0, 1.75),
          Map.entry(14.0, 2.0),
          Map.entry(16.0, 2.0),
          Map.entry(18.0, 2.5),
          Map.entry(20.0, 2.5));

  /** Reads a designation; empty when it is neither metric nor inch, as with a pipe thread. */
  public static Optional<ThreadSize> read(String designation) {
    String text = designation.trim();
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      return Optional.of(metric(metric));
    }
    Matcher inch = INCH.matcher(text);
    boolean matches = inch.matches() && (inch.group("tpi") != null || inch.group("series") != null);
    return matches ? inch(inch) : Optional.empty();
  }

  private static ThreadSize metric(Matcher matcher) {
    double major = Double.parseDouble(matcher.group(1));
    if (matcher.group(2) != null) {
      double pitch = Double.parseDouble(matcher.group(2));
      return new ThreadSize(major, OptionalDouble.of(pitch), true);
    }
    Double coarse = COARSE.get(major);
    OptionalDouble pitch = coarse == null ? OptionalDouble.empty() : OptionalDouble.of(coarse);
    return new ThreadSize(major, pitch, false);
  }

  private static Optional<ThreadSize> inch(Matcher matcher) {
    OptionalDouble tpi =
        matcher.group("tpi") == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(matcher.group("tpi")));
    double major = majorInch(matcher, tpi.orElse(0));
    if (!(major > 0) || Double.isInfinite(major) || tpi.isPresent() && tpi.getAsDouble() <= 0) {
      return Optional.empty();
    }
    OptionalDouble pitch =
        tpi.isPresent() ? OptionalDouble.of(INCH_MM / tpi.getAsDouble()) : OptionalDouble.empty();
    return Optional.of(new ThreadSize(major * INCH_MM, pitch, false));
  }

  private static double majorInch(Matcher matcher, double tpi) {
    if (matcher.group("number") != null) {
      return numbered(Double.parseDouble(matcher.group("number")));
    }
    if (matcher.group("decimal") != null) {
      double size = Double.parseDouble(matcher.group("decimal"));
      boolean isNumber = !matcher.group("decimal").contains(".") && tpi >= NUMBERED_TPI;
      return isNumber ? numbered(size) : size;
    }
    double whole = matcher.group("whole") == null ? 0 : Double.parseDouble(matcher.group("whole"));
    double over = Double.parseDouble(matcher.group("over"));
    return whole + over / Double.parseDouble(matcher.group("under"));
  }

  /** Major diameter of a numbered size by ASME B1.1: 0.060 in and 0.013 in a step. */
  private static double numbered(double number) {
    return 0.060 + 0.013 * number;
  }

  /** True when the two are different threads that are easily taken for each other. */
  public boolean looksLike(ThreadSize other) {
    double larger = Math.max(majorMm, other.majorMm);
    return !isSame(other) && Math.abs(majorMm - other.majorMm) <= LOOK_ALIKE * larger;
  }

  private boolean isSame(ThreadSize other) {
    return majorMm == other.majorMm && pitchMm.equals(other.pitchMm);
  }

  /**
   * The designation with its pitch in mm: {@code 5/16-18 UNC (pitch 1.411 mm)}. One that says it
   * already, or is not read, stays as it is.
   */
  public static String inFull(String designation) {
    Optional<ThreadSize> size = read(designation);
    if (size.isEmpty() || size.get().pitchWritten || size.get().pitchMm.isEmpty()) {
      return designation;
    }
    String pitch = String.format(Locale.ROOT, "%.3f", size.get().pitchMm.getAsDouble());
    return designation + " (pitch " + pitch.replaceAll("\\.?0+$", "") + " mm)";
  }
}
