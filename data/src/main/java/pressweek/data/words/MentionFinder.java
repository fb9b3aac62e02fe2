package pressweek.data.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.words.Mention.Turn;

/** Cuts a text into pieces that mean something, and those that do not. */
final class MentionFinder {
  private static final Set<String> NOT =
      Set.of("no", "not", "without", "non", "dont", "never", "nor");
  private static final Set<String> NEEDED =
      Set.of("required", "needed", "necessary", "wanted", "require", "need");
  private static final Map<String, List<String>> LETTERS =
      Map.of("d", List.of("dia", "diameter"), "l", List.of("length", "long"));
  private static final Set<String> BUT =
      Set.of("but", "except", "instead", "only", "however", "change", "changed");

  private final Lexicon lexicon;
  private final Spelling spelling;
  private final PhraseFinder phrases;
  private final ThreadFinder threads;
  private final CodeFinder codes;

  MentionFinder(Offer offer, Lexicon lexicon, PlantThreads plantThreads) {
    this.lexicon = lexicon;
    this.spelling = new Spelling(lexicon);
    this.phrases = new PhraseFinder(lexicon, spelling);
    this.threads = new ThreadFinder(plantThreads);
    this.codes = new CodeFinder(offer, phrases, threads);
  }

  /** The pieces of a text in their order. */
  List<Mention> find(Tokens tokens) {
    Map<Integer, Mention> coded = codes.find(tokens);
    boolean mixedCase = tokens.text().chars().anyMatch(Character::isLowerCase);
    List<Mention> mentions = new ArrayList<>();
    Turn turn = Turn.PLAIN;
    int at = 0;
    while (at < tokens.size()) {
      Optional<Mention> found =
          coded.containsKey(at) ? Optional.of(coded.get(at)) : piece(tokens, at, mixedCase);
      if (found.isPresent()) {
        Mention mention = found.get();
        if (isNeedless(tokens, at)) {
          refuse(mentions);
        }
        mentions.add(mention.saysNothing() ? mention : mention.with(turn));
        turn = mention.saysNothing() ? turn(tokens, at, turn) : after(turn);
        at = mention.to();
      } else {
        turn = turn == Turn.NOT && ",;".contains(tokens.at(at).text()) ? Turn.PLAIN : turn;
        at++;
      }
    }
    return mentions;
  }

  /** True for the not of {@code not required}, which speaks of what stands before it. */
  private static boolean isNeedless(Tokens tokens, int at) {
    return tokens.at(at).is("not") && NEEDED.contains(tokens.at(at + 1).text());
  }

  private static void refuse(List<Mention> mentions) {
    for (int i = mentions.size() - 1; i >= 0; i--) {
      if (!mentions.get(i).saysNothing()) {
        mentions.set(i, mentions.get(i).with(Turn.NOT));
        return;
      }
    }
  }

  /** What a small word does to what follows it. */
  private static Turn turn(Tokens tokens, int at, Turn before) {
    String word = tokens.at(at).text();
    if (isNeedless(tokens, at)) {
      return before;
    }
    if (NOT.contains(word) || word.equals("w") && tokens.at(at + 2).is("o")) {
      return Turn.NOT;
    }
    if (word.equals("or")) {
      return before == Turn.NOT ? Turn.NOT : Turn.OR;
    }
    return BUT.contains(word) ? Turn.BUT : before;
  }

  /** A but holds on; a not and an or are for one piece. */
  private static Turn after(Turn turn) {
    return turn == Turn.BUT ? Turn.BUT : Turn.PLAIN;
  }

  private Optional<Mention> piece(Tokens tokens, int at, boolean mixedCase) {
    Optional<Mention> count = CountFinder.at(tokens, at);
    if (count.isPresent()) {
      return count;
    }
    Token token = tokens.at(at);
    if (token.isSign()) {
      return token.is("#") ? thread(tokens, at) : Optional.empty();
    }
    return token.isNumber() ? Optional.of(number(tokens, at)) : word(tokens, at, mixedCase);
  }

  private Optional<Mention> thread(Tokens tokens, int at) {
    return threads
        .at(tokens, at)
        .map(found -> Mention.plain(at, found.to(), new Claim.Threaded(found.cut())));
  }

