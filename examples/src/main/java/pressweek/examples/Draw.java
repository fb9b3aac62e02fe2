package pressweek.examples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Random numbers that are the same for a seed on every machine and every Java: SplitMix64. Source:
 * Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014. Whole
 * numbers only, since those of a machine's floating point may differ.
 */
final class Draw {
  private long state;

  Draw(long seed) {
    this.state = seed;
  }

  /** The next 64 bits. */
  long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Numbers of their own for one sheet, so that a further draw there changes no other sheet. */
  Draw fork() {
    return new Draw(next());
  }

  /** A number from 0 up to, not including, {@code bound}. */
  int below(int bound) {
    return (int) ((next() >>> 33) % bound);
  }

  /** A number between two others, both included. */
  int between(int low, int high) {
    return low + below(high - low + 1);
  }

  /** True in so many cases of a hundred. */
  boolean chance(int percent) {
    return below(100) < percent;
  }

  /** One of a list. */
  <T> T of(List<T> list) {
    return list.get(below(list.size()));
  }

  /** So many different ones of a list, or all of it, in the order drawn. */
  <T> List<T> some(List<T> list, int count) {
    List<T> rest = new ArrayList<>(list);
    for (int i = rest.size() - 1; i > 0; i--) {
      Collections.swap(rest, i, below(i + 1));
    }
    return List.copyOf(rest.subList(0, Math.min(count, rest.size())));
  }

  /** An index drawn by weight; weights are positive. */
  int weighted(List<Integer> weights) {
    int left = below(weights.stream().mapToInt(Integer::intValue).sum());
    int index = 0;
    while (left >= weights.get(index)) {
      left -= weights.get(index);
      index++;
    }
    return index;
  }
}
