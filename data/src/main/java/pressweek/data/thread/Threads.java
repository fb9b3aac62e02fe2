package pressweek.data.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.thread.ThreadText.Word;

/**
 * The standard threads, and how people write them: unified UNC and UNF from #4 to 1 in (ASME B1.1),
 * ISO metric from M3 to M20 with coarse and fine pitches (ISO 261).
 *
 * <p>Understood is a text that holds one thread and nothing else, in any capitals, with or without
 * spaces, with the usual kinds of dashes, inch signs, multiplication signs and fractions:
 *
 * <pre>
 * 5/16-18  5/16"-18 UNC  5/16 x 18  .3125-18  0.312-18 UNC-2A  #10-32  10-32  No. 10-24  1/4 UNC
 * M8  M8x1.25  M8-1.25  M8x1,25-6g  MF8x1  M10x1.25
 * </pre>
 *
 * A metric size without a pitch is the coarse one, as ISO 261 and ISO 965-1 have it. Class of fit
 * and tolerance class are read and left out: {@code 2A} and {@code 3A} are the same thread here.
 * Not one thread are: an inch size without threads an inch or series ({@code 5/16}), {@code MF8}
 * without a pitch, a text that contradicts itself ({@code 1/4-28 UNC}), a pitch that is not listed,
 * a length ({@code M8x30}), left-hand, pipe and Whitworth threads.
 *
 * <p>Every method takes any text and throws nothing; what is longer than a thread can be is not
 * looked at.
 */
public final class Threads {
  private Threads() {}

  /** All threads, unified before metric, by size, coarse before fine. */
  public static List<Thread> all() {
    return ThreadTables.all();
  }

  /** The thread that a text names; empty when it names none, or leaves open which. */
  public static Optional<Thread> find(String text) {
    return ThreadReader.read(text).flatMap(Threads::find);
  }

  static Optional<Thread> find(ThreadText text) {
    List<Thread> candidates = candidates(text);
    boolean open = !text.inch() && text.word() == Word.FINE && text.pitch().isEmpty();
    return candidates.size() == 1 && !open ? Optional.of(candidates.get(0)) : Optional.empty();
  }

  /**
   * The threads that a text can mean: one when it says which, coarse before fine when it says only
   * a size, none when there is none. {@code 5/16} can be 5/16-18 UNC or 5/16-24 UNF; {@code M8} is
   * M8x1.25 and no other.
   */
  public static List<Thread> candidates(String text) {
    return ThreadReader.read(text).map(Threads::candidates).orElse(List.of());
  }

  private static List<Thread> candidates(ThreadText text) {
    if (!text.isPlain()) {
      return List.of();
    }
    boolean coarseMeant = !text.inch() && text.pitch().isEmpty() && text.word() == Word.NONE;
    OptionalDouble pitch = text.pitchMm();
    return ThreadTables.ofSize(text).stream()
        .filter(t -> text.allows(t.series()) && (!coarseMeant || t.series().isCoarse()))
        .filter(t -> pitch.isEmpty() || Math.abs(t.pitchMm() - pitch.getAsDouble()) < 1e-9)
        .toList();
  }

  /**
   * A text in one spelling for comparing: {@code M8X1.25}, {@code 5/16-18UNC}. A metric thread that
   * is not listed is written the same way; other text is as it is, in capitals without spaces.
   */
  public static String key(String text) {
    Optional<ThreadText> read = ThreadReader.read(text);
    Optional<Thread> thread = read.flatMap(Threads::find);
    if (thread.isPresent()) {
      return ThreadTables.key(thread.get());
    }
    return read.flatMap(Threads::unlisted)
        .orElseGet(() -> text.replace(" ", "").replace('×', 'x').toUpperCase(Locale.ROOT));
  }

  private static Optional<String> unlisted(ThreadText text) {
    boolean said =
        !text.inch() && text.isPlain() && text.word() == Word.NONE && text.pitch().isPresent();
    return said
        ? Optional.of("M" + number(text.size()) + "X" + number(text.pitch().getAsDouble()))
        : Optional.empty();
  }

  /** True when both write the same thread, or the same other text. */
  public static boolean same(String a, String b) {
    return a.equals(b) || key(a).equals(key(b));
  }

  /**
   * A designation with its pitch in mm: {@code 5/16-18 UNC (pitch 1.411 mm)}. One that says it
   * already, or whose pitch is not known, stays as it is.
   */
  public static String inFull(String designation) {
    Optional<ThreadText> text = ThreadReader.read(designation);
    boolean said =
        text.filter(t -> !t.inch() && t.pitch().isPresent() && !t.hasLength()).isPresent();
    OptionalDouble pitch =
        text.flatMap(ThreadSize::of).map(ThreadSize::pitchMm).orElse(OptionalDouble.empty());
    return said || pitch.isEmpty()
        ? designation
        : designation + " (pitch " + rounded(pitch.getAsDouble()) + " mm)";
  }

  /** A length to a thousandth of a mm, without zeros at its end. */
  static String rounded(double mm) {
    return number(Math.round(mm * 1000) / 1000.0);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
