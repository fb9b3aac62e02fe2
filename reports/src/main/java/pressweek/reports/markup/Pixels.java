package pressweek.reports.markup;

/** Lengths on the screen as text, with one decimal at most. */
public final class Pixels {
  private Pixels() {}

  /** The length with a point and without a needless decimal: {@code 12}, {@code 12.5}. */
  public static String text(double pixels) {
    long tenths = Math.round(pixels * 10);
    String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
    long rest = Math.abs(tenths) % 10;
    return rest == 0 ? whole : whole + "." + rest;
  }
}
