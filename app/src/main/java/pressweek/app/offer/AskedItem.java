package pressweek.app.offer;

import java.util.List;
import java.util.Optional;
import pressweek.data.files.Folder;
import pressweek.data.guide.Guide;
import pressweek.data.week.Explained;
import pressweek.data.week.Explainer;
import pressweek.data.words.Reading;
import pressweek.data.words.WordReader;
import pressweek.data.words.WordsAnswer;

/** Which item is asked for, by its code or by a customer's words. */
public sealed interface AskedItem {
  /**
   * One item.
   *
   * @param code item code
   * @param read the reading that it comes from; empty for what was given as a code
   */
  record Known(String code, Optional<Reading> read) implements AskedItem {}

  /**
   * Words that leave something open, which is to be asked first.
   *
   * @param answer their readings
   * @param why what is open
   */
  record Open(WordsAnswer answer, String why) implements AskedItem {}

  /**
   * A code that says nothing.
   *
   * @param explained what can be said of it
   */
  record NoCode(Explained explained) implements AskedItem {}

  /**
   * Finds the item; without a guide a code is only a name.
   *
   * @param text code or words
   * @param quantities pieces asked for; words that name another number are open
   */
  static AskedItem of(Folder folder, String text, List<Integer> quantities) {
    Explainer explainer = new Explainer(folder);
    Optional<Guide> guide = explainer.guide();
    if (guide.isEmpty()) {
      return new Known(text, Optional.empty());
    }
    Explained explained = explainer.explain(text);
    if (explained.reading().decoded().good()) {
      return new Known(text, Optional.empty());
    }
    WordsAnswer answer = new WordReader(guide.get()).read(text);
    Optional<String> why = open(answer, quantities);
    if (why.isEmpty()) {
      Reading best = answer.readings().get(0);
      return new Known(best.code(), Optional.of(best));
    }
    boolean isOneWord = text.strip().chars().noneMatch(Character::isWhitespace);
    // A guide that reads a piece of it takes it for a code, and shows better where that is wrong.
    boolean isKnownWord =
        explained.reading().fault().filter(fault -> fault.start() == 0).isPresent()
            && answer.readings().get(0).notUnderstood().isEmpty();
    return isOneWord && !isKnownWord ? new NoCode(explained) : new Open(answer, why.get());
  }

  /** What words leave open; empty when they can mean one item only. */
  private static Optional<String> open(WordsAnswer answer, List<Integer> quantities) {
    Reading best = answer.readings().get(0);
    if (!best.complete()) {
      return Optional.of("something is to be asked first");
    }
    if (!best.notUnderstood().isEmpty()) {
      return Optional.of("what is \"" + String.join(" ", best.notUnderstood()) + "\"?");
    }
    boolean twoWays =
        answer.readings().stream()
            .filter(Reading::complete)
            .anyMatch(r -> r.doubt() <= best.doubt() && !r.code().equals(best.code()));
    if (twoWays) {
      return Optional.of("they can mean more than one item");
    }
    return best.understood().stream()
        .map(piece -> piece.means().getOrDefault("quantity", ""))
        .filter(
            count -> !count.isEmpty() && quantities.stream().noneMatch(q -> count.equals(q + "")))
        .findFirst()
        .map(count -> "how many? the words say " + count);
  }
}
