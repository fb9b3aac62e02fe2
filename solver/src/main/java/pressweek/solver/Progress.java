package pressweek.solver;

import pressweek.data.plan.Figures;

/**
 * How far a search has come.
 *
 * @param elapsedMillis milliseconds since the search began
 * @param figures figures of the best plan so far
 */
public record Progress(long elapsedMillis, Figures figures) {}
