package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pressweek.data.problem.Job;
import pressweek.solver.rules.Shelf;
import pressweek.solver.rules.Shelf.Need;

/**
 * Free stock of the components that can run short, and what has been taken. A piece that has been
 * promised to a run, however late, is gone for all later decisions, so a shortage cannot arise
 * afterwards. Where a lot expires within the horizon all takes are drawn from the lots anew, in the
 * order of the time of their runs.
 */
final class ComponentStock {
  private final StockTable table;
  private final List<Job> jobs;
  private final int lead;
  private final int[] taken;
  private final boolean anyExpires;

  /** Takes of the components with a lot that expires; of the others none. */
  private final List<List<Draw>> draws = new ArrayList<>();

  record Draw(int job, Need need) {
    boolean isAfter(Draw other) {
      return need.startMin() > other.need.startMin()
          || need.startMin() == other.need.startMin() && job > other.job;
    }
  }

  ComponentStock(WeekTables week) {
    table = week.stock;
    jobs = week.problem.jobs();
    lead = week.insertLead;
    taken = new int[table.size()];
    anyExpires = table.anyExpires();
    for (int c = 0; c < table.size(); c++) {
      draws.add(new ArrayList<>());
    }
  }

  void name(Snapshot.Changing all) {
    all.add(taken);
  }

  /** Takes of the components with a lot that expires, as they stand. */
  List<List<Draw>> drawn() {
    return anyExpires ? draws.stream().map(List::copyOf).toList() : List.of();
  }

  /** Takes as they stood. */
  void draw(List<List<Draw>> drawn) {
    for (int c = 0; c < drawn.size(); c++) {
      draws.get(c).clear();
      draws.get(c).addAll(drawn.get(c));
    }
  }

  void reset() {
    Arrays.fill(taken, 0);
    draws.forEach(List::clear);
  }

  /**
   * When so many more pieces of a component without a lot that expires can be taken: 0 for at once,
   * {@link Spans#FAR} for never.
   */
  int ready(int component, int pieces) {
    if (pieces == 0) {
      return 0;
    }
    long need = (long) taken[component] + pieces;
    if (need <= table.atHand[component]) {
      return 0;
    }
    int[] levels = table.level[component];
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] >= need) {
        return table.time[component][i];
      }
    }
    return Spans.FAR;
  }

  /**
   * The first time from a start on at which a run could take so many pieces of a component with a
   * lot that expires; {@link Spans#FAR} for never.
   */
  int start(int component, int pieces, int job, int from) {
    if (pieces == 0 || suffices(component, draw(pieces, job, from))) {
      return from;
    }
    for (int usable : table.time[component]) {
      int start = usable + lead;
      if (usable > 0 && start > from && suffices(component, draw(pieces, job, start))) {
        return start;
      }
    }
    return Spans.FAR;
  }

  private Draw draw(int pieces, int job, int start) {
    return new Draw(job, new Need("", start - lead, start, pieces, jobs.get(job).traced()));
  }

  private boolean suffices(int component, Draw added) {
    Shelf shelf = table.expiring.get(component).orElseThrow();
    int[] left = shelf.full();
    boolean done = false;
    for (Draw draw : draws.get(component)) {
      if (!done && draw.isAfter(added)) {
        done = true;
        if (shelf.draw(left, added.need(), (place, pieces) -> {}) > 0) {
          return false;
        }
      }
      if (shelf.draw(left, draw.need(), (place, pieces) -> {}) > 0) {
        return false;
      }
    }
    return done || shelf.draw(left, added.need(), (place, pieces) -> {}) == 0;
  }

  void take(int component, int pieces, int job, int start) {
    taken[component] = (int) Math.min(Spans.FAR, (long) taken[component] + pieces);
    if (table.expires(component) && pieces > 0) {
      List<Draw> all = draws.get(component);
      Draw added = draw(pieces, job, start);
      int place = all.size();
      while (place > 0 && all.get(place - 1).isAfter(added)) {
        place--;
      }
      all.add(place, added);
    }
  }
}
