package pressweek.data.files;

/**
 * A row of {@code lookalikes.csv}: two insert parts that are taken for each other.
 *
 * @param at where it stands
 * @param a insert part
 * @param b another
 * @param reason why, best what tells them apart; may be empty
 */
public record LookAlikeRow(At at, String a, String b, String reason) {
  /** The one whose number comes first, so that a pair is known whichever way it is written. */
  String first() {
    return a.compareTo(b) <= 0 ? a : b;
  }

  /** The other. */
  String second() {
    return a.compareTo(b) <= 0 ? b : a;
  }
}
