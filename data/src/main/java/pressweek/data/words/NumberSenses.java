package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.GuideWords.Measure;

/** Says what each number can be, by what stands around it. */
final class NumberSenses {
  private static final int MOST_SENSES = 5;
  private static final int MOST_SKIPPED = 2;
  private static final int UNKNOWN_COST = 15;
  private static final int AWAY = 4;
  private static final int MOST_BEFORE_PLURAL = 5;
  private static final int OTHERWISE_BOUND = 8;

  /** Words that follow their number: 30 long. The others stand before theirs, too: length 30. */
  private static final Set<String> BEHIND =
      Set.of("long", "wide", "across", "high", "deep", "tall", "thick", "lg");

  private static final Set<String> THREAD_WORDS = Set.of("thread", "tap", "screw");

  private final Offer offer;
  private final Sizes sizes;
  private final PlantThreads threads;
  private final List<Measure> measures;

  NumberSenses(Offer offer, Sizes sizes, PlantThreads threads) {
    this.offer = offer;
    this.sizes = sizes;
    this.threads = threads;
    this.measures =
        offer.guide().words().measures().stream()
            .filter(measure -> !offer.isSecond(measure.attribute()))
            .toList();
  }

  /** The mentions, each number with its senses. */
  List<Mention> settle(Tokens tokens, List<Mention> mentions) {
    List<Mention> settled = new ArrayList<>();
    for (int i = 0; i < mentions.size(); i++) {
      Mention mention = mentions.get(i);
      settled.add(
          mention.first() instanceof Claim.Raw raw
              ? mention.with(new Place(tokens, mentions, i, raw.number()).senses())
              : mention);
    }
    return settled;
  }

  /** A number among the mentions. */
  private final class Place {
    private final Tokens tokens;
    private final List<Mention> mentions;
    private final int index;
    private final Measured number;
    private final Map<Integer, Integer> skipped = new HashMap<>();
    private final int left;
    private final int right;

    Place(Tokens tokens, List<Mention> mentions, int index, Measured number) {
      this.tokens = tokens;
      this.mentions = mentions;
      this.index = index;
      this.number = number;
      this.left = beside(index, -1);
      this.right = beside(index, 1);
    }

    /** The next mention that says something, with no comma between; -1 when there is none. */
    private int beside(int from, int step) {
      int at = from + step;
      int over = 0;
      while (at >= 0 && at < mentions.size() && !comma(at, step)) {
        if (!mentions.get(at).saysNothing()) {
          skipped.putIfAbsent(at, over);
          return at;
        }
        over++;
        if (over > MOST_SKIPPED) {
          return -1;
        }
        at += step;
      }
      return -1;
    }

    /** True when a comma stands between a mention and the one before it on the way. */
    private boolean comma(int at, int step) {
      int first = step > 0 ? mentions.get(at - 1).to() : mentions.get(at).to();
      int last = step > 0 ? mentions.get(at).from() : mentions.get(at + 1).from();
      for (int i = first; i < last; i++) {
        if (",;".contains(tokens.at(i).text())) {
          return true;
        }
      }
      return false;
    }

    List<Sense> senses() {
      List<Sense> senses = new ArrayList<>();
      boolean bound = measures.stream().anyMatch(m -> wordCost(m.attribute()) == 0);
      if (!bound && !isPrefix() && isCountOfThings()) {
        return List.of(
            new Sense(new Claim.Count(Measured.plain(number.value())), 1),
            new Sense(new Claim.Unknown(), UNKNOWN_COST));
      }
      for (Measure measure : measures) {
        length(measure, bound).ifPresent(senses::add);
      }
      asThread(bound).ifPresent(senses::add);
      asCount().ifPresent(senses::add);
      senses.add(new Sense(new Claim.Unknown(), UNKNOWN_COST));
      senses.sort(Comparator.comparingInt(Sense::cost));
      return senses.subList(0, Math.min(MOST_SENSES, senses.size()));
    }

    private Optional<Sense> length(Measure measure, boolean bound) {
      String attribute = measure.attribute();
      int word = wordCost(attribute);
      int cost = Math.min(word, beside(measure));
      boolean possible = sizes.isPossible(attribute, number);
      if (!possible && cost > 1) {
        return Optional.empty();
      }
      int elsewhere = bound && word > 0 ? OTHERWISE_BOUND : 0;
      int bare = number.isBare() && word > 0 ? 1 : 0;
      return Optional.of(new Sense(new Claim.Length(attribute, number), cost + elsewhere + bare));
    }

    /** 0 when a word beside the number says that it is this length. */
    private int wordCost(String attribute) {
      return Math.min(wordCost(left, attribute), wordCost(right, attribute));
    }

    private int wordCost(int at, String attribute) {
      if (at < 0 || measureOf(at).filter(set -> set.contains(attribute)).isEmpty()) {
        return Integer.MAX_VALUE;
      }
      int beyond = beside(at, at < index ? -1 : 1);
      boolean shared = beyond >= 0 && isNumber(beyond);
      if (!shared) {
        return 0;
      }
      int behindThat = beside(beyond, beyond < at ? -1 : 1);
      boolean otherHasOwn = behindThat >= 0 && measureOf(behindThat).isPresent();
      boolean follows = BEHIND.contains(tokens.at(mentions.get(at).to() - 1).text());
      boolean mine = otherHasOwn || follows == at > index;
      return mine ? 0 : 3;
    }

