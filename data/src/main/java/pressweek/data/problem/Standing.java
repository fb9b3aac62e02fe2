package pressweek.data.problem;

/** Why a mold may run on a press, from the strongest reason to the weakest. */
public enum Standing {
  /** The plant's record says that the mold has run well on this press. */
  PROVEN,
  /** The plant's record allows it. */
  ALLOWED,
  /** No record, but every check that has data passes. */
  CHECKED,
  /** No record and nothing to check with. */
  UNCHECKED
}
