package pressweek.data.problem;

/**
 * In what amounts pieces leave their bin.
 *
 * @param by the smallest amount that is brought
 * @param cartonPieces pieces of a carton in which inserts come; counts only by cartons
 */
public record Bringing(By by, int cartonPieces) {
  /** The smallest amount that is brought. */
  public enum By {
    /** As many pieces as the run takes. */
    PIECES,
    /** Whole cartons. */
    CARTONS,
    /** Whole bins. */
    BINS
  }

  /** As many as the run takes, which is what a plant does that says nothing. */
  public static final Bringing BY_PIECES = new Bringing(By.PIECES, 1);

  public Bringing {
    if (cartonPieces < 1) {
      throw new IllegalArgumentException("a carton holds at least 1 piece, not " + cartonPieces);
    }
  }
}