    private Optional<Set<String>> measureOf(int at) {
      return mentions.get(at).senses().stream()
          .map(Sense::claim)
          .filter(Claim.MeasureWord.class::isInstance)
          .map(claim -> ((Claim.MeasureWord) claim).attributes())
          .findFirst();
    }

    private boolean isNumber(int at) {
      return mentions.get(at).first() instanceof Claim.Raw;
    }

    private boolean isThread(int at) {
      return at >= 0 && mentions.get(at).first() instanceof Claim.Threaded;
    }

    private int beside(Measure measure) {
      if (measure.afterThread() && left >= 0) {
        boolean crossed = number.times() && (isThread(left) || isNumber(left));
        if (crossed) {
          return 0;
        }
        if (isThread(left)) {
          return 1;
        }
      }
      int cost = AWAY;
      if (together(left, measure.attribute())) {
        cost = 1 + skipped.getOrDefault(left, 0);
      }
      if (together(right, measure.attribute())) {
        cost = Math.min(cost, 1 + skipped.getOrDefault(right, 0));
      }
      int before = 2 + skipped.getOrDefault(right, 0);
      return measure.afterThread() && isThread(right) ? Math.min(cost, before) : cost;
    }

    private boolean together(int at, String attribute) {
      if (at < 0) {
        return false;
      }
      Claim claim = mentions.get(at).first();
      Map<String, String> says = new HashMap<>();
      if (claim instanceof Claim.Says said) {
        says.putAll(said.values());
      } else if (claim instanceof Claim.Usually usually) {
        says.putAll(usually.usual());
        says.putAll(usually.values());
      }
      return !says.isEmpty() && offer.together(attribute, says);
    }

    private Optional<Sense> asThread(boolean bound) {
      if (number.times() || threads.attributes().isEmpty()) {
        return Optional.empty();
      }
      boolean metric = !number.isInch() && number.unit() != Measured.Unit.IN;
      double mm = number.value().doubleValue() * (metric ? 1 : Measured.MM_PER_INCH.doubleValue());
      String unit = number.unit() == Measured.Unit.MM ? " mm" : number.isBare() ? "" : " in";
      Cut cut = threads.ofSize(number.text() + unit, mm);
      boolean beside =
          threads.attributes().stream().anyMatch(t -> together(left, t) || together(right, t))
              || isThreadWord(mentions.get(index).to())
              || isThreadWord(mentions.get(index).from() - 1);
      if (!cut.made() && !(beside && number.isInch())) {
        return Optional.empty();
      }
      int cost = beside ? 1 : AWAY + 1;
      cost += metric ? 2 : 0;
      cost += number.isBare() ? 2 : 0;
      cost += cut.made() ? 0 : 3;
      cost += bound ? OTHERWISE_BOUND : 0;
      cost += right >= 0 && mentions.get(right).first() instanceof Claim.Unknown ? AWAY + 2 : 0;
      cost += mentions.stream().anyMatch(m -> m.first() instanceof Claim.Threaded) ? AWAY : 0;
      return Optional.of(new Sense(new Claim.Threaded(cut), cost));
    }

    private boolean isThreadWord(int token) {
      return tokens.at(token).isWord()
          && THREAD_WORDS.contains(Stems.root(tokens.at(token).text()));
    }

    /** True for a whole number at the beginning with a plural behind it: 50 black star knobs. */
    private boolean isCountOfThings() {
      boolean first = mentions.subList(0, index).stream().allMatch(Mention::saysNothing);
      boolean other = mentions.stream().anyMatch(m -> m.first() instanceof Claim.Count);
      if (!first || other || !isWhole() || number.times()) {
        return false;
      }
      int at = mentions.get(index).to();
      for (int seen = 0; seen < MOST_BEFORE_PLURAL && at < tokens.size(); seen++, at++) {
        Token token = tokens.at(at);
        if (!token.isWord() && !token.is("-")) {
          return false;
        }
        if (token.text().length() > 3 && !Stems.plural(token.text()).equals(token.text())) {
          return seen > 0 || !token.is("inches");
        }
      }
      return false;
    }

    private boolean isWhole() {
      return number.isBare() && number.isWhole() && number.value().signum() > 0;
    }

    /** True for the number of {@code 4-lobe}. */
    private boolean isPrefix() {
      int next = mentions.get(index).to();
      return tokens.at(next).is("-") && tokens.joined(next) && tokens.joined(next + 1);
    }

    private Optional<Sense> asCount() {
      boolean whole = isWhole() && !isPrefix();
      boolean crossed = number.times() && left >= 0 && (isThread(left) || isNumber(left));
      if (!whole || crossed) {
        return Optional.empty();
      }
      boolean first = mentions.subList(0, index).stream().allMatch(Mention::saysNothing);
      int cost = first || number.times() ? 3 : 7;
      cost += mentions.stream().anyMatch(m -> m.first() instanceof Claim.Count) ? AWAY : 0;
      return Optional.of(new Sense(new Claim.Count(Measured.plain(number.value())), cost));
    }
  }
}
