package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Draft;
import pressweek.data.guide.Guide;
import pressweek.data.words.Everyday.Pending;

/**
 * Reads items from a customer's words, such as {@code 2 in lobe knob, 5/16-18 through, black,
 * zinc}. It is made once for a guide and answers any text; threads may share it.
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
  private static final int MOST_CONTRADICTING = 3;

  /** A choice of senses that costs this much more than a whole reading is not looked at. */
  private static final int FAR = 6;

  private final Offer offer;
  private final PlantThreads threads;
  private final Lexicon lexicon;
  private final Sizes sizes;
  private final Pairs pairs;
  private final MentionFinder mentions;
  private final NumberSenses numbers;

  /** A reader for the items of a guide. */
  public WordReader(Guide guide) {
    offer = new Offer(guide);
    threads = new PlantThreads(offer);
    lexicon = LexiconBuilder.build(offer, threads);
    pairs = new Pairs(guide.encoder());
    sizes = new Sizes(offer, pairs, guide.words().nearestPct());
    mentions = new MentionFinder(offer, lexicon, threads);
    numbers = new NumberSenses(offer, sizes, threads);
  }

  /** The readings of a customer's words, the best first; any text is answered. */
  public WordsAnswer read(String words) {
    if (words.length() > LONGEST) {
      return tooLong(
          words, "a description of %,d characters; expected at most %,d", words.length(), LONGEST);
    }
    Tokens tokens = Tokens.of(words, MOST_TOKENS + 1);
    if (tokens.size() > MOST_TOKENS) {
      return tooLong(
          words,
          "a description of more than %,d words and signs; expected at most %,d",
          MOST_TOKENS,
          MOST_TOKENS);
    }
    List<Mention> found = numbers.settle(tokens, mentions.find(tokens));
    return new WordsAnswer(words, ranked(readings(tokens, found)));
  }

  private static WordsAnswer tooLong(String words, String question, int seen, int most) {
    String asked = String.format(java.util.Locale.ROOT, question, seen, most);
    return new WordsAnswer(
        words,
        List.of(
            new Reading("", "", List.of(), List.of(), List.of(), List.of(asked), List.of(), 0)));
  }

  private List<Reading> readings(Tokens tokens, List<Mention> found) {
    List<Reading> readings = new ArrayList<>();
    List<Evidence> contradicting = new ArrayList<>();
    SenseChoices choices = new SenseChoices(found);
    int least = Integer.MAX_VALUE - FAR;
    for (int tried = 0; tried < MOST_TRIED && choices.hasNext(); tried++) {
      SenseChoices.Choice choice = choices.next();
      if (choice.cost() > least + FAR) {
        break;
      }
      Evidence evidence = new Evidence(tokens, found, choice.claims(), Set.of(), choice.cost());
      Optional<Reading> reading = agreed(evidence);
      reading.ifPresentOrElse(readings::add, () -> contradicting.add(evidence));
      if (reading.isPresent() && reading.get().complete()) {
        least = Math.min(least, reading.get().doubt());
      }
    }
    for (int i = 0; i < Math.min(MOST_CONTRADICTING, contradicting.size()); i++) {
      int surely = contradicting.get(i).cost() + ReadingWriter.PER_CONFLICT;
      if (readings.stream().allMatch(reading -> reading.doubt() > surely)) {
        readings.add(settled(contradicting.get(i)));
      }
    }
    return readings;
  }

  /** The reading of what does not contradict itself, with one insert or with two. */
  private Optional<Reading> agreed(Evidence evidence) {
    for (Set<Integer> second : inserts(evidence)) {
      Work work = new Work(evidence.with(second));
      Optional<Draft> draft =
          work.item.conflicts().isEmpty() ? work.settling.agreed() : Optional.empty();
      if (draft.isPresent()) {
        return Optional.of(work.write(draft));
      }
    }
    return Optional.empty();
  }

  /** The reading of what contradicts itself; two inserts, if that leaves fewer contradictions. */
  private Reading settled(Evidence evidence) {
    List<Reading> readings = new ArrayList<>();
    for (Set<Integer> second : inserts(evidence)) {
      Work work = new Work(evidence.with(second));
      readings.add(work.write(work.settling.run()));
    }
    Reading one = readings.get(readings.size() - 1);
    return readings.stream()
        .filter(reading -> reading.conflicts().isEmpty())
        .min(ORDER)
        .orElse(one);
  }

  private List<Set<Integer>> inserts(Evidence evidence) {
    return new TwoInserts(offer, evidence.tokens(), evidence.mentions(), evidence.claims()).ways();
  }

  /** What one choice of senses comes to. */
  private final class Work {
    private final Evidence evidence;
    private final Case item;
    private final Settling settling;

    Work(Evidence evidence) {
      this.evidence = evidence;
      this.item = new Case(offer);
      new Gathering(offer, threads, sizes, evidence, item).run();
      List<Pending> pending = new Everyday(offer, lexicon, evidence, item).run();
      this.settling = new Settling(offer, pairs, item, pending);
    }

    Reading write(Optional<Draft> draft) {
      return new ReadingWriter(offer, lexicon, pairs, evidence, item).write(draft);
    }
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
