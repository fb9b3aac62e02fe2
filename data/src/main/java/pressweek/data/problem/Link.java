package pressweek.data.problem;

/**
 * A run that builds on another one, as a soft grip over a hard core does.
 *
 * @param job the job that comes second, {@code order/line/part}
 * @param after the job that comes first
 * @param restMin minutes of the clock between the end of the first run and the start of the second
 */
public record Link(String job, String after, int restMin) {}
