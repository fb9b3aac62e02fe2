package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;

/** A set of minutes as spans in time order that neither overlap nor touch. */
final class Spans {
  private final List<Span> spans;

  /** Minutes in all spans before each one. */
  private final long[] before;

  private Spans(List<Span> spans) {
    this.spans = List.copyOf(spans);
    before = new long[spans.size() + 1];
    for (int i = 0; i < spans.size(); i++) {
      before[i + 1] = before[i] + spans.get(i).toMin() - spans.get(i).fromMin();
    }
  }

  /** All minutes that lie in any of the given spans. */
  static Spans union(Collection<Span> given) {
    List<Span> merged = new ArrayList<>();
    List<Span> sorted =
        given.stream()
            .filter(span -> !span.isEmpty())
            .sorted(Comparator.comparingLong(Span::fromMin))
            .toList();
    for (Span span : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && span.fromMin() <= merged.get(last).toMin()) {
        Span held = merged.get(last);
        merged.set(last, new Span(held.fromMin(), Math.max(held.toMin(), span.toMin())));
      } else {
        merged.add(span);
      }
    }
    return new Spans(merged);
  }

  /** The minutes of this set and those of the other. */
  Spans plus(Spans other) {
    List<Span> both = new ArrayList<>(spans);
    both.addAll(other.spans);
    return union(both);
  }

  /** The minutes of this set that are not in the other. */
  Spans minus(Spans other) {
    List<Span> rest = new ArrayList<>();
    for (Span span : spans) {
      long from = span.fromMin();
      for (int i = other.firstEndingAfter(from); i < other.spans.size(); i++) {
        Span cut = other.spans.get(i);
        if (cut.fromMin() >= span.toMin()) {
          break;
        }
        rest.add(new Span(from, cut.fromMin()));
        from = cut.toMin();
      }
      rest.add(new Span(from, span.toMin()));
    }
    return union(rest);
  }

  boolean contains(long minute) {
    int i = firstEndingAfter(minute);
    return i < spans.size() && spans.get(i).fromMin() <= minute;
  }

  /** True when every minute of the span lies in this set. */
  boolean covers(Span span) {
    int i = firstEndingAfter(span.fromMin());
    return i < spans.size()
        && spans.get(i).fromMin() <= span.fromMin()
        && span.toMin() <= spans.get(i).toMin();
  }

  /** How many minutes of the span lie in this set. */
  long minutes(Span span) {
    return span.isEmpty() ? 0 : minutesBefore(span.toMin()) - minutesBefore(span.fromMin());
  }

  /** The parts of the span that lie in this set, in time order. */
  List<Span> within(Span span) {
    List<Span> parts = new ArrayList<>();
    for (int i = firstEndingAfter(span.fromMin()); i < spans.size(); i++) {
      Span part = spans.get(i).and(span);
      if (part.isEmpty()) {
        break;
      }
      parts.add(part);
    }
    return parts;
  }

  /** The first minute of this set that is not before the given one; empty when there is none. */
  OptionalLong next(long minute) {
    int i = firstEndingAfter(minute);
    return i < spans.size()
        ? OptionalLong.of(Math.max(minute, spans.get(i).fromMin()))
        : OptionalLong.empty();
  }

  /**
   * The end of work that starts at the given minute and takes so many minutes of this set; empty
   * when the set is too short.
   */
  OptionalLong end(long start, long minutes) {
    if (minutes <= 0) {
      return OptionalLong.of(start);
    }
    long target = minutesBefore(start) + minutes;
    for (int i = firstEndingAfter(start); i < spans.size(); i++) {
      if (before[i + 1] >= target) {
        return OptionalLong.of(spans.get(i).fromMin() + target - before[i]);
      }
    }
    return OptionalLong.empty();
  }

  private long minutesBefore(long minute) {
    int i = firstEndingAfter(minute);
    long within = i < spans.size() ? Math.max(0, minute - spans.get(i).fromMin()) : 0;
    return before[i] + within;
  }

  private int firstEndingAfter(long minute) {
    int low = 0;
    int high = spans.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (spans.get(middle).toMin() > minute) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
