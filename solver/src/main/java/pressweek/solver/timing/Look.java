package pressweek.solver.timing;

/**
 * What the timing pass finds for a job on a press: the earliest it can be done, given all that has
 * been fixed so far.
 */
final class Look {
  int option;
  int start;
  int changeEnd;
  int runStart;
  int runEnd;
  int minutes;
  int purgeG;
  int kinds;
  boolean exchanged;

  /** The press that must give the mold up first, or -1. */
  int holder;

  /** The setter of the change, or -1. */
  int setter;

  /** Whether the job is running already. */
  boolean running;

  /** Whether the mold has to be serviced before. */
  boolean service;

  /** The press that gives up its tooling set, or -1. */
  int giver;

  /** The dryer that feeds the run, or -1. */
  int dryer;

  void copy(Look other) {
    option = other.option;
    start = other.start;
    changeEnd = other.changeEnd;
    runStart = other.runStart;
    runEnd = other.runEnd;
    minutes = other.minutes;
    purgeG = other.purgeG;
    kinds = other.kinds;
    exchanged = other.exchanged;
    holder = other.holder;
    setter = other.setter;
    running = other.running;
    service = other.service;
    giver = other.giver;
    dryer = other.dryer;
  }
}
