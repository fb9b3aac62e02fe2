package pressweek.data.words;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds numbers that are no sizes: of pieces, of documents, of money, of days. */
final class CountFinder {
  private static final Pattern DATE =
      Pattern.compile("\\d{1,4}([./-])\\d{1,2}\\1\\d{2,4}|\\d{1,2}:\\d{2}");
  private static final Set<String> ALWAYS_DOCUMENT =
      Set.of("po", "ref", "reference", "rfq", "invoice", "enquiry", "inquiry");
  private static final Set<String> BEFORE_COUNT =
      Set.of("qty", "quantity", "qnty", "pcs", "pieces", "units");
  private static final int DOZEN = 12;

  private CountFinder() {}

  /** The number of pieces, document, price or date that begins at a token. */
  static Optional<Mention> at(Tokens tokens, int from) {
    Token token = tokens.at(from);
    if (token.isNumber()) {
      return date(tokens, from).or(() -> counted(tokens, from));
    }
    if (token.is("$") || token.is("@")) {
      int to = tokens.at(from + 1).is("$") ? from + 2 : from + 1;
      return tokens.at(to).isNumber()
          ? Optional.of(Mention.plain(from, to + 1, new Claim.Nothing()))
          : Optional.empty();
    }
    return token.isWord()
        ? document(tokens, from).or(() -> announced(tokens, from))
        : Optional.empty();
  }

  private static Optional<Mention> date(Tokens tokens, int from) {
    int to = from + 1;
    while (tokens.joined(to)
        && (tokens.at(to).isNumber() || "./-:".contains(tokens.at(to).text()))) {
      to++;
    }
    return to > from + 1 && DATE.matcher(tokens.original(from, to)).matches()
        ? Optional.of(Mention.plain(from, to, new Claim.Nothing()))
        : Optional.empty();
  }

  /** A number and the token after it. */
  private record Whole(long value, int to) {}

  /** A whole number, perhaps with a sign between its thousands. */
  private static Optional<Whole> whole(Tokens tokens, int from) {
    Token token = tokens.at(from);
    if (!token.isReadable() || token.isFraction()) {
      return Optional.empty();
    }
    boolean thousands =
        token.isWhole()
            && tokens.at(from + 1).is(",")
            && tokens.joined(from + 1)
            && tokens.joined(from + 2)
            && tokens.at(from + 2).isWhole()
            && tokens.at(from + 2).text().length() == 3;
    if (thousands) {
      return Optional.of(
          new Whole(Long.parseLong(token.text() + tokens.at(from + 2).text()), from + 3));
    }
    BigDecimal value = token.value();
    if (value.scale() == 3 && token.text().charAt(0) != '.') {
      return Optional.of(new Whole(value.movePointRight(3).longValue(), from + 1));
    }
    return value.scale() == 0
        ? Optional.of(new Whole(value.longValue(), from + 1))
        : Optional.empty();
  }

  private static Optional<Mention> counted(Tokens tokens, int from) {
    Optional<Whole> number = whole(tokens, from);
    if (number.isEmpty() || number.get().value() == 0) {
      return Optional.empty();
    }
    int to = number.get().to();
    Token next = tokens.at(to);
    if (next.isWord() && OrdinaryWords.isPieces(next.text())) {
      int end = tokens.at(to + 1).is(".") && tokens.joined(to + 1) ? to + 2 : to + 1;
      return count(from, end, number.get().value());
    }
    if (next.is("dozen") || next.is("doz")) {
      return count(from, to + 1, number.get().value() * DOZEN);
    }
    boolean times =
        tokens.isTimes(to)
            && tokens.at(to + 1).isWord()
            && !tokens.at(to + 1).is("m")
            && !tokens.isTimes(from - 1)
            && tokens.at(from).isWhole();
    return times ? count(from, to + 1, number.get().value()) : Optional.empty();
  }

  private static Optional<Mention> count(int from, int to, long pieces) {
    return Optional.of(Mention.plain(from, to, new Claim.Count(Long.toString(pieces))));
  }

  /** {@code qty 200}, {@code pcs: 50}. */
  private static Optional<Mention> announced(Tokens tokens, int from) {
    if (!BEFORE_COUNT.contains(tokens.at(from).text())) {
      return Optional.empty();
    }
    int at = from + 1;
    while (tokens.at(at).isSign() && ".:=".contains(tokens.at(at).text()) && at < tokens.size()
        || tokens.at(at).is("of")) {
      at++;
    }
    Optional<Whole> number = whole(tokens, at);
    boolean size =
        number.isPresent()
            && NumberReader.at(tokens, at).filter(found -> !found.number().isBare()).isPresent();
    if (number.isEmpty() || size || tokens.isTimes(number.get().to())) {
      return Optional.empty();
    }
    Token unit = tokens.at(number.get().to());
    int to = unit.isWord() && OrdinaryWords.isPieces(unit.text()) ? 1 : 0;
    return count(from, number.get().to() + to, number.get().value());
  }

  /** {@code PO 4711}, {@code order no. 12-345}. */
  private static Optional<Mention> document(Tokens tokens, int from) {
    String word = tokens.at(from).text();
    if (!OrdinaryWords.isDocument(word)) {
      return Optional.empty();
    }
    int at = from + 1;
    boolean numbered = false;
    while (tokens.at(at).is("no")
        || tokens.at(at).is("nr")
        || tokens.at(at).is("number")
        || tokens.at(at).isSign() && "#.:".contains(tokens.at(at).text()) && at < tokens.size()) {
      numbered |= !tokens.at(at).is(".") && !tokens.at(at).is(":");
      at++;
    }
    int to = at + 1;
    boolean digits = tokens.at(at).isNumber();
    while (tokens.joined(to) && !",;:".contains(tokens.at(to).text())) {
      digits |= tokens.at(to).isNumber();
      to++;
    }
    boolean is = digits && to <= tokens.size() && (numbered || ALWAYS_DOCUMENT.contains(word));
    return is ? Optional.of(Mention.plain(from, to, new Claim.Nothing())) : Optional.empty();
  }
}
