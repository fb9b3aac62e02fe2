package pressweek.data.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A text as words, numbers and signs; asked for one beyond its ends it answers an empty sign. */
final class Tokens {
  private static final String VULGAR = "¼½¾⅛⅜⅝⅞";
  private static final List<String> VULGAR_SAYS =
      List.of("1/4", "1/2", "3/4", "1/8", "3/8", "5/8", "7/8");
  private static final String SIGNS = "/-\"'#.,+&:;%$@=()";

  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private final Token none;
  private int at;
  private boolean gap = true;

  private Tokens(String text) {
    this.text = text;
    this.none = new Token(Token.Kind.SIGN, text.length(), text.length(), "", true);
  }

  /** The tokens of a text, the first {@code most} of them. */
  static Tokens of(String text, int most) {
    Tokens tokens = new Tokens(text);
    while (tokens.at < text.length() && tokens.tokens.size() < most) {
      tokens.next();
    }
    return tokens;
  }

  /** All the tokens of a text. */
  static Tokens of(String text) {
    return of(text, Integer.MAX_VALUE);
  }

  int size() {
    return tokens.size();
  }

  Token at(int index) {
    return index >= 0 && index < tokens.size() ? tokens.get(index) : none;
  }

  /** True for the sign that multiplies, as in {@code M8 x 30}. */
  boolean isTimes(int index) {
    return at(index).isWord() && at(index).is("x");
  }

  /** True when a token follows the one before it without white space. */
  boolean joined(int index) {
    return index > 0 && index < tokens.size() && !at(index).gap();
  }

  /** The text itself from one token up to another, which is left out. */
  String original(int from, int to) {
    return from < to ? text.substring(at(from).start(), at(to - 1).end()) : "";
  }

  String text() {
    return text;
  }

  private void next() {
    char c = text.charAt(at);
    if (isDigit(c) || c == '.' && startsDecimal()) {
      number();
    } else if (VULGAR.indexOf(c) >= 0) {
      add(Token.Kind.NUMBER, at + 1, VULGAR_SAYS.get(VULGAR.indexOf(c)));
    } else if ((c == 'Ø' || c == 'ø' || c == '⌀' || c == '∅') && isDiameter()) {
      add(Token.Kind.WORD, at + 1, "dia");
    } else if (Character.isLetterOrDigit(c)) {
      word();
    } else if (c == '№') {
      add(Token.Kind.WORD, at + 1, "no");
    } else {
      sign(c);
    }
  }

  private void add(Token.Kind kind, int end, String said) {
    tokens.add(new Token(kind, at, end, said, gap));
    at = end;
    gap = false;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private char peek(int index) {
    return index < text.length() ? text.charAt(index) : ' ';
  }

  private boolean startsDecimal() {
    boolean afterDigit = at > 0 && isDigit(text.charAt(at - 1));
    return isDigit(peek(at + 1)) && !afterDigit;
  }

  private boolean isDiameter() {
    int next = at + 1;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    return isDigit(peek(next)) || !Character.isLetter(peek(at + 1));
  }

  private void number() {
    int end = digits(at);
    if (peek(end) == '.' && isDigit(peek(end + 1))) {
      end = digits(end + 1);
    }
    String said = text.substring(at, end);
    add(Token.Kind.NUMBER, end, said);
  }

  private int digits(int from) {
    int end = from;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  /** A word; an apostrophe within is left out, as in {@code customer's}. */
  private void word() {
    StringBuilder said = new StringBuilder();
    int end = at;
    while (end < text.length()) {
      char c = text.charAt(end);
      boolean apostrophe =
          (c == '\'' || c == '’') && Character.isLetter(peek(end + 1)) && said.length() > 1;
      if (!apostrophe && (!Character.isLetterOrDigit(c) || isDigit(c) || VULGAR.indexOf(c) >= 0)) {
        break;
      }
      if (!apostrophe) {
        said.append(c);
      }
      end++;
    }
    add(Token.Kind.WORD, end, said.toString().toLowerCase(Locale.ROOT));
  }

  private void sign(char c) {
    String said = plain(c);
    boolean twice = said.equals("'") && plain(peek(at + 1)).equals("'");
    if (said.equals("x")) {
      add(Token.Kind.WORD, at + 1, said);
    } else if (twice) {
      add(Token.Kind.SIGN, at + 2, "\"");
    } else if (!said.isEmpty()) {
      add(Token.Kind.SIGN, at + 1, said);
    } else {
      at++;
      gap = true;
    }
  }

  /** A sign in the one spelling that is looked for; empty for white space and signs without use. */
  private static String plain(char c) {
    return switch (c) {
      case '×', '*', '✕', '⨯' -> "x";
      case '‐', '‑', '‒', '–', '—', '―', '−' -> "-";
      case '″', '“', '”', '„' -> "\"";
      case '′', '‘', '’' -> "'";
      case '⁄', '∕' -> "/";
      case '\n', '\r', '|', '•' -> ";";
      default -> SIGNS.indexOf(c) >= 0 ? String.valueOf(c) : "";
    };
  }
}
