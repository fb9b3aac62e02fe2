package pressweek.data.words;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Finds item codes and stretches of codes among the words. */
final class CodeFinder {
  private static final int LONGEST_PIECE = 40;

  /** A piece behind a space can belong to the one before it when it is no longer than this. */
  private static final int SHORT = 4;

  private final CodePieces pieces;
  private final PhraseFinder phrases;
  private final ThreadFinder threads;
  private final String separator;

  CodeFinder(Offer offer, PhraseFinder phrases, ThreadFinder threads) {
    this.phrases = phrases;
    this.threads = threads;
    this.pieces = new CodePieces(offer);
    this.separator = offer.guide().sheet().separator();
  }

  /** Codes and pieces of codes, by the token that they begin with. */
  Map<Integer, Mention> find(Tokens tokens) {
    Map<Integer, Mention> found = new HashMap<>();
    int from = 0;
    while (from < tokens.size()) {
      int to = chunkEnd(tokens, from);
      chunk(tokens, from, to, found);
      from = to;
    }
    return found;
  }

  /** The token after a stretch without white space. */
  private static int chunkEnd(Tokens tokens, int from) {
    int to = from + 1;
    while (to < tokens.size() && tokens.joined(to)) {
      to++;
    }
    return to;
  }

  private void chunk(Tokens tokens, int start, int end, Map<Integer, Mention> found) {
    int from = start;
    int to = end;
    while (from < to && tokens.at(from).isSign()) {
      from++;
    }
    while (from < to && tokens.at(to - 1).isSign()) {
      to--;
    }
    String text = tokens.original(from, to);
    if (to - from < 2 || text.length() > 200) {
      return;
    }
    Optional<Map<String, String>> whole = pieces.whole(text);
    if (whole.isPresent()) {
      found.put(from, Mention.plain(from, to, new Claim.Says(whole.get(), true)));
    } else {
      stretch(tokens, from, to, found);
    }
  }

  /** Looks at what stands between separators, commas and other signs that no part holds. */
  private void stretch(Tokens tokens, int from, int to, Map<Integer, Mention> found) {
    int start = from;
    for (int at = from; at <= to; at++) {
      boolean ends = at == to || tokens.at(at).isSign() && isBreak(tokens.at(at));
      if (ends) {
        piece(tokens, start, at, to, found);
        start = at + 1;
      }
    }
  }

  private boolean isBreak(Token sign) {
    return sign.is(separator) || ",;:()=&".contains(sign.text());
  }

  private void piece(Tokens tokens, int from, int to, int end, Map<Integer, Mention> found) {
    String text = tokens.original(from, to);
    if (text.isEmpty() || text.length() > LONGEST_PIECE) {
      return;
    }
    boolean alone = (from == 0 || tokens.at(from).gap()) && to == end;
    if (alone && threads.at(tokens, from).filter(thread -> thread.to() == to).isPresent()) {
      return;
    }
    boolean several =
        to - from > 1 && text.chars().anyMatch(Character::isDigit) || text.contains("-");
    Optional<Map<String, String>> says = several ? pieces.part(text) : Optional.empty();
    if (to == end && tokens.at(to).gap()) {
      int next = chunkEnd(tokens, to);
      while (next > to && tokens.at(next - 1).isSign()) {
        next--;
      }
      Optional<Map<String, String>> longer = joined(tokens, from, to, next);
      if (longer.isPresent()) {
        found.put(from, Mention.plain(from, next, new Claim.Says(longer.get(), false)));
        return;
      }
    }
    says.filter(values -> !values.isEmpty())
        .ifPresent(
            values -> found.put(from, Mention.plain(from, to, new Claim.Says(values, false))));
  }

  /** {@code M8 B} for {@code M8-B}: a short piece in capitals or with digits behind a space. */
  private Optional<Map<String, String>> joined(Tokens tokens, int from, int to, int next) {
    String tail = tokens.original(to, next);
    boolean likely =
        !tail.isEmpty()
            && tail.length() <= SHORT
            && tail.chars().noneMatch(Character::isLowerCase)
            && Character.isLetter(tail.charAt(0))
            && phrases.at(tokens, to).filter(phrase -> phrase.to() > next).isEmpty();
    return likely
        ? pieces.part(tokens.original(from, to) + "-" + tail).map(LinkedHashMap::new)
        : Optional.empty();
  }
}
