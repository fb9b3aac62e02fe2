package pressweek.reports.hours;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A span of time.
 *
 * @param fromMin first minute, since 1970 UTC
 * @param toMin first minute after it
 */
public record Span(int fromMin, int toMin) {
  /** True when the minute lies in the span. */
  public boolean contains(int minute) {
    return fromMin <= minute && minute < toMin;
  }

  /** True when the two share a minute. */
  public boolean overlaps(Span other) {
    return fromMin < other.toMin && other.fromMin < toMin;
  }

  /** The part of this span within another; empty or turned round when they share nothing. */
  public Span within(Span other) {
    return new Span(Math.max(fromMin, other.fromMin), Math.min(toMin, other.toMin));
  }

  /** Minutes from first to last. */
  public int minutes() {
    return toMin - fromMin;
  }

  /** The spans in order of time, those that touch or overlap joined. */
  public static List<Span> union(List<Span> spans) {
    List<Span> joined = new ArrayList<>();
    for (Span span : spans.stream().sorted(Comparator.comparingInt(Span::fromMin)).toList()) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).toMin >= span.fromMin) {
        Span before = joined.get(last);
        joined.set(last, new Span(before.fromMin, Math.max(before.toMin, span.toMin)));
      } else if (span.minutes() > 0) {
        joined.add(span);
      }
    }
    return List.copyOf(joined);
  }

  /** What is left of the spans after others are taken away, in order of time. */
  public static List<Span> without(List<Span> spans, List<Span> away) {
    List<Span> left = union(spans);
    for (Span gone : away) {
      List<Span> next = new ArrayList<>();
      for (Span span : left) {
        next.add(new Span(span.fromMin, Math.min(span.toMin, gone.fromMin)));
        next.add(new Span(Math.max(span.fromMin, gone.toMin), span.toMin));
      }
      left = next.stream().filter(s -> s.minutes() > 0).distinct().toList();
    }
    return union(left);
  }
}
