package pressweek.data.problem;

/**
 * When a job may start, when it is due and what being late weighs. Times are minutes since 1970
 * UTC.
 *
 * @param earliestMin no run or change of the job starts before this
 * @param dueMin when the order must be ready to ship
 * @param afterMin minutes between the end of the run and being ready to ship (degate, conditioning,
 *     print, pack)
 * @param weightHundredths how much lateness of this line counts; 100 is an ordinary line
 */
public record Deadline(int earliestMin, int dueMin, int afterMin, int weightHundredths) {}
