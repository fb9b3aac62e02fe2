package pressweek.data.guide;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.RuleBook.Meaning;
import pressweek.data.problem.Attribute;

/**
 * A plant's item code: how codes are written and what they mean. {@code docs/guide-files.md}
 * describes the file.
 */
public final class Guide {
  /** A longer text is no item code. */
  public static final int LONGEST_CODE = 200;

  private static final int SHOWN = 60;

  private final GuideSheet sheet;
  private final String separator;
  private final Map<Family, List<List<Part>>> blocks = new IdentityHashMap<>();
  private final Map<Family, List<GuideRule>> rules = new IdentityHashMap<>();
  private final Encoder encoder;

  /** The guide that a file describes. */
  public Guide(GuideSheet sheet) {
    this.sheet = sheet;
    this.separator = Symbols.fold(sheet.separator(), sheet.ignoreCase());
    for (Family family : sheet.families()) {
      blocks.put(family, Blocks.of(family.parts()));
      rules.put(family, sheet.rules(family));
    }
    this.encoder = new Encoder(this);
  }

  /**
   * A way to read a code.
   *
   * @param family kind of item
   * @param parts its parts
   * @param meaning what they mean
   */
  private record Way(Family family, List<PartMatch> parts, Meaning meaning) {}

  /** The guide as its file says it. */
  public GuideSheet sheet() {
    return sheet;
  }

  /** True when capital and small letters are the same. */
  public boolean ignoreCase() {
    return sheet.ignoreCase();
  }

  /** Kinds of item. */
  public List<Family> families() {
    return sheet.families();
  }

  /** How people name what the codes say. */
  public GuideWords words() {
    return sheet.words();
  }

  /** From attributes to codes. */
  public Encoder encoder() {
    return encoder;
  }

  /** The rules of a family: its own, then those for all. */
  List<GuideRule> rules(Family family) {
    return rules.getOrDefault(family, List.of());
  }

  /**
   * What a code means; any text is answered, a code that means nothing with the fault that lies
   * furthest along it.
   */
  public Decoded decode(String code) {
    String text = code.strip();
    if (text.length() <= LONGEST_CODE) {
      List<Way> ways = ways(CodeText.of(text, ignoreCase()), new Misses(false));
      if (ways.size() == 1 && ways.get(0).meaning().faults().isEmpty()) {
        return decoded(text, ways.get(0));
      }
    }
    return explain(code).decoded();
  }

  /** What a code means, with what each of its parts says, or the place of its fault. */
  public CodeReading explain(String code) {
    String text = code.strip();
    if (text.length() > LONGEST_CODE) {
      String sentence =
          text.length() + " characters; expected an item code of at most " + LONGEST_CODE;
      return unreadable(
          text, new CodeFault(LONGEST_CODE, 0, "", "the end of the code", List.of(), sentence));
    }
    Misses misses = new Misses(true);
    Map<Map<String, String>, Way> fits = new LinkedHashMap<>();
    for (Way way : ways(CodeText.of(text, ignoreCase()), misses)) {
      fits.putIfAbsent(way.meaning().values(), way);
    }
    List<Way> good =
        fits.values().stream().filter(way -> way.meaning().faults().isEmpty()).toList();
    if (good.size() == 1) {
      return new CodeReading(
          decoded(text, good.get(0)), pieces(text, good.get(0)), Optional.empty());
    }
    if (good.size() > 1) {
      String sentence = ambiguity(good);
      return unreadable(
          text, new CodeFault(0, text.length(), text, "one meaning", List.of(), sentence));
    }
    return fits.values().stream()
        .min((a, b) -> a.meaning().faults().size() - b.meaning().faults().size())
        .map(way -> broken(text, way))
        .orElseGet(() -> unreadable(text, misses.fault()));
  }

