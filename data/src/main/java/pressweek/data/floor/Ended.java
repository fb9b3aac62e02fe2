package pressweek.data.floor;

/**
 * An order line of an earlier plan that the next one has no run of, since there is nothing left to
 * make.
 *
 * @param line {@code order/line}
 * @param how why there is nothing left to make
 * @param because where that is known from, in words
 */
public record Ended(String line, How how, String because) {
  /** Why there is nothing left to make of an order line. */
  public enum How {
    /** Its run had ended by the earlier plan. */
    DONE,
    /** The floor says that it has ended. */
    FINISHED,
    /** It is no longer wanted. */
    DROPPED;

    /** As a person reads it. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
