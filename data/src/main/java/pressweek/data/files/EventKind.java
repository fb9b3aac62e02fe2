package pressweek.data.files;

/** What can happen on the floor between two plans; its word in a cell is {@code press-away}. */
public enum EventKind {
  PRESS_AWAY,
  MOLD_AWAY,
  PERSON_AWAY,
  FINISHED,
  COUNT_SHORT,
  LOT_HELD,
  RUSH,
  DROPPED,
  ON_HOLD;

  /** The word in a cell. */
  public String word() {
    return Columns.word(this);
  }

  /** True for what is away for a time. */
  public boolean away() {
    return this == PRESS_AWAY || this == MOLD_AWAY || this == PERSON_AWAY;
  }

  /** True for what says how an order line of the plan stands. */
  public boolean ofLine() {
    return this == FINISHED || this == COUNT_SHORT || this == DROPPED || this == ON_HOLD;
  }
}
