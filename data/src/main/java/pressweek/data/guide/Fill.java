package pressweek.data.guide;

/**
 * Characters that fill a field of fixed width. Each may be empty, which is: there is none.
 *
 * @param shorter stands where a symbol is shorter than the field
 * @param left true when {@code shorter} stands before the symbol, false when behind it
 * @param none a field of it alone does not apply: the item has no such attribute
 * @param standard a field of it alone says nothing: the defaults hold
 */
public record Fill(String shorter, boolean left, String none, String standard) {
  /** No fill characters. */
  static final Fill NOTHING = new Fill("", false, "", "");

  /** How often a fill character is written for the whole of a field. */
  static String whole(String character, int width) {
    return character.repeat(Math.max(1, width));
  }
}
