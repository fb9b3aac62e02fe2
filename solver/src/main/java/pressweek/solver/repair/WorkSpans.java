package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Minutes in which something works: spans in order of time that neither touch nor overlap.
 *
 * @param list the spans
 */
record WorkSpans(List<Stretch> list) {
  /** Later than any time of a plan. */
  static final int NEVER = Integer.MAX_VALUE / 2;

  /** From inclusive to exclusive, minutes since 1970 UTC. */
  record Stretch(int from, int to) {}

  WorkSpans {
    list = List.copyOf(list);
  }

  /** The union of stretches in any order. */
  static WorkSpans union(List<Stretch> any) {
    List<Stretch> sorted = new ArrayList<>(any);
    sorted.removeIf(s -> s.to() <= s.from());
    sorted.sort(Comparator.comparingInt(Stretch::from));
    List<Stretch> out = new ArrayList<>();
    for (Stretch next : sorted) {
      int last = out.size() - 1;
      if (last >= 0 && next.from() <= out.get(last).to()) {
        out.set(last, new Stretch(out.get(last).from(), Math.max(out.get(last).to(), next.to())));
      } else {
        out.add(next);
      }
    }
    return new WorkSpans(out);
  }

  /** What is left of these without others. */
  WorkSpans without(List<Stretch> others) {
    List<Stretch> left = new ArrayList<>();
    List<Stretch> cuts = union(others).list();
    for (Stretch span : list) {
      int at = span.from();
      for (Stretch cut : cuts) {
        if (cut.to() > at && cut.from() < span.to()) {
          if (cut.from() > at) {
            left.add(new Stretch(at, cut.from()));
          }
          at = Math.max(at, cut.to());
        }
      }
      if (at < span.to()) {
        left.add(new Stretch(at, span.to()));
      }
    }
    return new WorkSpans(left);
  }

  /** The first working minute from a time on; {@link #NEVER} when there is none. */
  int next(int time) {
    return list.stream()
        .filter(s -> s.to() > time)
        .findFirst()
        .map(s -> Math.max(s.from(), time))
        .orElse(NEVER);
  }

  /** When so many working minutes from a time on are done; {@link #NEVER} when they are not. */
  int finish(int from, int minutes) {
    int left = minutes;
    if (left == 0) {
      return from;
    }
    for (Stretch span : list) {
      int begin = Math.max(span.from(), from);
      if (span.to() > begin) {
        if (span.to() - begin >= left) {
          return begin + left;
        }
        left -= span.to() - begin;
      }
    }
    return NEVER;
  }

  /** Working minutes between two times. */
  int between(int from, int to) {
    int minutes = 0;
    for (Stretch span : list) {
      minutes += Math.max(0, Math.min(span.to(), to) - Math.max(span.from(), from));
    }
    return minutes;
  }
}
