package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Something that takes setters or operators while a press works.
 *
 * @param span from its start to its end
 * @param working when its press works
 * @param subject id that a finding is about
 * @param words what it is
 */
record Work(Span span, Spans working, String subject, String words) {
  boolean worksIn(Span other) {
    return working.minutes(span.and(other)) > 0;
  }

  /** A time in which too little is there for what works in it. */
  record Overload(Balance.Shortage shortage, List<Work> works) {
    /** The last of them to start: the one that should have waited. */
    Work last() {
      return works.get(works.size() - 1);
    }
  }

  /**
   * The shortages in which any of the given works; of shortages that follow each other without a
   * gap only the first.
   */
  static List<Overload> overloads(List<Work> works, List<Balance.Shortage> shortages) {
    Map<Integer, List<Work>> touched = new TreeMap<>();
    List<Work> inOrder = new ArrayList<>(works);
    inOrder.sort(Comparator.comparingLong(work -> work.span().fromMin()));
    for (Work work : inOrder) {
      for (int i = firstEndingAfter(shortages, work.span().fromMin()); i < shortages.size(); i++) {
        if (shortages.get(i).span().fromMin() >= work.span().toMin()) {
          break;
        }
        if (work.worksIn(shortages.get(i).span())) {
          touched.computeIfAbsent(i, index -> new ArrayList<>()).add(work);
        }
      }
    }
    List<Overload> overloads = new ArrayList<>();
    touched.forEach(
        (i, touching) -> {
          if (!touched.containsKey(i - 1) || !follows(shortages, i)) {
            overloads.add(new Overload(shortages.get(i), touching));
          }
        });
    return overloads;
  }

  private static boolean follows(List<Balance.Shortage> shortages, int i) {
    return shortages.get(i - 1).span().toMin() == shortages.get(i).span().fromMin();
  }

  private static int firstEndingAfter(List<Balance.Shortage> shortages, long minute) {
    int low = 0;
    int high = shortages.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (shortages.get(middle).span().toMin() > minute) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
