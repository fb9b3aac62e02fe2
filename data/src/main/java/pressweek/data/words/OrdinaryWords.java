package pressweek.data.words;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * English that says nothing of an item: courtesy, small words, the language of orders. From memory
 * of how people write orders; no source.
 */
final class OrdinaryWords {
  private static final Set<String> EMPTY =
      words(
          "a about above after all already also am among an and any anyone approx",
          "approximately are as asap at available avail back be because been being below",
          "best better between both bought but by call can check cheap come company could customer",
          "date day days deliver delivered delivery dear did different do does done down due each",
          "either else end ends enough etc every exact exactly fast few first fit fits",
          "following for from front full get give go going good got great had has have he",
          "hello her here hey hi him his how however i if in inquiry into is it item items its just",
          "kind kindly know later least let line list little look looking lot lots made",
          "mail make making many matching may maybe me mean might more most much must my near need",
          "needed needs never next no non none nor not dont now of off offer often ok okay on once one ones only open or",
          "order ordered orders ordering other our out over own parts per piece place please",
          "pls plz possible preferably prefer preferred price pricing product project",
          "provide put quick quickly quote quotation quoted re ready really received regards repeat",
          "reply request require required requires right rush said sale say",
          "second see send set sets several she ship shipped shipping short should side sides since",
          "so some someone something soon sort specified spec specs standard start still stock",
          "stop such sure take team tell than thank thanks that the their them then there these",
          "they thing this those three thru time to today together tomorrow too total touch two",
          "type under unit until up upon urgent urgently us use using usual usually very via",
          "want wanted wants was way we week weeks well were what when where which while who whole",
          "w cw will wish with within without would yes yet you your yours also ltd inc gmbh co sir",
          "madam january february march april june july august september october november",
          "december jan feb mar apr jun jul aug sep sept oct nov dec monday tuesday wednesday",
          "thursday friday saturday sunday mon tue wed thu fri");

  /** Words that are no slips and no abbreviations, though they may look like those of a trade. */
  private static final Set<String> OTHER =
      words(
          "base band bend bent block board boat body bold bore both bottom box bus but cap case",
          "cast clean clear cold cone copper cover cross dark deep drill drop dry easy edge engine",
          "face fall fast feed feet file fill fine finger fix flat float floor force form frame",
          "free gear gold grade grip guard hard heat heavy high hold hole home hook hot iron kit",
          "large lead left life lift light lid load lock long low machine main mall man mark mat",
          "matt metal mind mount neck oil pack pad pair paint panel pin pipe plain plate play",
          "plug point pole post pull pump push quality race rail read rest ring rod roll room",
          "rough rubber safe screw seal seat sell shape sharp shell shine shop sign silver size",
          "skin sky slide slip slot slow small smooth soft spare spring square stage stand steam",
          "step stick stone store strong style suit sun sweet table tank tape tea test thick thin",
          "threw tip tool top track tray tree tube turn van wall warm wash water weld wet wide",
          "win wire wood work again before existing hand last like new old part previous repeat",
          "same sample samples used");

  /** Words that a number of pieces stands beside. */
  private static final Set<String> PIECES =
      words("pcs pc pce pces pieces piece ea each units unit qty quantity off nos pkt qnty");

  /** Words that a number of a document stands behind. */
  private static final Set<String> DOCUMENTS =
      words(
          "part pn drawing dwg po order ref reference rfq quote quotation inquiry enquiry line item job invoice pos");

  /** What the trade writes for what. */
  private static final Map<String, String> SHORT =
      Map.ofEntries(
          Map.entry("sst", "stainless"),
          Map.entry("stn", "stainless"),
          Map.entry("thd", "thread"),
          Map.entry("thrd", "thread"),
          Map.entry("galv", "galvanised"),
          Map.entry("rnd", "round"),
          Map.entry("alum", "aluminium"),
          Map.entry("lt", "light"),
          Map.entry("dk", "dark"),
          Map.entry("diam", "diameter"));

  private OrdinaryWords() {}

  private static Set<String> words(String... lines) {
    Set<String> words = new HashSet<>();
    for (String line : lines) {
      words.addAll(Arrays.asList(line.split(" ")));
    }
    return Set.copyOf(words);
  }

  /** True for a word that says nothing of an item. */
  static boolean isEmpty(String word) {
    return EMPTY.contains(word) || PIECES.contains(word);
  }

  /** True for a word that is none of a trade's own, and no slip. */
  static boolean isOrdinary(String word) {
    return isEmpty(word) || OTHER.contains(word);
  }

  /** True for a word beside a number of pieces. */
  static boolean isPieces(String word) {
    return PIECES.contains(word);
  }

  /** True for a word before the number of a document. */
  static boolean isDocument(String word) {
    return DOCUMENTS.contains(word);
  }

  /** What the trade means by an abbreviation; the word itself when it is none. */
  static String inFull(String word) {
    return SHORT.getOrDefault(word, word);
  }

  /** Ordinary words, for spelling. */
  static Set<String> all() {
    Set<String> all = new HashSet<>(EMPTY);
    all.addAll(PIECES);
    return all;
  }
}
