package pressweek.reports.listing;

/**
 * A column of a list.
 *
 * @param name what programs call it, for example {@code run_start}
 * @param kind what its cells hold
 * @param heading what is written above it on paper; empty when it is left out there
 */
public record Column(String name, Kind kind, String heading) {}
