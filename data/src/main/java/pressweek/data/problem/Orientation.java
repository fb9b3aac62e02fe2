package pressweek.data.problem;

/** How a press clamps: along the floor or towards it. */
public enum Orientation {
  HORIZONTAL,
  VERTICAL
}
