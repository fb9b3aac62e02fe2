package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Cause;

/**
 * Keeps what a timing pass does, so that a plan can be written from it. Switched off during the
 * search.
 */
final class Recorder {
  /** What was done, in the order in which it was fixed. */
  sealed interface Event permits Started, TakenOff, LeftOut, ShortCampaign {}

  /**
   * A job started: change from {@code start} to {@code changeEnd}, run from {@code runStart} to
   * {@code runEnd}.
   */
  record Started(
      int press,
      int job,
      int option,
      Was was,
      Change change,
      Times times,
      List<Push> pushes,
      Dried dried)
      implements Event {}

  /** The dryer that feeds a run, -1 for none, and when its drying begins. */
  record Dried(int dryer, int from) {}

  /** A campaign ended that was shorter than it should be. */
  record ShortCampaign(int press, int mold, int minutes, int missing) implements Event {}

  /** How the press was set up before, and when it became free. */
  record Was(int mold, int tooling, int material, int free) {}

  /** Minutes, purge and kinds of the change. */
  record Change(int minutes, int purgeG, int kinds, boolean exchanged) {}

  /** Clock times of a start. */
  record Times(int start, int changeEnd, int runStart, int runEnd) {}

  /** A mold was taken off for another press. */
  record TakenOff(int press, int mold, int start, int end, int minutes) implements Event {}

  /** A job found no place; what held it back says why. */
  record LeftOut(int press, int job, Cause cause, List<Push> pushes) implements Event {}

  /** Something held a job back until a time. */
  record Push(Cause cause, String what, int until) {}

  private final boolean on;
  private final List<Event> events = new ArrayList<>();
  private final Map<Integer, List<Push>> kept = new HashMap<>();
  private List<Push> current = new ArrayList<>();

  Recorder(boolean on) {
    this.on = on;
  }

  boolean on() {
    return on;
  }

  List<Event> events() {
    return events;
  }

  /** Begins to look at an option. */
  void begin() {
    if (on) {
      current = new ArrayList<>();
    }
  }

  void push(Cause cause, String what, int until) {
    if (on) {
      current.add(new Push(cause, what, until));
    }
  }

  /** Keeps what the last look found for the job that waits on a press. */
  void keep(int press, List<Push> found) {
    if (on) {
      kept.computeIfAbsent(press, p -> new ArrayList<>()).addAll(found);
    }
  }

  List<Push> current() {
    return current;
  }

  /** What held back the job that now starts on a press; forgotten afterwards. */
  List<Push> pushes(int press) {
    List<Push> found = kept.remove(press);
    return found == null ? List.of() : found;
  }

  void add(Event event) {
    if (on) {
      events.add(event);
    }
  }
}
