package pressweek.data.words;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.thread.Series;
import pressweek.data.thread.Thread;
import pressweek.data.thread.Threads;

/** The standard threads by size, for telling a pitch from a length. */
final class StandardThreads {
  /** How far a decimal of an inch may be off a size that it rounds, mm. */
  private static final double ROUNDED_MM = 0.0128;

  private static final double SAME_MM = 1e-6;

  /** Sizes below 1/4 in are numbers: #0 is 0.060 in, and each number 0.013 in more (ASME B1.1). */
  private static final double NUMBER_0_INCH = 0.060;

  private static final double NUMBER_STEP_INCH = 0.013;

  private final Map<Double, List<Thread>> metric = new HashMap<>();
  private final List<Thread> inch;

  StandardThreads() {
    List<Thread> all = Threads.all();
    inch = all.stream().filter(thread -> thread.series().isInch()).toList();
    for (Thread thread : all) {
      if (!thread.series().isInch()) {
        metric.merge(
            thread.majorMm(),
            List.of(thread),
            (a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream()).toList());
      }
    }
  }

  /** The coarse thread of a metric size (ISO 261); empty when the size is not listed. */
  Optional<Thread> coarse(double sizeMm) {
    return metric.getOrDefault(sizeMm, List.of()).stream()
        .filter(thread -> thread.series().isCoarse())
        .findFirst();
  }

  /** The thread of a metric size and pitch; empty when ISO 261 does not list it. */
  Optional<Thread> metric(double sizeMm, double pitchMm) {
    return metric.getOrDefault(sizeMm, List.of()).stream()
        .filter(thread -> Math.abs(thread.pitchMm() - pitchMm) < SAME_MM)
        .findFirst();
  }

  /** The thread of an inch size with so many threads an inch; empty when it is not listed. */
  Optional<Thread> inch(double majorInch, int threadsPerInch) {
    return inch.stream()
        .filter(thread -> isSize(thread, majorInch))
        .filter(thread -> thread.threadsPerInch().orElse(0) == threadsPerInch)
        .findFirst();
  }

  /** The thread of an inch size in a series; empty when it is not listed. */
  Optional<Thread> inch(double majorInch, Series series) {
    return inch.stream()
        .filter(thread -> isSize(thread, majorInch) && thread.series() == series)
        .findFirst();
  }

  private static boolean isSize(Thread thread, double majorInch) {
    return Math.abs(thread.majorMm() - majorInch * Measured.MM_PER_INCH.doubleValue())
        <= ROUNDED_MM;
  }

  /** The diameter of a numbered size, inches. */
  static double numbered(int number) {
    return NUMBER_0_INCH + NUMBER_STEP_INCH * number;
  }
}
