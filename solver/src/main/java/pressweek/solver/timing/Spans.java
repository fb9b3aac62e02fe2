package pressweek.solver.timing;

import java.util.Arrays;
import java.util.List;

/**
 * The working time of one press: sorted spans of minutes since 1970 UTC, and the stretches within
 * which a change must stay.
 *
 * <p>{@link #FAR} stands for "never" in all of this package's int arithmetic; it is far enough from
 * the largest int to be added to.
 */
final class Spans {
  /** Never. */
  static final int FAR = Integer.MAX_VALUE / 2;

  private final int[] from;
  private final int[] to;
  private final int[] before;
  private final int[] stretchTo;
  private final int total;

  /**
   * For each row of 64 minutes from the first span on: the last span that begins before or in its
   * first minute.
   */
  private final int[] guess;

  /** Spans must be sorted and apart; each comes with the end of its stretch. */
  Spans(List<Span> spans) {
    int n = spans.size();
    from = new int[n];
    to = new int[n];
    before = new int[n];
    stretchTo = new int[n];
    int sum = 0;
    for (int i = 0; i < n; i++) {
      Span span = spans.get(i);
      from[i] = span.from();
      to[i] = span.to();
      before[i] = sum;
      stretchTo[i] = span.stretchTo();
      sum += span.to() - span.from();
    }
    total = sum;
    int rows = n == 0 ? 0 : ((to[n - 1] - from[0]) >> 6) + 1;
    guess = new int[rows];
    for (int row = 0, i = 0; row < rows; row++) {
      while (i + 1 < n && from[i + 1] <= from[0] + (row << 6)) {
        i++;
      }
      guess[row] = i;
    }
  }

  /** A span of work, and where its stretch ends. */
  record Span(int from, int to, int stretchTo) {}

  /** The span that holds the first working minute at or after a time; {@link #size} for none. */
  int at(int time) {
    int i = find(time);
    return i >= 0 && time < to[i] ? i : i + 1;
  }

  /** How many spans there are. */
  int size() {
    return from.length;
  }

  /** The first minute of a span. */
  int from(int span) {
    return from[span];
  }

  /** The first minute after a span. */
  int to(int span) {
    return to[span];
  }

  /** The end of the stretch that a span lies in. */
  int stretchTo(int span) {
    return stretchTo[span];
  }

  /** The span in which work is done that starts in a span at a time; {@link #size} for never. */
  int doneIn(int span, int start, int minutes) {
    int i = span;
    int left = minutes - (to[i] - start);
    while (left > 0) {
      i++;
      if (i == from.length) {
        return i;
      }
      left -= to[i] - from[i];
    }
    return i;
  }

  /** When work is done that starts in a span at a time and ends in another. */
  int doneAt(int span, int start, int minutes, int end) {
    if (span == end) {
      return start + minutes;
    }
    return from[end] + before[span] + start - from[span] + minutes - before[end];
  }

  /** The first working minute at or after a time, or {@link #FAR}. */
  int next(int time) {
    int i = at(time);
    return i == from.length ? FAR : Math.max(time, from[i]);
  }

  /** When work that starts at a working minute is done; the end may touch the end of a span. */
  int finish(int start, int minutes) {
    int i = at(start);
    if (i == from.length || minutes == 0) {
      return i == from.length ? FAR : start;
    }
    int end = doneIn(i, start, minutes);
    return end == from.length ? FAR : doneAt(i, start, minutes, end);
  }

  /**
   * The start of work of so many minutes after which the first working minute is not before a time.
   */
  int startFor(int time, int minutes) {
    if (time >= FAR) {
      return FAR;
    }
    int done = Math.max(0, workBefore(time) - minutes);
    if (done >= total) {
      return FAR;
    }
    int i = Arrays.binarySearch(before, done);
    if (i < 0) {
      i = -i - 2;
    }
    return from[i] + done - before[i];
  }

  /** Whether any work takes place in a span of time. */
  boolean worksIn(int start, int end) {
    return next(start) < end;
  }

  /** Working minutes up to a time. */
  int workBefore(int time) {
    int i = find(time);
    return i < 0 ? 0 : before[i] + Math.min(time, to[i]) - from[i];
  }

  /** All working minutes. */
  int total() {
    return total;
  }

  /** The last span that begins at or before a time, or -1. */
  private int find(int time) {
    if (from.length == 0 || time < from[0]) {
      return -1;
    }
    int row = (time - from[0]) >> 6;
    int i = row < guess.length ? guess[row] : from.length - 1;
    while (i + 1 < from.length && from[i + 1] <= time) {
      i++;
    }
    return i;
  }
}
