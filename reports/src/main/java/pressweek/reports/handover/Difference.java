package pressweek.reports.handover;

/** What is not as it was in the plan that is replaced. */
public enum Difference {
  ADDED("added"),
  GONE("gone"),
  PRESS("press"),
  MOLD("mold"),
  START("start"),
  QUANTITY("quantity"),
  INSERTS("inserts"),
  NEWLY_LATE("newly late"),
  NO_LONGER_LATE("no longer late"),
  NEWLY_UNPLACED("newly unplaced");

  private final String words;

  Difference(String words) {
    this.words = words;
  }

  /** The difference as a person reads it. */
  public String words() {
    return words;
  }
}
