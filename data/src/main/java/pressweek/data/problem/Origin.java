package pressweek.data.problem;

/** Where an attribute of an item came from. */
public enum Origin {
  /** A part of the item code. */
  CODE,
  /** The customer's own words. */
  WORDS,
  /** A rule of the guide. */
  RULE,
  /** A default of the guide or of the plant. */
  DEFAULT,
  /** A row of bom.csv or the record of the insert itself. */
  RECORD,
  /** A column of the order line. */
  ORDER
}
