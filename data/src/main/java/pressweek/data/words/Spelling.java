package pressweek.data.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The words of the vocabulary that a customer's word can be meant to be. */
final class Spelling {
  private static final int SLIP = 2;
  private static final int TWO_SLIPS = 3;
  private static final int ABBREVIATED = 2;
  private static final int LEAST_PREFIX = 3;
  private static final int PLAIN_PREFIX = 4;
  private static final int MOST_ABBREVIATION = 10;

  private final Set<String> known;
  private final Map<String, List<String>> byRoot = new HashMap<>();
  private final SlipIndex trade;
  private final SlipIndex ordinary;
  private final List<String> sorted;

  /**
   * A word of the vocabulary that may be meant.
   *
   * @param word word, without plural s
   * @param cost how doubtful that is; 0 when it stands there
   * @param changed true when other letters stand there
   */
  record Variant(String word, int cost, boolean changed) {}

  Spelling(Lexicon lexicon) {
    known = lexicon.words();
    sorted = List.copyOf(new TreeSet<>(known));
    for (String word : sorted) {
      byRoot.computeIfAbsent(Stems.root(word), r -> new ArrayList<>(1)).add(word);
    }
    Set<String> joined = new HashSet<>(known);
    joined.addAll(lexicon.phrases().keySet());
    trade = new SlipIndex(joined);
    ordinary = new SlipIndex(OrdinaryWords.all());
  }

  /** True for a word of the vocabulary. */
  boolean isKnown(String word) {
    return known.contains(Stems.plural(word));
  }

  /**
   * What a word can be meant to be, all equally likely; the word itself when it is known or nothing
   * is near it.
   *
   * @param word word in small letters
   * @param point true when a point stands behind it
   */
  List<Variant> variants(String word, boolean point) {
    String stem = Stems.plural(word);
    String full = OrdinaryWords.inFull(word);
    if (known.contains(stem)) {
      return withRoots(stem);
    }
    if (OrdinaryWords.isOrdinary(word)) {
      return List.of(new Variant(stem, 0, false));
    }
    if (!full.equals(word) && known.contains(full)) {
      return List.of(new Variant(full, 1, true));
    }
    List<String> roots = byRoot.getOrDefault(Stems.root(word), List.of());
    if (!roots.isEmpty()) {
      return roots.stream().map(root -> new Variant(root, 1, false)).toList();
    }
    List<Variant> near = abbreviations(word, point);
    near = near.isEmpty() ? slips(word) : near;
    near = near.isEmpty() ? slips(stem) : near;
    return near.isEmpty() ? List.of(new Variant(stem, 0, false)) : near;
  }

  /** A known word, others of the same root, and what it may abbreviate: locking for lock. */
  private List<Variant> withRoots(String stem) {
    List<Variant> variants = new ArrayList<>(1);
    variants.add(new Variant(stem, 0, false));
    for (String other : byRoot.getOrDefault(Stems.root(stem), List.of())) {
      if (!other.equals(stem)) {
        variants.add(new Variant(other, 1, false));
      }
    }
    consonants(stem).forEach(full -> variants.add(new Variant(full, ABBREVIATED, true)));
    return variants;
  }

  private List<Variant> slips(String stem) {
    List<String> nearest = trade.nearest(stem);
    if (nearest.isEmpty()) {
      return List.of();
    }
    int distance = SlipIndex.distance(stem, nearest.get(0));
    List<String> plain = ordinary.nearest(stem);
    boolean nearer = !plain.isEmpty() && SlipIndex.distance(stem, plain.get(0)) < distance;
    if (nearer) {
      return List.of();
    }
    int cost = distance > 1 ? TWO_SLIPS : SLIP;
    return nearest.stream().map(word -> new Variant(word, cost, true)).toList();
  }

  private List<Variant> abbreviations(String word, boolean point) {
    if (word.length() > MOST_ABBREVIATION && !point) {
      return List.of();
    }
    List<String> found = consonants(word);
    if (found.isEmpty() && word.length() >= (point ? LEAST_PREFIX : PLAIN_PREFIX)) {
      found =
          sorted.stream()
              .filter(full -> full.startsWith(word) && full.length() > word.length() + 1)
              .toList();
    }
    boolean one = found.stream().map(Stems::root).distinct().count() == 1;
    return one || point
        ? found.stream().map(full -> new Variant(full, ABBREVIATED, true)).toList()
        : List.of();
  }

  /** {@code blk} for black: consonants of a word in order, with its first letter and its last. */
  private List<String> consonants(String word) {
    boolean vowel = word.chars().skip(1).anyMatch(c -> Stems.isVowel((char) c));
    if (vowel || word.length() < LEAST_PREFIX || !word.chars().allMatch(Character::isLetter)) {
      return List.of();
    }
    int least = Integer.MAX_VALUE;
    List<String> best = new ArrayList<>();
    for (String full : sorted) {
      if (full.charAt(0) == word.charAt(0) && full.length() > word.length()) {
        String skeleton = skeleton(full);
        int left = skeleton.length() - word.length();
        if (left >= 0 && left <= least && abbreviates(word, skeleton)) {
          if (left < least) {
            best.clear();
          }
          least = left;
          best.add(full);
        }
      }
    }
    return best;
  }

  private static String skeleton(String word) {
    StringBuilder skeleton = new StringBuilder(word.substring(0, 1));
    for (int i = 1; i < word.length(); i++) {
      if (!Stems.isVowel(word.charAt(i))) {
        skeleton.append(word.charAt(i));
      }
    }
    return skeleton.toString();
  }

  private static boolean abbreviates(String word, String skeleton) {
    int at = 0;
    for (int i = 0; i < skeleton.length() && at < word.length(); i++) {
      if (skeleton.charAt(i) == word.charAt(at)) {
        at++;
      }
    }
    return at == word.length()
        && skeleton.charAt(skeleton.length() - 1) == word.charAt(word.length() - 1);
  }
}