  /** Every meaning of a code that the rules allow; two of them make the code ambiguous. */
  public List<CodeReading> readings(String code) {
    String text = code.strip();
    if (text.length() > LONGEST_CODE) {
      return List.of();
    }
    Map<Map<String, String>, CodeReading> readings = new LinkedHashMap<>();
    for (Way way : ways(CodeText.of(text, ignoreCase()), new Misses(false))) {
      if (way.meaning().faults().isEmpty()) {
        readings.putIfAbsent(
            way.meaning().values(),
            new CodeReading(decoded(text, way), pieces(text, way), Optional.empty()));
      }
    }
    return List.copyOf(readings.values());
  }

  /** The families as which a code can be read under their rules. */
  public List<String> families(String code) {
    String text = code.strip();
    if (text.length() > LONGEST_CODE) {
      return List.of();
    }
    return ways(CodeText.of(text, ignoreCase()), new Misses(false)).stream()
        .filter(way -> way.meaning().faults().isEmpty())
        .map(way -> way.family().name())
        .distinct()
        .toList();
  }

  private List<Way> ways(CodeText code, Misses misses) {
    FamilyReader reader = new FamilyReader(separator, code, misses);
    List<Way> ways = new ArrayList<>(1);
    for (Family family : sheet.families()) {
      for (List<PartMatch> parts : reader.read(blocks.getOrDefault(family, List.of()))) {
        ways.add(new Way(family, parts, RuleBook.meaning(code, rules(family), parts)));
      }
    }
    return ways;
  }

  private static Decoded decoded(String code, Way way) {
    List<String> faults =
        way.meaning().faults().stream().map(fault -> quoted(code) + fault.sentence()).toList();
    return new Decoded(
        code, way.family().name(), way.meaning().attributes(), faults, way.meaning().special());
  }

  private static CodeReading unreadable(String code, CodeFault fault) {
    Decoded decoded =
        new Decoded(code, "", List.of(), List.of(quoted(code) + fault.sentence()), false);
    return new CodeReading(decoded, List.of(), Optional.of(fault));
  }

  /** A code that can be read, but not as anything that its rules allow. */
  private static CodeReading broken(String code, Way way) {
    RuleBook.Fault first = way.meaning().faults().get(0);
    PartMatch part = way.meaning().saidBy().get(first.attribute());
    int start = part == null ? 0 : part.start();
    int end = part == null ? code.length() : part.end();
    CodeFault fault =
        new CodeFault(
            start,
            end - start,
            code.substring(start, end),
            "what the rules allow",
            List.of(),
            first.sentence());
    return new CodeReading(decoded(code, way), pieces(code, way), Optional.of(fault));
  }

  private static List<CodeReading.Piece> pieces(String code, Way way) {
    List<CodeReading.Piece> pieces = new ArrayList<>();
    for (PartMatch match : way.parts()) {
      Map<String, String> says = new LinkedHashMap<>(match.form().sets());
      List<String> words = new ArrayList<>();
      for (Hit hit : match.hits()) {
        says.putAll(hit.sets());
        if (!hit.words().isEmpty()) {
          words.add(hit.words());
        }
      }
      pieces.add(
          new CodeReading.Piece(
              match.start(),
              match.end(),
              match.part().name(),
              code.substring(match.start(), match.end()),
              says,
              String.join(", ", words)));
    }
    return pieces;
  }

  private static String quoted(String code) {
    return "code \"" + shown(code) + "\": ";
  }

  /** A text as messages quote it: cut off where it is too long to read. */
  static String shown(String text) {
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
  }

  /** Names the readings and the attributes in which they differ. */
  private static String ambiguity(List<Way> ways) {
    List<String> words = new ArrayList<>();
    for (Way way : ways) {
      List<String> own =
          way.meaning().attributes().stream()
              .filter(attribute -> !saidByAll(ways, attribute))
              .map(attribute -> attribute.name() + " " + attribute.value())
              .toList();
      words.add(way.family().name() + (own.isEmpty() ? "" : " (" + String.join(", ", own) + ")"));
    }
    return "it has more than one meaning: " + String.join(", or ", words);
  }

  private static boolean saidByAll(List<Way> ways, Attribute attribute) {
    return ways.stream()
        .allMatch(
            way ->
                attribute
                    .value()
                    .equals(way.meaning().values().getOrDefault(attribute.name(), "")));
  }
}
