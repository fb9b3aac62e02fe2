package pressweek.data.problem;

/** What a press may do for food-grade work. */
public enum FoodUse {
  /** Food-grade work and nothing else. */
  ONLY,
  /** Kept for food-grade work; other work may use it at a price and ends the clearance. */
  KEPT,
  /** Open to all work; food-grade work needs a clearance first. */
  OPEN,
  /** Never for food-grade work. */
  NEVER
}
