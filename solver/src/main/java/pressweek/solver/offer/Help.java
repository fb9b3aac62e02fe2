package pressweek.solver.offer;

/**
 * Something that the plant could change so that a new line can be had better.
 *
 * @param what what to change, in words
 * @param gain what is better then
 * @param offer the offer then, against the plan that stands without the change; audited. What the
 *     change itself costs only the plant knows, and is not counted
 */
public record Help(String what, Gain gain, Offer offer) {
  /** What is better, the best first. */
  public enum Gain {
    /** It is there by the time of need, and nobody is made late. */
    IN_TIME,
    /** It is there by the time of need, which it is not without the change; others pay. */
    BY_NEED,
    /** It is there sooner with nobody made late. */
    SOONER,
    /** It is there by the time of need, fewer lines pay, and it costs no more. */
    FEWER_PAY
  }
}
