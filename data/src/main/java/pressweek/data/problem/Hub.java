package pressweek.data.problem;

/** Whether the hub of a head is hollowed out (cored) or full (solid, cleanable). */
public enum Hub {
  CORED,
  SOLID
}
