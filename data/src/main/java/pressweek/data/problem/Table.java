package pressweek.data.problem;

/** What carries the lower mold half of a press. */
public enum Table {
  FIXED,
  SHUTTLE,
  ROTARY
}
