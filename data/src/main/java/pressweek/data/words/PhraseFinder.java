package pressweek.data.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the longest phrase of the vocabulary that begins at a word, slips and all. */
final class PhraseFinder {
  private static final int MOST_TOKENS = 12;
  private static final String WITHIN = "-./&%'";

  private final Lexicon lexicon;
  private final Spelling spelling;

  PhraseFinder(Lexicon lexicon, Spelling spelling) {
    this.lexicon = lexicon;
    this.spelling = spelling;
  }

  /**
   * A phrase that was found.
   *
   * @param to the token after it
   * @param senses what it says, dearer by the doubt of the slips
   * @param readAs the words as they were read; empty when they stand there so
   * @param tie true when slips leave open which phrase is meant
   */
  record Found(int to, List<Sense> senses, String readAs, boolean tie) {}

  /** How far a search has come. */
  private record Path(String key, boolean comma, int cost, String shown, boolean changed) {}

  /** A phrase at the end of a path. */
  private record End(int to, Path path, List<Sense> senses) {}

  /** The longest phrase; empty when none begins here. */
  Optional<Found> at(Tokens tokens, int from) {
    List<End> ends = new ArrayList<>();
    search(tokens, from, from, new Path("", false, 0, "", false), ends);
    int to = ends.stream().mapToInt(End::to).max().orElse(-1);
    int cost =
        ends.stream().filter(e -> e.to() == to).mapToInt(e -> e.path().cost()).min().orElse(0);
    List<End> best =
        ends.stream().filter(end -> end.to() == to && end.path().cost() == cost).toList();
    return best.isEmpty() ? Optional.empty() : Optional.of(found(best, cost));
  }

  private static Found found(List<End> best, int cost) {
    Set<Sense> senses = new LinkedHashSet<>();
    Set<List<Sense>> different = new LinkedHashSet<>();
    for (End end : best) {
      end.senses().forEach(sense -> senses.add(sense.dearer(cost)));
      different.add(end.senses());
    }
    Path path = best.get(0).path();
    boolean tie = different.size() > 1;
    return new Found(
        best.get(0).to(), List.copyOf(senses), path.changed() && !tie ? path.shown() : "", tie);
  }

  private void search(Tokens tokens, int first, int at, Path path, List<End> ends) {
    Token token = tokens.at(at);
    if (token.isSign() || at - first >= MOST_TOKENS) {
      return;
    }
    boolean number = token.isNumber();
    boolean bothNumbers = number && at > first && endsWithDigit(path.key());
    for (Spelling.Variant variant : variants(tokens, at)) {
      String key = path.key() + (bothNumbers ? "-" : "") + variant.word();
      if (lexicon.begins(key)) {
        Path further =
            new Path(
                key,
                path.comma(),
                path.cost() + variant.cost(),
                (path.shown() + " " + variant.word()).strip(),
                path.changed() || variant.changed());
        List<Sense> senses = lexicon.senses(key, path.comma());
        if (!senses.isEmpty()) {
          ends.add(new End(at + 1, further, senses));
        }
        next(tokens, first, at, further, ends);
      }
    }
  }

  private List<Spelling.Variant> variants(Tokens tokens, int at) {
    Token token = tokens.at(at);
    if (token.isNumber()) {
      return List.of(new Spelling.Variant(token.text(), 0, false));
    }
    return spelling.variants(token.text(), tokens.at(at + 1).is(".") && tokens.joined(at + 1));
  }

  private void next(Tokens tokens, int first, int at, Path path, List<End> ends) {
    int next = at + 1;
    boolean comma = path.comma();
    boolean gap = false;
    while (tokens.at(next).isSign() && next < tokens.size() && next - at <= 2) {
      String sign = tokens.at(next).text();
      if (sign.equals(",") && !comma) {
        comma = true;
      } else if (!WITHIN.contains(sign)) {
        return;
      }
      gap |= tokens.at(next).gap();
      next++;
    }
    gap |= tokens.at(next).gap();
    if (gap && mixed(tokens.at(at), tokens.at(next))) {
      return;
    }
    Path further = new Path(path.key(), comma, path.cost(), path.shown(), path.changed());
    search(tokens, first, next, further, ends);
  }

  /**
   * A number and a single letter make one symbol only when no space stands between: A2, not a 2.
   */
  private static boolean mixed(Token a, Token b) {
    return a.isNumber() && b.isWord() && b.text().length() == 1
        || b.isNumber() && a.isWord() && a.text().length() == 1;
  }

  private static boolean endsWithDigit(String key) {
    return Character.isDigit(key.charAt(key.length() - 1));
  }
}
