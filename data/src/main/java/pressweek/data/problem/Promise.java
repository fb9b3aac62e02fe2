package pressweek.data.problem;

/**
 * A run that has been promised to the floor.
 *
 * @param job {@code order/line}
 * @param press press
 * @param startMin start of its run, minutes since 1970 UTC
 */
public record Promise(String job, String press, int startMin) {}
