package pressweek.data.thread;

/** A series of screw threads. All four have the same 60 degree profile. */
public enum Series {
  /** Unified coarse, ASME B1.1. */
  UNC,
  /** Unified fine, ASME B1.1. */
  UNF,
  /** ISO metric with the coarse pitch, ISO 261. */
  METRIC_COARSE,
  /** ISO metric with a fine pitch, ISO 261. */
  METRIC_FINE;

  /** True when sizes are in inches and pitches are given as threads an inch. */
  public boolean isInch() {
    return this == UNC || this == UNF;
  }

  /** True for the coarse series of its kind. */
  public boolean isCoarse() {
    return this == UNC || this == METRIC_COARSE;
  }
}
