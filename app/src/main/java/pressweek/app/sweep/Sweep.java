package pressweek.app.sweep;

import java.util.List;

/**
 * A sweep that is read: every plan that it makes.
 *
 * @param steps steps of each search
 * @param replaying how often each plan is replayed
 * @param cases the plans
 */
public record Sweep(int steps, Replaying replaying, List<Case> cases) {
  public Sweep {
    cases = List.copyOf(cases);
  }

  /**
   * A plan to make.
   *
   * @param folder the plant's folder, as it was given
   * @param scenario scenario file, as it was given; empty for the folder as it is
   * @param seed seed of the search
   * @param task its task; empty where there is none
   * @param fault why there is none; empty where there is one
   */
  public record Case(String folder, String scenario, long seed, String task, String fault) {
    /** Whether there is something to plan. */
    boolean hasTask() {
      return fault.isEmpty();
    }
  }
}
