package pressweek.data.problem;

/**
 * Two insert parts that a plant knows to be taken for each other, in either order.
 *
 * @param a a part number
 * @param b another part number
 * @param reason what the plant says of them, best what tells them apart; may be empty
 */
public record NamedPair(String a, String b, String reason) {
  public NamedPair {
    if (a.equals(b)) {
      throw new IllegalArgumentException("a pair needs two parts but was " + a + " twice");
    }
  }
}
