package pressweek.data.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.Set;
import pressweek.data.words.Measured.Unit;

/**
 * Reads lengths: {@code 1 1/2"}, {@code 1-1/2 in}, {@code 2½ inch}, {@code .5"}, {@code 50 mm},
 * {@code 1,5 in}, {@code 50}. A fraction without a unit is inches.
 */
final class NumberReader {
  private static final Set<String> MM =
      Set.of("mm", "mms", "millimeter", "millimeters", "millimetre", "millimetres", "mil");
  private static final Set<String> INCH = Set.of("inch", "inches", "ins", "inchs");
  private static final Set<Integer> UNDER = Set.of(2, 4, 8, 16, 32, 64);

  /** No mixed number of a part is larger. */
  private static final int MOST_INCHES = 24;

  private NumberReader() {}

  /**
   * A number with where it ends.
   *
   * @param number the number
   * @param to the token after it and its unit
   */
  record Found(Measured number, int to) {}

  /** A number without its unit, and where it ends. */
  private record Plain(BigDecimal value, int to, boolean fraction) {}

  /** The length that begins at a token; empty when no number does. */
  static Optional<Found> at(Tokens tokens, int from) {
    return tokens.at(from).isWord()
        ? inWords(tokens, from)
        : plain(tokens, from).map(plain -> withUnit(tokens, from, plain));
  }

  /** A number in words is a length only with a unit; a single word for a part only, too. */
  private static Optional<Found> inWords(Tokens tokens, int from) {
    return NumberWords.at(tokens, from)
        .filter(
            found ->
                found.fraction() && found.to() > from + 1
                    || unit(tokens, found.to()).unit() != Unit.NONE)
        .map(
            found ->
                withUnit(tokens, from, new Plain(found.value(), found.to(), found.fraction())));
  }

  private static Optional<Plain> plain(Tokens tokens, int from) {
    Token first = tokens.at(from);
    if (!first.isReadable()) {
      return Optional.empty();
    }
    Optional<Plain> fraction = fraction(tokens, from);
    if (fraction.isPresent()) {
      return fraction;
    }
    if (first.isWhole() && first.value().intValue() <= MOST_INCHES) {
      int next = tokens.at(from + 1).is("-") ? from + 2 : from + 1;
      Optional<Plain> mixed = fraction(tokens, next);
      if (mixed.isPresent()) {
        BigDecimal sum = first.value().add(mixed.get().value());
        return Optional.of(new Plain(sum, mixed.get().to(), true));
      }
    }
    return decimalComma(tokens, from)
        .or(() -> Optional.of(new Plain(first.value(), from + 1, false)));
  }

  /** A fraction of an inch: with a power of two below the stroke, less than one. */
  private static Optional<Plain> fraction(Tokens tokens, int from) {
    Token over = tokens.at(from);
    if (over.isNumber() && over.isFraction()) {
      int stroke = over.text().indexOf('/');
      return quotient(
          over.text().substring(0, stroke), over.text().substring(stroke + 1), from + 1);
    }
    boolean written =
        over.isWhole()
            && tokens.at(from + 1).is("/")
            && tokens.at(from + 2).isWhole()
            && tokens.joined(from + 1)
            && tokens.joined(from + 2)
            && !tokens.at(from + 3).is("/");
    return written ? quotient(over.text(), tokens.at(from + 2).text(), from + 3) : Optional.empty();
  }

  private static Optional<Plain> quotient(String over, String under, int to) {
    int divisor = Integer.parseInt(under);
    if (!UNDER.contains(divisor) || Integer.parseInt(over) >= divisor) {
      return Optional.empty();
    }
    BigDecimal value =
        new BigDecimal(over).divide(BigDecimal.valueOf(divisor), MathContext.DECIMAL64);
    return Optional.of(new Plain(value, to, true));
  }

  /** {@code 1,5 in}: a comma between digits, followed by a unit, with few digits on both sides. */
  private static Optional<Plain> decimalComma(Tokens tokens, int from) {
    Token whole = tokens.at(from);
    Token part = tokens.at(from + 2);
    boolean written =
        whole.isWhole()
            && whole.text().length() <= 2
            && tokens.at(from + 1).is(",")
            && tokens.joined(from + 1)
            && part.isWhole()
            && part.text().length() <= 3
            && tokens.joined(from + 2);
    if (!written || unit(tokens, from + 3).unit() == Unit.NONE) {
      return Optional.empty();
    }
    boolean two = part.text().length() == 2 && !part.is("25") && !part.is("75") && !whole.is("0");
    return two
        ? Optional.empty()
        : Optional.of(new Plain(new BigDecimal(whole.text() + "." + part.text()), from + 3, false));
  }

  private record Said(Unit unit, int to, int factor) {}

  private static Found withUnit(Tokens tokens, int from, Plain plain) {
    Said said = unit(tokens, plain.to());
    Unit unit = said.unit() == Unit.NONE && plain.fraction() ? Unit.INCH : said.unit();
    unit = unit == Unit.IN && plain.fraction() ? Unit.INCH : unit;
    BigDecimal value = plain.value().multiply(BigDecimal.valueOf(said.factor()));
    String text = tokens.original(from, plain.to());
    String shown = said.factor() == 1 ? text : Measured.plain(value);
    return new Found(new Measured(value, unit, shown, tokens.isTimes(from - 1)), said.to());
  }

  private static Said unit(Tokens tokens, int at) {
    int word = tokens.at(at).is("-") && tokens.joined(at) ? at + 1 : at;
    Token token = tokens.at(word);
    if (token.is("\"") || token.isWord() && INCH.contains(token.text())) {
      return new Said(Unit.INCH, afterPoint(tokens, word + 1), 1);
    }
    if (token.isWord() && MM.contains(token.text())) {
      return new Said(Unit.MM, afterPoint(tokens, word + 1), 1);
    }
    if (token.isWord() && token.is("cm")) {
      return new Said(Unit.MM, afterPoint(tokens, word + 1), 10);
    }
    if (token.isWord() && token.is("in")) {
      boolean sure = !token.gap() || tokens.at(word + 1).is(".") && tokens.joined(word + 1);
      return new Said(sure ? Unit.INCH : Unit.IN, afterPoint(tokens, word + 1), 1);
    }
    return new Said(Unit.NONE, at, 1);
  }

  private static int afterPoint(Tokens tokens, int at) {
    return tokens.at(at).is(".") && tokens.joined(at) ? at + 1 : at;
  }
}
