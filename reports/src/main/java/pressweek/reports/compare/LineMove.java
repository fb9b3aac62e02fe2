package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.PlanBook;

/**
 * An order line that is on time in one plan and not in the other.
 *
 * @param line {@code order/line}
 * @param item item code
 * @param customer customer; may be empty
 * @param before how it stands in the plan of the folder as it stands
 * @param after how it stands in the plan of the scenario
 */
public record LineMove(String line, String item, String customer, State before, State after) {
  /**
   * How a line stands in a plan.
   *
   * @param kind how
   * @param dueMin when it is due, minutes since 1970 UTC; empty when it could not be planned
   * @param minutes minutes from its due time until it is ready, less than 0 when it is early; empty
   *     when it has no place
   */
  public record State(Kind kind, Optional<Integer> dueMin, Optional<Integer> minutes) {
    /** How it stands, in words. */
    public String words() {
      return switch (kind) {
        case ON_TIME -> "on time";
        case LATE -> Minutes.words(minutes.orElse(0)) + " late";
        case UNPLACED -> "unplaced";
        case ABSENT -> "not ordered";
      };
    }
  }

  /** How a line may stand. */
  public enum Kind {
    ON_TIME,
    LATE,
    UNPLACED,
    ABSENT
  }

  /** The lines that stand otherwise: those that come to be on time first, then the others. */
  public static List<LineMove> between(PlanBook before, PlanBook after) {
    Map<String, State> was = states(before);
    Map<String, State> is = states(after);
    Map<String, Job> jobs = new LinkedHashMap<>();
    before.plan().problem().jobs().forEach(j -> jobs.put(j.id(), j));
    after.plan().problem().jobs().forEach(j -> jobs.putIfAbsent(j.id(), j));
    List<LineMove> better = new ArrayList<>();
    List<LineMove> worse = new ArrayList<>();
    for (Job job : jobs.values()) {
      State first = was.getOrDefault(job.id(), absent());
      State second = is.getOrDefault(job.id(), absent());
      if (first.kind() != second.kind()) {
        LineMove move =
            new LineMove(job.id(), job.item().code(), job.line().customer(), first, second);
        (move.better() ? better : worse).add(move);
      }
    }
    better.addAll(worse);
    return List.copyOf(better);
  }

  /** True when the scenario has it on time, or late instead of nowhere. */
  public boolean better() {
    return after.kind().ordinal() < before.kind().ordinal();
  }

  private static State absent() {
    return new State(Kind.ABSENT, Optional.empty(), Optional.empty());
  }

  private static Map<String, State> states(PlanBook book) {
    Map<String, Run> runs = new HashMap<>();
    book.plan().runs().forEach(r -> runs.put(r.job(), r));
    Map<String, State> states = new HashMap<>();
    for (Unplaced line : book.plan().unplaced()) {
      states.put(line.id(), new State(Kind.UNPLACED, Optional.empty(), Optional.empty()));
    }
    for (Job job : book.plan().problem().jobs()) {
      Optional<Integer> due = Optional.of(job.deadline().dueMin());
      Run run = runs.get(job.id());
      if (run != null) {
        int minutes = run.readyMin() - job.deadline().dueMin();
        Kind kind = minutes > 0 ? Kind.LATE : Kind.ON_TIME;
        states.put(job.id(), new State(kind, due, Optional.of(minutes)));
      } else {
        states.put(job.id(), new State(Kind.UNPLACED, due, Optional.empty()));
      }
    }
    return states;
  }
}
