package pressweek.solver.bound;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;

/**
 * The earliest end of each job, were it the only one of the week, and what it costs then.
 *
 * <p>Proof: a run starts in working time of its press, no earlier than EARLIEST, MOLD_AWAY, INSERTS
 * and LINKED let it, and before the horizon's end, and its working minutes are at least those of
 * its option. {@link pressweek.solver.timing.FullHours} holds all working time that any plan can
 * have; changes, start-up, setters, operators and other runs, left out here, can only make it
 * later. LATE grows with time, and KEPT_PRESS depends on the option alone, so their sum is at least
 * the least over the options.
 */
final class EarliestEnds {
  final int[] end;
  final long[] cost;

  private final Lines lines;
  private final int horizon;
  private final boolean[] known;
  private final Map<Integer, Link> links = new HashMap<>();

  EarliestEnds(Lines lines) {
    this.lines = lines;
    horizon = lines.problem.plant().hours().endMin();
    end = new int[lines.size()];
    cost = new long[lines.size()];
    known = new boolean[lines.size()];
    Arrays.fill(end, lines.hours.until());
    Arrays.fill(cost, Lines.NEVER);
    for (Link link : lines.problem.arranged().links()) {
      int job = lines.names.job(link.job());
      if (job >= 0) {
        links.put(job, link);
      }
    }
    for (int j = 0; j < lines.size(); j++) {
      settle(j);
    }
  }

  private void settle(int job) {
    if (known[job]) {
      return;
    }
    known[job] = true;
    Job line = lines.problem.jobs().get(job);
    OptionalInt start = start(job, line);
    if (start.isEmpty()) {
      return;
    }
    for (Option option : lines.options.get(job)) {
      OptionalInt over = over(option, start.getAsInt());
      if (over.isPresent()) {
        int at = over.getAsInt();
        end[job] = Math.min(end[job], at);
        cost[job] = Math.min(cost[job], charges(job, option, at));
      }
    }
  }

  /** The first time at which a job may start; empty when what it builds on has no place. */
  private OptionalInt start(int job, Job line) {
    int plan = lines.hours.start();
    if (lines.isRunning(line)) {
      return OptionalInt.of(plan);
    }
    int start = Math.max(plan, line.deadline().earliestMin());
    Link link = links.get(job);
    int first = link == null ? -1 : lines.names.job(link.after());
    if (link == null || first < 0) {
      return OptionalInt.of(start);
    }
    settle(first);
    if (cost[first] == Lines.NEVER) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Math.max(start, end[first] + link.restMin()));
  }

  /** When a run by an option is over at the earliest; empty when it cannot start in time. */
  private OptionalInt over(Option option, int from) {
    OptionalInt there = lines.hours.componentsThere(option);
    if (there.isEmpty()) {
      return OptionalInt.empty();
    }
    int press = lines.names.press(option.press());
    boolean hand = lines.handLoaded(option.mold());
    int at = Math.max(from, there.getAsInt());
    while (at < horizon) {
      at = lines.hours.next(press, at);
      int over = lines.hours.finish(press, hand, at, option.pace().runMin());
      int back = lines.molds.back(option.mold(), at, over);
      if (back <= at) {
        return at < horizon ? OptionalInt.of(over) : OptionalInt.empty();
      }
      at = back;
    }
    return OptionalInt.empty();
  }

  private long charges(int job, Option option, int over) {
    List<Press> presses = lines.problem.floor().presses();
    Press press = presses.get(lines.names.press(option.press()));
    return lines.charges.late(job, over + lines.after[job])
        + lines.charges.keptPress(press, lines.problem.jobs().get(job), option);
  }
}
