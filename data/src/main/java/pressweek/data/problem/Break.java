package pressweek.data.problem;

import java.time.LocalTime;

/** A pause within a shift, local time, from inclusive to exclusive. */
public record Break(LocalTime from, LocalTime to) {}
