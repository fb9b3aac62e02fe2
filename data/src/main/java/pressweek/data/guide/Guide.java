package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.guide.FamilyReader.Placed;
import pressweek.data.problem.Attribute;

/**
 * A plant's item code: how codes are written and what they mean. {@code docs/input-files.md}
 * describes the file.
 *
 * @param name name of the code
 * @param separator text between the parts of a code; empty when they follow each other without a
 *     break
 * @param ignoreCase true when capital and small letters are the same
 * @param families kinds of item
 * @param rules rules for all of them
 */
public record Guide(
    String name,
    String separator,
    boolean ignoreCase,
    List<Family> families,
    List<GuideRule> rules) {
  private static final int SHOWN = 60;

  public Guide {
    families = List.copyOf(families);
    rules = List.copyOf(rules);
  }

  /**
   * What a code means; any text is answered, a code that means nothing with the fault that lies
   * furthest along it.
   */
  public Decoded decode(String code) {
    String text = code.strip();
    Misses misses = new Misses();
    Map<Map<String, String>, Decoded> fits = new LinkedHashMap<>();
    for (Family family : families) {
      List<GuideRule> all = new ArrayList<>(family.rules());
      all.addAll(rules);
      for (List<Placed> reading : FamilyReader.read(this, family, text, misses)) {
        Decoded decoded = RuleBook.decode(text, family, all, reading);
        fits.putIfAbsent(values(decoded), decoded);
      }
    }
    List<Decoded> good = fits.values().stream().filter(Decoded::good).toList();
    if (good.size() == 1) {
      return good.get(0);
    }
    if (good.size() > 1) {
      return fault(text, ambiguity(good));
    }
    return fits.values().stream()
        .min(Comparator.comparingInt(faulty -> faulty.faults().size()))
        .map(first -> named(text, first))
        .orElseGet(() -> fault(text, misses.sentence()));
  }

  private static Map<String, String> values(Decoded decoded) {
    Map<String, String> values = new LinkedHashMap<>();
    decoded.attributes().forEach(attribute -> values.put(attribute.name(), attribute.value()));
    return values;
  }

  private static Decoded fault(String code, String sentence) {
    return new Decoded(code, "", List.of(), List.of(quoted(code) + sentence));
  }

  private static Decoded named(String code, Decoded faulty) {
    List<String> faults = faulty.faults().stream().map(fault -> quoted(code) + fault).toList();
    return new Decoded(code, faulty.family(), faulty.attributes(), faults);
  }

  private static String quoted(String code) {
    return "code \"" + shown(code) + "\": ";
  }

  /** A text as messages quote it: cut off where it is too long to read. */
  static String shown(String text) {
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
  }

  /** Names the readings and the attributes in which they differ. */
  private static String ambiguity(List<Decoded> readings) {
    List<String> words = new ArrayList<>();
    for (Decoded reading : readings) {
      List<String> own =
          reading.attributes().stream()
              .filter(a -> !saidByAll(readings, a))
              .map(a -> a.name() + " " + a.value())
              .toList();
      words.add(reading.family() + (own.isEmpty() ? "" : " (" + String.join(", ", own) + ")"));
    }
    return "it has more than one meaning: " + String.join(", or ", words);
  }

  private static boolean saidByAll(List<Decoded> readings, Attribute attribute) {
    return readings.stream()
        .allMatch(
            reading ->
                reading.attributes().stream()
                    .anyMatch(
                        a ->
                            a.name().equals(attribute.name())
                                && a.value().equals(attribute.value())));
  }
}
