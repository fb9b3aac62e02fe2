package pressweek.data.words;

/**
 * What a piece of the words can say, and how doubtful that is.
 *
 * @param claim what it says
 * @param cost 0 when there is no doubt
 */
record Sense(Claim claim, int cost) {
  /** A sense that is more doubtful by an amount. */
  Sense dearer(int by) {
    return by == 0 ? this : new Sense(claim, cost + by);
  }
}
