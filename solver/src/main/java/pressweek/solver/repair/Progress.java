package pressweek.solver.repair;

import pressweek.data.plan.Run;

/**
 * How far a run of the earlier plan has come at the present.
 *
 * @param run the run
 * @param stage how far
 * @param atMin done: when it ended; changing: when the change ends; else the present
 * @param workedMin working minutes of the run that are done, start-up among them
 */
record Progress(Run run, Stage stage, int atMin, int workedMin) {
  /** How far a run has come. */
  enum Stage {
    /** It has ended. */
    DONE,
    /** It is running. */
    RUNNING,
    /** It has begun, but its press or mold is away now. */
    STOPPED,
    /** Its change has begun or ended, and it has not begun itself. */
    CHANGING,
    /** Nothing of it has begun. */
    WAITING
  }

  /** True when it, or its change, has begun and it has not ended. */
  boolean under() {
    return stage == Stage.RUNNING || stage == Stage.CHANGING;
  }
}
