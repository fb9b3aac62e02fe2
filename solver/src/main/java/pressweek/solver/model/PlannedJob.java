package pressweek.solver.model;

/**
 * A job as the search moves it: a number of the problem's job list.
 *
 * @param number place in the list
 */
public record PlannedJob(int number) {}
