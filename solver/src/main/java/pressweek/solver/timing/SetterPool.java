package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pressweek.data.problem.Crew;
import pressweek.solver.timing.ShiftTimes.Piece;

/**
 * The setters of the plant as servers: setter {@code k} is there whenever more than {@code k} are
 * in the house. A change takes the one who can start it first.
 */
final class SetterPool {
  private final Spans[] there;
  private final int[] free;
  private final int sharePct;
  private final boolean maySpanGap;
  private final boolean checked;

  private int chosen;

  SetterPool(WorkTimes times, Crew crew) {
    checked = crew.settersChecked();
    sharePct = crew.setterSharePct();
    maySpanGap = crew.changeMaySpanGap();
    there =
        checked
            ? presence(times.setters()).stream().map(SetterPool::spans).toArray(Spans[]::new)
            : new Spans[0];
    free = new int[there.length];
  }

  private static Spans spans(List<Piece> pieces) {
    return new Spans(pieces.stream().map(p -> new Spans.Span(p.from(), p.to(), p.to())).toList());
  }

  private static List<List<Piece>> presence(List<WorkTimes.Step> steps) {
    List<List<Piece>> there = new ArrayList<>();
    for (int i = 0; i + 1 < steps.size(); i++) {
      for (int k = 0; k < steps.get(i).people(); k++) {
        if (there.size() <= k) {
          there.add(new ArrayList<>());
        }
        there.get(k).add(new Piece(steps.get(i).from(), steps.get(i + 1).from()));
      }
    }
    return there.stream().map(Pieces::union).toList();
  }

  void name(Snapshot.Changing all) {
    all.add(free);
  }

  void reset() {
    Arrays.fill(free, 0);
  }

  /**
   * The first start, not before a time, at which a change of so many minutes can be done on a
   * press; {@link Spans#FAR} for never.
   */
  int start(Spans press, int time, int minutes) {
    chosen = -1;
    if (!checked) {
      return pressStart(press, time, minutes);
    }
    int soonest = pressStart(press, time, minutes);
    if (soonest >= Spans.FAR) {
      return Spans.FAR;
    }
    int end = press.finish(soonest, minutes);
    for (int k = 0; k < free.length; k++) {
      int i = free[k] > soonest ? there[k].size() : there[k].at(soonest);
      if (i < there[k].size() && there[k].from(i) <= soonest && end <= there[k].to(i)) {
        chosen = k;
        return soonest;
      }
    }
    int best = Spans.FAR;
    for (int k = 0; k < free.length && best > time; k++) {
      int start = startWith(k, press, Math.max(time, free[k]), minutes);
      if (start < best) {
        best = start;
        chosen = k;
      }
    }
    return best;
  }

  /**
   * Takes the setter found by the last {@link #start} until the change ends and his share of other
   * work is done.
   */
  void take(int end, int minutes) {
    take(chosen, end, minutes);
  }

  /** The setter found by the last {@link #start}; -1 when setters are not checked. */
  int chosen() {
    return chosen;
  }

  /** The same for a setter found before; none for -1. */
  void take(int setter, int end, int minutes) {
    if (setter >= 0) {
      free[setter] = end + (minutes * (100 - sharePct) + sharePct - 1) / sharePct;
    }
  }

  private int pressStart(Spans press, int time, int minutes) {
    int i = press.at(time);
    while (i < press.size()) {
      int start = Math.max(time, press.from(i));
      int end = press.doneIn(i, start, minutes);
      if (end == press.size()) {
        return Spans.FAR;
      }
      if (maySpanGap || press.stretchTo(end) == press.stretchTo(i)) {
        return start;
      }
      i = press.at(press.stretchTo(i));
    }
    return Spans.FAR;
  }

  private int startWith(int k, Spans press, int time, int minutes) {
    Spans setter = there[k];
    int start = time;
    while (start < Spans.FAR) {
      start = pressStart(press, start, minutes);
      int i = start >= Spans.FAR ? setter.size() : setter.at(start);
      if (i == setter.size()) {
        return Spans.FAR;
      }
      if (start >= setter.from(i)) {
        int absent = absence(setter, i, press, start, minutes);
        if (absent < 0) {
          return start;
        }
        i = absent + 1;
        if (i == setter.size()) {
          return Spans.FAR;
        }
      }
      start = setter.from(i);
    }
    return Spans.FAR;
  }

  /**
   * The presence after which the setter is missing for a working minute of the change, or -1 when
   * he is there for all of them.
   */
  private int absence(Spans setter, int first, Spans press, int start, int minutes) {
    int end = press.finish(start, minutes);
    int i = first;
    while (setter.to(i) < end) {
      int back = i + 1 < setter.size() ? setter.from(i + 1) : Spans.FAR;
      boolean gone = press.worksIn(setter.to(i), Math.min(back, end));
      if (!maySpanGap || back >= Spans.FAR || gone) {
        return i;
      }
      i++;
    }
    return -1;
  }
}
