package pressweek.data.working;

/** What a figure rests on. */
public enum Basis {
  /** The plant recorded it. */
  RECORDED,
  /** It was computed; the plant's record, the resin sheet and the machine manual beat it. */
  ESTIMATE,
  /** It follows from the figures beside it. */
  ARITHMETIC
}