  private Mention number(Tokens tokens, int at) {
    Optional<PhraseFinder.Found> phrase = phrases.at(tokens, at);
    Optional<NumberReader.Found> number = NumberReader.at(tokens, at);
    int numberEnd = number.map(NumberReader.Found::to).orElse(at);
    if (phrase.isPresent() && phrase.get().to() >= numberEnd) {
      return phrased(at, phrase.get());
    }
    Optional<Mention> thread = thread(tokens, at);
    if (thread.isPresent()) {
      return thread.get();
    }
    boolean strange =
        number.isEmpty()
            || tokens.at(numberEnd).is("-")
                && tokens.joined(numberEnd)
                && tokens.joined(numberEnd + 1)
                && tokens.at(numberEnd + 1).isNumber()
            || tokens.at(numberEnd).is("%")
            || tokens.joined(numberEnd)
                && tokens.at(numberEnd).isWord()
                && !tokens.isTimes(numberEnd)
                && !spelling.isKnown(tokens.at(numberEnd).text());
    return strange
        ? unknown(tokens, at)
        : Mention.plain(at, numberEnd, new Claim.Raw(number.get().number()));
  }

  private Optional<Mention> word(Tokens tokens, int at, boolean mixedCase) {
    Token token = tokens.at(at);
    Optional<PhraseFinder.Found> phrase = phrases.at(tokens, at);
    boolean several = phrase.isPresent() && phrase.get().to() > at + 1;
    Optional<Mention> thread = several ? Optional.empty() : thread(tokens, at);
    if (thread.isPresent()) {
      return thread;
    }
    Optional<Mention> symbol = several ? Optional.empty() : symbol(tokens, at, mixedCase);
    if (symbol.isPresent()) {
      return symbol;
    }
    if (phrase.isPresent()) {
      return Optional.of(phrased(at, phrase.get()));
    }
    if (tokens.isTimes(at)) {
      return Optional.empty();
    }
    Optional<Mention> letter = letter(tokens, at);
    if (letter.isPresent()) {
      return letter;
    }
    Optional<NumberReader.Found> number = NumberReader.at(tokens, at);
    if (number.isPresent()) {
      return Optional.of(
          Mention.plain(at, number.get().to(), new Claim.Raw(number.get().number())));
    }
    int without = withoutEnd(tokens, at);
    if (without > at) {
      return Optional.of(Mention.plain(at, without, new Claim.Nothing()));
    }
    boolean mark = tokens.joined(at + 1) && tokens.at(at + 1).isNumber();
    return Optional.of(
        OrdinaryWords.isEmpty(token.text()) && !mark
            ? Mention.plain(at, at + 1, new Claim.Nothing())
            : unknown(tokens, at));
  }

  /** {@code d = 50} and {@code L30}: a letter for a measure before a number. */
  private Optional<Mention> letter(Tokens tokens, int at) {
    int next = at + 1;
    while (tokens.at(next).is("=") || tokens.at(next).is(":")) {
      next++;
    }
    if (!tokens.at(next).isNumber()) {
      return Optional.empty();
    }
    return LETTERS.getOrDefault(tokens.at(at).text(), List.of()).stream()
        .map(word -> lexicon.senses(word, false))
        .filter(senses -> !senses.isEmpty())
        .findFirst()
        .map(senses -> new Mention(at, at + 1, senses, "", false, Turn.PLAIN));
  }

  /** The end of {@code w/o} or {@code w/}; the place itself for anything else. */
  private static int withoutEnd(Tokens tokens, int at) {
    boolean with = tokens.at(at).is("w") && tokens.at(at + 1).is("/");
    int slash = tokens.at(at + 2).is("o") && tokens.joined(at + 2) ? at + 3 : at + 2;
    return with ? slash : at;
  }

  private Optional<Mention> symbol(Tokens tokens, int at, boolean mixedCase) {
    String text = tokens.original(at, at + 1);
    List<Sense> senses = lexicon.symbol(text);
    boolean meant = mixedCase || !OrdinaryWords.isOrdinary(text.toLowerCase(Locale.ROOT));
    return senses.isEmpty() || !meant
        ? Optional.empty()
        : Optional.of(new Mention(at, at + 1, senses, "", false, Turn.PLAIN));
  }

  private static Mention phrased(int at, PhraseFinder.Found phrase) {
    return new Mention(at, phrase.to(), phrase.senses(), phrase.readAs(), phrase.tie(), Turn.PLAIN);
  }

  /** A word or number without a meaning, with what hangs on it without white space. */
  private Mention unknown(Tokens tokens, int at) {
    int to = at + 1;
    while (tokens.joined(to) && hangs(tokens, to)) {
      to++;
    }
    boolean mark = tokens.original(at, to).chars().allMatch(Character::isUpperCase) && to - at == 1;
    if (mark && tokens.at(at).text().length() > 1 && tokens.at(to).isWhole()) {
      to++;
    }
    while (tokens.at(to - 1).isSign() && to > at + 1 && !tokens.at(to - 1).is("%")) {
      to--;
    }
    return Mention.plain(at, to, new Claim.Unknown());
  }

  private boolean hangs(Tokens tokens, int at) {
    Token token = tokens.at(at);
    return token.isSign()
        ? "-.%&".contains(token.text())
        : !(token.isWord() && spelling.isKnown(token.text()));
  }
}
