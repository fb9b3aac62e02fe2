package pressweek.data.files;

/** What a draft of a file comes from. */
public enum DraftOrigin {
  /** A text file. */
  TEXT,
  /** A text file in two bytes a character, of which no diff is made. */
  WIDE_TEXT,
  /** A workbook, of which no diff is made. */
  WORKBOOK,
  /** Nothing: there is no such file yet. */
  NONE;

  /** True when a diff from the file to its draft can be made. */
  public boolean hasDiff() {
    return this == TEXT || this == NONE;
  }
}
