package pressweek.data.plan;

/** What a change exchanges. */
public enum ChangeKind {
  MOLD,
  TOOLING,
  RESIN,
  COLOUR,
  FOOD_CLEARANCE
}
