package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Guide;
import pressweek.data.words.Everyday.Pending;

/**
 * Reads items from a customer's words, such as {@code 2 in lobe knob, 5/16-18 through, black, zinc}.
 * It is made once for a guide and answers any text; threads may share it.
 *
 * <p>What a code says and the words do not is never taken silently: it stands among what was
 * assumed, or a question asks for it.
 */
public final class WordReader {
  /** A longer text is not read. */
  public static final int LONGEST = 1_000;

  private static final int MOST_TOKENS = 120;
  private static final int MOST_READINGS = 5;
  private static final int MOST_TRIED = 12;

  /** A choice of senses that costs this much more than a whole reading is not looked at. */
  private static final int FAR = 8;

  private final Offer offer;
  private final PlantThreads threads;
  private final Lexicon lexicon;
  private final Sizes sizes;
  private final MentionFinder mentions;
  private final NumberSenses numbers;

  /** A reader for the items of a guide. */
  public WordReader(Guide guide) {
    offer = new Offer(guide);
    threads = new PlantThreads(offer);
    lexicon = LexiconBuilder.build(offer, threads);
    sizes = new Sizes(offer, guide.words().nearestPct());
    mentions = new MentionFinder(offer, lexicon, threads);
    numbers = new NumberSenses(offer, sizes, threads);
  }

  /** The readings of a customer's words, the best first; any text is answered. */
  public WordsAnswer read(String words) {
    if (words.length() > LONGEST) {
      return tooLong(words, "a description of %,d characters; expected at most %,d", words.length(), LONGEST);
    }
    Tokens tokens = Tokens.of(words, MOST_TOKENS + 1);
    if (tokens.size() > MOST_TOKENS) {
      return tooLong(words, "a description of more than %,d words and signs; expected at most %,d", MOST_TOKENS, MOST_TOKENS);
    }
    List<Mention> found = numbers.settle(tokens, mentions.find(tokens));
    return new WordsAnswer(words, ranked(readings(tokens, found)));
  }

  private static WordsAnswer tooLong(String words, String question, int seen, int most) {
    String asked = String.format(java.util.Locale.ROOT, question, seen, most);
    return new WordsAnswer(
        words,
        List.of(
            new Reading(
                "", "", List.of(), List.of(), List.of(), List.of(asked), List.of(), 0)));
  }

  private List<Reading> readings(Tokens tokens, List<Mention> found) {
    List<Reading> readings = new ArrayList<>();
    SenseChoices choices = new SenseChoices(found);
    int least = Integer.MAX_VALUE - FAR;
    for (int tried = 0; tried < MOST_TRIED && choices.hasNext(); tried++) {
      SenseChoices.Choice choice = choices.next();
      if (choice.cost() > least + FAR) {
        break;
      }
      Evidence evidence = new Evidence(tokens, found, choice.claims(), Set.of(), choice.cost());
      Reading reading = best(evidence);
      readings.add(reading);
      least = reading.complete() ? Math.min(least, reading.doubt()) : least;
    }
    return readings;
  }

  /** The best way to tell two inserts apart, if there are two. */
  private Reading best(Evidence evidence) {
    List<Reading> readings = new ArrayList<>();
    for (Set<Integer> second :
        new TwoInserts(offer, evidence.tokens(), evidence.mentions(), evidence.claims()).ways()) {
      Reading reading = reading(evidence.with(second));
      readings.add(reading);
      if (reading.conflicts().isEmpty()) {
        break;
      }
    }
    readings.sort(ORDER);
    return readings.stream()
        .filter(reading -> reading.conflicts().isEmpty())
        .findFirst()
        .orElseGet(() -> readings.get(readings.size() - 1));
  }

  private Reading reading(Evidence evidence) {
    Case item = new Case(offer);
    new Gathering(offer, threads, sizes, evidence, item).run();
    List<Pending> pending = new Everyday(offer, lexicon, evidence, item).run();
    return new ReadingWriter(offer, lexicon, evidence, item)
        .write(new Settling(offer, item, pending).run());
  }

  private static final Comparator<Reading> ORDER =
      Comparator.comparing((Reading reading) -> !reading.complete())
          .thenComparingInt(Reading::doubt);

  /** The best readings of each code, the best first. */
  private static List<Reading> ranked(List<Reading> readings) {
    List<Reading> sorted = new ArrayList<>(readings);
    sorted.sort(ORDER);
    Map<String, Reading> byCode = new LinkedHashMap<>();
    sorted.forEach(reading -> byCode.putIfAbsent(reading.code(), reading));
    return byCode.values().stream().limit(MOST_READINGS).toList();
  }
}
