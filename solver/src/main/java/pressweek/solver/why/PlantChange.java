package pressweek.solver.why;

import pressweek.data.problem.Problem;

/**
 * Something that a plant could change.
 *
 * @param words what, as a scheduler would say it
 * @param problem the week with it
 */
public record PlantChange(String words, Problem problem) {}
