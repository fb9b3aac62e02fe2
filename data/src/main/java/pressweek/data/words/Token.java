package pressweek.data.words;

import java.math.BigDecimal;

/**
 * A word, a number or a sign of a text.
 *
 * @param kind which of them
 * @param start its first character in the text
 * @param end the character after it
 * @param text in small letters; a fraction of one character as in {@code 1/2}
 * @param gap true when white space stands before it
 */
record Token(Kind kind, int start, int end, String text, boolean gap) {
  /** More digits are no size and no number of pieces. */
  private static final int MOST_DIGITS = 9;

  /** Kinds of token. */
  enum Kind {
    WORD,
    NUMBER,
    SIGN
  }

  boolean isWord() {
    return kind == Kind.WORD;
  }

  boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  boolean isSign() {
    return kind == Kind.SIGN;
  }

  boolean is(String other) {
    return text.equals(other);
  }

  /** True for a number that a size or a quantity can be. */
  boolean isReadable() {
    return isNumber() && text.length() <= MOST_DIGITS;
  }

  /** True for a readable number without point or fraction. */
  boolean isWhole() {
    return isReadable() && text.indexOf('.') < 0 && !isFraction();
  }

  /** True for a fraction of one character. */
  boolean isFraction() {
    return text.indexOf('/') > 0;
  }

  /** The number; for readable ones that are no fraction. */
  BigDecimal value() {
    return new BigDecimal(text);
  }
}
