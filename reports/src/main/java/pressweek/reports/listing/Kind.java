package pressweek.reports.listing;

/** What the cells of a column hold. */
public enum Kind {
  /** Text, which may come from anywhere. */
  TEXT,
  /** Several texts. */
  LIST,
  /** A number. */
  NUMBER,
  /** A point in time. */
  TIME
}
