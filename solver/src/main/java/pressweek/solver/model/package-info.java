/** The entities that the search moves about: a list of jobs for each press. */
@NullMarked
package pressweek.solver.model;

import org.jspecify.annotations.NullMarked;
