package pressweek.data.plan;

/**
 * How a plan was searched for.
 *
 * @param seconds time limit; 0 when steps limit it
 * @param steps step limit; 0 when time limits it
 * @param seed seed of the search
 */
public record Settings(int seconds, int steps, long seed) {}
