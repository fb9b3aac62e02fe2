package pressweek.data.thread;

import java.util.OptionalDouble;

/** A place in a text that moves on as numbers, signs and words are taken from it. */
final class Scanner {
  private final String text;
  private int at;

  Scanner(String text) {
    this.text = text;
  }

  /** Where it stands, to go back to. */
  int mark() {
    return at;
  }

  /** Goes back. */
  void reset(int mark) {
    at = mark;
  }

  /** True at the end. */
  boolean atEnd() {
    return at >= text.length();
  }

  /** The next character; a space at the end. */
  char peek() {
    return at < text.length() ? text.charAt(at) : ' ';
  }

  /** Takes a sign when it is the next. */
  boolean take(char sign) {
    if (!atEnd() && peek() == sign) {
      at++;
      return true;
    }
    return false;
  }

  /** Takes spaces. */
  boolean takeSpaces() {
    return take(' ');
  }

  /** Takes the letters ahead; none when there are none. */
  String word() {
    int start = at;
    while (isLetter(peek())) {
      at++;
    }
    return text.substring(start, at);
  }

  /** Takes everything up to the next space or dash. */
  String token() {
    int start = at;
    while (!atEnd() && peek() != ' ' && peek() != '-') {
      at++;
    }
    return text.substring(start, at);
  }

  /** Takes a whole number; empty and unmoved without one. */
  OptionalDouble whole() {
    double value = 0;
    int start = at;
    while (isDigit(peek())) {
      value = value * 10 + (peek() - '0');
      at++;
    }
    return at == start ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** Takes a number with a point or a comma, or a whole one; empty and unmoved without one. */
  OptionalDouble decimal() {
    int start = at;
    while (isDigit(peek())) {
      at++;
    }
    if ((peek() == '.' || peek() == ',')
        && at + 1 < text.length()
        && isDigit(text.charAt(at + 1))) {
      at++;
      while (isDigit(peek())) {
        at++;
      }
    }
    return at == start
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text.substring(start, at).replace(',', '.')));
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z';
  }
}
