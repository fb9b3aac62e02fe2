package pressweek.data.guide;

/**
 * A code as it was written, and in the spelling in which it is compared.
 *
 * @param written as it was written
 * @param folded in capitals where capitals do not matter; as long as {@code written}
 */
record CodeText(String written, String folded) {
  /** A code in which capitals matter or not. */
  static CodeText of(String code, boolean ignoreCase) {
    String folded = Symbols.fold(code, ignoreCase);
    return new CodeText(code, folded.length() == code.length() ? folded : code);
  }

  int length() {
    return written.length();
  }
}
