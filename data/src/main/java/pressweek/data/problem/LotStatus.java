package pressweek.data.problem;

/** Whether a lot may be used. */
public enum LotStatus {
  USABLE,
  HELD
}
