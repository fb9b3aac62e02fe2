package pressweek.data.thread;

import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.thread.ThreadText.Word;

/**
 * The sizes by which a thread is told from another, of standard threads and of others: {@code
 * 1-1/8-7 UNC}, {@code M100x2}, {@code M8-LH}.
 *
 * @param majorMm basic major diameter, mm
 * @param pitchMm pitch, mm; empty when it is not known
 * @param leftHand true for a left-hand thread
 * @param whitworth true for the 55 degree profile of Whitworth threads, false for the 60 degree one
 *     that metric and unified threads share
 */
public record ThreadSize(
    double majorMm, OptionalDouble pitchMm, boolean leftHand, boolean whitworth) {
  /**
   * Two threads whose major diameters differ by no more than this share of the larger are easily
   * taken for each other: all five pairs of a metric and an inch thread that the trade warns of lie
   * within it, with 0.8 to 5.5 %.
   */
  public static final double LOOK_ALIKE_SHARE = 0.06;

  /** Reads a designation; empty when it is neither metric nor inch, as with a pipe thread. */
  public static Optional<ThreadSize> read(String designation) {
    return ThreadReader.read(designation).flatMap(ThreadSize::of);
  }

  static Optional<ThreadSize> of(ThreadText text) {
    boolean bareSize = text.inch() && text.pitch().isEmpty() && text.word() == Word.NONE;
    boolean unknownKind = text.inch() && !text.whole() && text.word() == Word.NONE;
    if (bareSize || unknownKind) {
      return Optional.empty();
    }
    Optional<Thread> listed = Threads.find(standard(text));
    return Optional.of(
        new ThreadSize(
            listed.map(Thread::majorMm).orElse(text.majorMm()),
            listed.map(t -> OptionalDouble.of(t.pitchMm())).orElseGet(() -> pitch(text)),
            text.leftHand(),
            text.word() == Word.WHITWORTH));
  }

  /** The text without what keeps it from being a standard thread but does not change its sizes. */
  private static ThreadText standard(ThreadText text) {
    OptionalDouble pitch = text.hasLength() ? OptionalDouble.empty() : text.pitch();
    return new ThreadText(
        text.inch(), text.size(), text.rounded(), pitch, text.word(), false, true);
  }

  private static OptionalDouble pitch(ThreadText text) {
    return text.hasLength() ? OptionalDouble.empty() : text.pitchMm();
  }

  /** True when the two are different threads that are easily taken for each other. */
  public boolean looksLike(ThreadSize other) {
    return !equals(other) && gapShare(other) <= LOOK_ALIKE_SHARE;
  }

  /** By how much the major diameters differ, as a share of the larger, whichever that is. */
  public double gapShare(ThreadSize other) {
    return Math.abs(majorMm - other.majorMm) / Math.max(majorMm, other.majorMm);
  }
}
