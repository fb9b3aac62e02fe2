package pressweek.solver.search;

/** How far a search has come, from 0 to 1; from 1 on it ends. */
@FunctionalInterface
public interface Pace {
  /** The part of the search that is over after so many moves. */
  double done(long moves);
}
