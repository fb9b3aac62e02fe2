package pressweek.data.problem;

/** What the barrel and screw of a press are made for. */
public enum Barrel {
  STANDARD,
  WEAR_RESISTANT,
  THERMOSET
}
